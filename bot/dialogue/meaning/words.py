"""A message as stems and ideas: lower case, endings cut, slips of the thumb mended."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from itertools import combinations
from typing import Final

import snowballstemmer
from rapidfuzz import process
from rapidfuzz.distance import OSA

from bot.dialogue.meaning.tables import EMPTY, ideas

#: Longer messages are no single question or complaint (own rule), and reading stays quick.
_MOST_WORDS: Final = 60
#: From this length on one slip is mended, from `_TWO_SLIPS` on two [letters] (own rule).
_ONE_SLIP: Final = 5
_TWO_SLIPS: Final = 9
#: Numbers that carry a meaning of their own, as words.
_NUMBERS: Final = (
    (re.compile(r"\bf ?/? ?(?:16|18|20|22|25|29|32)\b|\b(?:22|32)\b"), " smallaperture "),
    (re.compile(r"\bf ?/ ?\d+(?:\.\d)?\b|\bf ?\d+(?:\.\d)?\b"), " fnumber "),
    (re.compile(r"\b\d+ ?-? ?\d* ?mm\b"), " focal "),
    (re.compile(r"\b1/\d+(?: ?s(?:ec)?)?\b|\b\d+(?:\.\d+)? ?s(?:ec|econds?)?\b"), " seconds "),
)
_WORD: Final = re.compile(r"[a-z0-9]+")
#: Plurals that mean something else than their singular and must not share its stem.
_APART: Final = {"leaves": "leaf", "drops": "droplet", "spots": "blotch", "rules": "permit"}
_STEMMER: Final = snowballstemmer.stemmer("english")


@lru_cache(maxsize=4096)
def stem(word: str) -> str:
    """A word without its ending."""
    return str(_STEMMER.stemWord(_APART.get(word, word)))


def tokens(text: str) -> list[str]:
    """The words of a text in lower case, numbers with a meaning named."""
    said = text.casefold().replace("'", "").replace("’", "")
    for pattern, name in _NUMBERS:
        said = pattern.sub(name, said)
    return _WORD.findall(said)[:_MOST_WORDS]


@cache
def _empty() -> frozenset[str]:
    """Stems that say nothing of the matter."""
    return frozenset(stem(word) for word in ideas()[EMPTY])


@cache
def _phrases() -> dict[tuple[str, ...], frozenset[str]]:
    """The ideas of a phrase, by its stems."""
    found: dict[tuple[str, ...], frozenset[str]] = {}
    for idea, phrases in ideas().items():
        for phrase in phrases if idea != EMPTY else ():
            key = tuple(stem(word) for word in phrase.split())
            found[key] = found.get(key, frozenset()) | {f"={idea}"}
    return found


@cache
def _longest() -> int:
    return max(len(key) for key in _phrases())


def features(text: str, vocabulary: frozenset[str] = frozenset()) -> list[str]:
    """Stems, the ideas that they and their phrases stand for, and pairs of these.

    Args:
        text: the message.
        vocabulary: stems that are known; an unknown one is taken for its neighbour by a slip.
    """
    stems = [_mended(stem(word), vocabulary) for word in tokens(text)]
    phrases = _phrases()
    meant: set[str] = set()
    for begin in range(len(stems)):
        for length in range(1, _longest() + 1):
            meant |= phrases.get(tuple(stems[begin : begin + length]), frozenset())
    pairs = ["".join(pair) for pair in combinations(sorted(meant), 2)]
    return [*sorted(meant), *pairs, *(word for word in stems if word not in _empty())]


@lru_cache(maxsize=4096)
def _mended(word: str, vocabulary: frozenset[str]) -> str:
    """The known stem that a slip of the thumb has made unknown."""
    if not vocabulary or word in vocabulary or word in _empty() or len(word) < _ONE_SLIP:
        return word
    slips = 2 if len(word) >= _TWO_SLIPS else 1
    alike = sorted(known for known in vocabulary if known[0] == word[0])  # of equals the first
    near = process.extractOne(
        word,
        alike,
        scorer=OSA.distance,
        score_cutoff=slips,
    )
    return str(near[0]) if near else word
