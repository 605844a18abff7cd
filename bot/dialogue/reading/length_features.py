"""What stands around each number that may be a length, as features to be weighed."""

from __future__ import annotations

import math
import re
import zlib
from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet
from functools import lru_cache
from itertools import pairwise
from typing import Final

from bot.dialogue.reading.length_candidates import Candidate
from bot.dialogue.reading.role_words import FALL, NEAR

#: Features are kept by number, not by name: so many numbers (own rule).
PLACES: Final = 2**16
_TOKEN: Final = re.compile(r"[^\W\d_]+(?:'[a-z]+)?|[§]|[,.;:!?()]")
#: Where a clause ends; another number ends it, too.
_BORDERS: Final = frozenset(",.;:!?()§")
#: Words of one kind stand for each other.
_KINDS: Final = (("<fall>", re.compile(FALL)), ("<near>", re.compile(NEAR)))
_UNKNOWN: Final = "<unknown>"
#: So many words on either side are looked at, the nearest by their place, too.
_WINDOW: Final = 8
_PLACED: Final = 4
#: Another number is as long up to this ratio.
_SAME: Final = 1.2
_SHORTEST_M: Final = 0.01


def tokens_of(text: str) -> list[str]:
    """Words and signs of a text in lower case."""
    return _TOKEN.findall(text.casefold())


def number_of(name: str) -> int:
    """The number that a feature, or a word, is kept by."""
    return zlib.crc32(name.encode()) % PLACES


def features_of(
    text: str, candidates: Sequence[Candidate], known: AbstractSet[int]
) -> list[frozenset[str]]:
    """The features of each candidate, but for what the ones before it are.

    Args:
        text: of the draft.
        candidates: in their order.
        known: numbers of the words that were learned from; rare ones stand for each other.
    """
    return [
        frozenset(_features(text, candidates, place, known)) for place in range(len(candidates))
    ]


def words_beside(text: str, candidates: Sequence[Candidate]) -> list[str]:
    """The words of a text beside its numbers."""
    tokens = tokens_of(_marked(text, candidates, 0, len(text)))
    return [token for token in tokens if token not in _BORDERS]


def _features(
    text: str, candidates: Sequence[Candidate], place: int, known: AbstractSet[int]
) -> Iterator[str]:
    one = candidates[place]
    left = tokens_of(_marked(text, candidates, 0, one.start))[-_WINDOW:][::-1]
    right = tokens_of(_marked(text, candidates, one.end, len(text)))[:_WINDOW]
    yield from _side("L", left, known)
    yield from _side("R", right, known)
    yield from _across(_in_kinds(left, known), _in_kinds(right, known))
    yield f"LR {left[:1]} {right[:1]}"
    yield from _of_number(text, candidates, place)


def _side(side: str, words: Sequence[str], known: AbstractSet[int]) -> Iterator[str]:
    """The words of one side, nearest first: each, by its place, in pairs, within the clause."""
    yield from (f"{side} {word}" for word in words)
    yield from (f"{side}{place} {word}" for place, word in enumerate(words[:_PLACED]))
    yield from (f"{side}{side} {near} {far}" for near, far in pairwise(words))
    for place, word in enumerate(words):
        if word in _BORDERS:
            yield f"{side} ends {min(place, _PLACED)} {word}"
            break
        yield f"{side} in clause {word}"
    kinds = _in_kinds(words, known)
    yield from (f"{side}{place} kind {kind}" for place, kind in enumerate(kinds[:_PLACED]))


def _across(left: Sequence[str], right: Sequence[str]) -> Iterator[str]:
    """Neighbours by their kinds, on one side and across the number."""
    yield f"kinds L {left[:2]}"
    yield f"kinds L {left[:3]}"
    yield f"kinds R {right[:2]}"
    yield f"kinds R {right[:3]}"
    yield f"kinds {left[:1]} {right[:2]}"
    yield f"kinds {left[:2]} {right[:1]}"


def _of_number(text: str, candidates: Sequence[Candidate], place: int) -> Iterator[str]:
    """Its size, unit and place, and whether it is longer than the one before."""
    one = candidates[place]
    size = math.floor(math.log2(max(one.metres, _SHORTEST_M)))
    yield f"number {min(place, 3)} of {min(len(candidates), 4)}"
    yield f"unit {one.unit}"
    yield f"size {size} {bool(one.unit)}"
    yield f"in words {text[one.start].isalpha()}"
    if place:
        before = candidates[place - 1].metres
        longer, shorter = one.metres > before * _SAME, one.metres < before / _SAME
        yield "longer" if longer else "shorter" if shorter else "as long"


def _in_kinds(words: Sequence[str], known: AbstractSet[int]) -> list[str]:
    return [_kind_of(word, known) for word in words]


def _kind_of(word: str, known: AbstractSet[int]) -> str:
    kind = _named_kind(word)
    if kind is not None:
        return kind
    return word if word in _BORDERS or number_of(word) in known else _UNKNOWN


@lru_cache(maxsize=4096)
def _named_kind(word: str) -> str | None:
    return next((kind for kind, pattern in _KINDS if pattern.fullmatch(word)), None)


def _marked(text: str, candidates: Sequence[Candidate], start: int, end: int) -> str:
    """A stretch of the text with a mark in the place of each other number in it."""
    pieces, place = [], start
    for other in candidates:
        if start <= other.start and other.end <= end:
            pieces += [text[place : other.start], " § "]
            place = other.end
    return "".join([*pieces, text[place:end]])
