"""What a text must hold for a pattern to match: pieces of words, found in the pattern itself."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import lru_cache
from importlib import import_module
from typing import Any, Final

#: Stands for any digit.
_DIGIT: Final = "\\d"
#: A pattern needs one of so many pieces at most, and so many wordings of a part of it are written
#: out (own rules).
_MOST: Final = 150
_WORDINGS: Final = 100
#: A set with more signs tells nothing (own rule).
_FEW_SIGNS: Final = 12
#: Letters of the three languages, frequent ones first, and how often pieces of one, two and three
#: of them are met, roughly (from memory); both matter for nothing but speed.
_FREQUENT: Final = " etanisrohldumcgpfbwyvkzjxq"
_OFTEN: Final = {1: 40, 2: 8, 3: 1}
#: Python's own reader of patterns.
_PARSER: Final = import_module("re._parser")

Pieces = frozenset[str]
#: One part of a pattern as Python reads it: what it is, and of what.
_Part = tuple[Any, Any]


@lru_cache(maxsize=8)
def pieces_of(text: str) -> Pieces:
    """The signs of a text, what stands together by two and three, and whether it has a digit."""
    digits = [_DIGIT] if any(map(str.isdigit, text)) else []
    twos = {text[at : at + 2] for at in range(len(text) - 1)}
    threes = {text[at : at + 3] for at in range(len(text) - 2)}
    return frozenset(twos.union(threes, text, digits))


def needed_by(pattern: re.Pattern[str]) -> Pieces:
    """Pieces of which a text holds one at least wherever the pattern matches.

    Args:
        pattern: any.

    Returns:
        None at all where nothing is known of the pattern.
    """
    if pattern.flags & re.IGNORECASE or "(?i" in pattern.pattern:
        return frozenset()
    return _of_sequence(_PARSER.parse(pattern.pattern))


def may_match(needed: Pieces, text: str) -> bool:
    """Whether a text holds one of the pieces that a pattern needs, where they are known."""
    return not needed or not needed.isdisjoint(pieces_of(text))


def _of_sequence(sequence: Iterable[_Part]) -> Pieces:
    """The rarest pieces that a sequence of parts needs."""
    found: list[Pieces] = []
    run = [""]
    for part in sequence:
        wordings = _wordings(part)
        longer = [one + more for one in run for more in wordings]
        if wordings and len(longer) <= _WORDINGS:
            run = longer
        else:
            found += [_rarest(run), _of_part(part)]
            run = wordings or [""]
    found.append(_rarest(run))
    return min(filter(None, found), key=_weight, default=frozenset())


def _rarest(wordings: Sequence[str]) -> Pieces:
    """One piece of each wording; none where a wording is empty."""
    pieces = frozenset(min(_cut(word), key=_rank, default="") for word in wordings)
    return frozenset() if "" in pieces or len(pieces) > _MOST else pieces


def _cut(wording: str) -> Sequence[str]:
    size = min(3, len(wording))
    return [wording[at : at + size] for at in range(len(wording) - size + 1)] if size else []


def _rank(piece: str) -> int:
    """The frequenter the letters of a piece, the higher; other signs are rare."""
    return sum(len(_FREQUENT) - _FREQUENT.find(letter) for letter in piece if letter in _FREQUENT)


def _weight(pieces: Pieces) -> int:
    """How often one of some pieces is met, roughly."""
    return sum(_OFTEN[1] if piece == _DIGIT else _OFTEN[len(piece)] for piece in pieces)


def _of_part(part: _Part) -> Pieces:
    """What a part needs that is not written out."""
    kind, value = str(part[0]), part[1]
    if kind == "BRANCH":
        needs = [_of_sequence(one) for one in value[1]]
        every = frozenset[str]().union(*needs)
        return every if all(needs) and len(every) <= _MOST else frozenset()
    if kind in _REPEATS:
        return _of_sequence(value[2]) if value[0] else frozenset()
    if kind == "IN":
        digits = {str(what) for _, what in value} == {"CATEGORY_DIGIT"}
        return frozenset({_DIGIT}) if digits else frozenset()
    inner = {"SUBPATTERN": -1, "ASSERT": 1}.get(kind)
    if inner is not None:
        return _of_sequence(value[inner])
    return _of_sequence(value) if kind == "ATOMIC_GROUP" else frozenset()


_REPEATS: Final = frozenset({"MAX_REPEAT", "MIN_REPEAT", "POSSESSIVE_REPEAT"})


def _wordings(part: _Part) -> list[str]:
    """All that a part can be, where that is little; none where it is not."""
    write = _WRITTEN_OUT.get(str(part[0]))
    return write(part[1]) if write else []


def _written_out(sequence: Iterable[_Part]) -> list[str]:
    """All that a sequence of parts can be."""
    run = [""]
    for part in sequence:
        wordings = _wordings(part)
        run = [one + more for one in run for more in wordings]
        if not 0 < len(run) <= _WORDINGS:
            return []
    return run


def _branches(value: Any) -> list[str]:
    parts = [_written_out(one) for one in value[1]]
    return [word for one in parts for word in one] if all(parts) else []


def _repeated(value: Any) -> list[str]:
    """What stands once, or may stand once."""
    least, most, what = value
    once = _written_out(what) if most == 1 else []
    return [*once, ""] if once and not least else once


def _signs(value: Any) -> list[str]:
    """The signs of a small set."""
    found: list[str] = []
    for kind, what in value:
        if str(kind) not in {"LITERAL", "RANGE"}:
            return []
        first, last = what if str(kind) == "RANGE" else (what, what)
        found += map(chr, range(first, min(last, first + _FEW_SIGNS) + 1))
    return found if len(found) <= _FEW_SIGNS else []


_WRITTEN_OUT: Final[Mapping[str, Callable[[Any], list[str]]]] = {
    "LITERAL": lambda value: [chr(value)],
    "AT": lambda _: [""],
    "ASSERT_NOT": lambda _: [""],
    "IN": _signs,
    "SUBPATTERN": lambda value: _written_out(value[-1]),
    "ATOMIC_GROUP": _written_out,
    "BRANCH": _branches,
    "MAX_REPEAT": _repeated,
    "MIN_REPEAT": _repeated,
}
