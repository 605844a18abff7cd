"""A message as stems and ideas: lower case, endings cut, slips of the thumb mended."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from functools import cache, lru_cache
from itertools import combinations
from typing import Final

import snowballstemmer
from rapidfuzz import process
from rapidfuzz.distance import OSA

from bot.dialogue.meaning.concepts import CONCEPTS

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
#: Words that say nothing of the matter.
_EMPTY: Final = frozenset(
    "a an the of to in on at it its is are was were be been am i my me we you your he she they them"
    " this that these those so as do does did done has have had if then than but or for with from"
    " by just very really still also some any there here who what"
    " could should would will shall may might get gets got im ive id dont cant isnt wasnt let lets"
    " oh well please pls hey hi ok okay linn all out up down into his her our us about".split()
)
_STEMMER: Final = snowballstemmer.stemmer("english")


@lru_cache(maxsize=4096)
def stem(word: str) -> str:
    """A word without its ending."""
    return str(_STEMMER.stemWord(word))


def tokens(text: str) -> list[str]:
    """The words of a text in lower case, numbers with a meaning named."""
    said = text.casefold().replace("'", "").replace("’", "")
    for pattern, name in _NUMBERS:
        said = pattern.sub(name, said)
    return _WORD.findall(said)[:_MOST_WORDS]


@cache
def _phrases() -> dict[tuple[str, ...], tuple[str, ...]]:
    """The ideas of a phrase, by its stems."""
    found: dict[tuple[str, ...], tuple[str, ...]] = {}
    for idea, phrases in CONCEPTS.items():
        for phrase in phrases.split("|"):
            key = tuple(stem(word) for word in phrase.split())
            found[key] = (*found.get(key, ()), f"={idea}")
    return found


@cache
def _longest() -> int:
    return max(len(key) for key in _phrases())


def features(text: str, vocabulary: Collection[str] = ()) -> Iterator[str]:
    """Stems, and the ideas that they and their phrases stand for.

    Args:
        text: the message.
        vocabulary: stems that are known; an unknown one is taken for its neighbour by a slip.
    """
    stems = [_mended(stem(word), vocabulary) for word in tokens(text)]
    phrases = _phrases()
    ideas: set[str] = set()
    for begin in range(len(stems)):
        for length in range(1, _longest() + 1):
            ideas.update(phrases.get(tuple(stems[begin : begin + length]), ()))
    yield from ideas
    yield from ("".join(pair) for pair in combinations(sorted(ideas), 2))
    yield from (word for word in stems if word not in _EMPTY)


def _mended(word: str, vocabulary: Collection[str]) -> str:
    """The known stem that a slip of the thumb has made unknown."""
    if not vocabulary or word in vocabulary or word in _EMPTY or len(word) < _ONE_SLIP:
        return word
    slips = 2 if len(word) >= _TWO_SLIPS else 1
    near = process.extractOne(
        word,
        [known for known in vocabulary if known[0] == word[0] and abs(len(known) - len(word)) < 2],
        scorer=OSA.distance,
        score_cutoff=slips,
    )
    return str(near[0]) if near else word
