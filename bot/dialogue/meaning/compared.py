"""Two or more values of one kind that a message weighs against each other: `f/8 against f/16`."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Final, NamedTuple

from bot.dialogue.meaning.asking import asked_directly, asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import Named, named_in, plainly
from bot.dialogue.reading.base_iso import ISO_MARKS
from bot.dialogue.reading.lens_marks import SHORTEST_MM
from bot.dialogue.tongues import in_any, whole_words
from core.series import f_number_marks

#: What may stand around the word between two values: "1/15 s for the strands or rather 1/2 s".
_WORDS: Final = r"(?:[^\W\d]+,? ){{0,{}}}?"
_AGAINST: Final = re.compile(
    rf"[ ,?]*{_WORDS.format(3)}(?:{in_any('compared.against')}|vs\.|-?>)"
    rf" {_WORDS.format(4)}(?:f ?/? ?|iso ?)?"
)
_JOINED: Final = re.compile(
    rf"[ ,]*{_WORDS.format(1)}{in_any('compared.joins')} {_WORDS.format(1)}(?:f ?/? ?|iso ?)?"
    r"|, ?| ?- ?"
)
#: "F/8 or ISO 400": one of two ways to the same.
_EITHER: Final = re.compile(rf"[ ,]*{in_any('asking.or')} {_WORDS.format(3)}")
_OF_EITHER: Final = frozenset({"f_number", "iso"})
_WEIGHS: Final = whole_words("compared.weighs")
#: "Compare that to f/16", "compáralo con f/16": one of the two is what is set now.
_NOW: Final = re.compile(
    rf"\b{in_any('compared.compare')} ?(?:mal |doch |bitte )*{in_any('compared.now')}\b"
    rf"|\bcomparal[oa]s?\b|\bhow (?:does|would|do|will) [^.;?!]*\bcompare\b"
)
#: Who begins so tells of a frame, of a habit: "it was 1/4 or 1/8".
_TELLS: Final = re.compile(rf"\W*{in_any('compared.tells')}\b")
#: So short a message that names two values asks for the choice (own rule).
_FEW: Final = 7
#: F-numbers as dials show them, in thirds.
_F_MARKS: Final = frozenset(mark.marked for mark in f_number_marks())
_TWO: Final = 2
#: What no dial or lens sets.
_NO_SETTING: Final = frozenset({"length", "share"})
#: So many values are weighed in one answer (own rule: what a message holds).
_MOST: Final = 3
#: A time below one that is typed without its "1/" is at least this: "1/125 or 250" (own rule).
_LEAST_BELOW: Final = 8


class Weighed(NamedTuple):
    """What a message weighs.

    Args:
        slot: of `Facts`; "" for bare numbers, which only the person's kit explains.
        values: as marked, in the message's order; one alone is weighed against what is set now.
        rest: what the message says around them, in English.
        others: further settings that it names, one a slot.
    """

    slot: str
    values: tuple[float, ...]
    rest: str
    others: dict[str, float]


def weighed_in(said: Said) -> Weighed | None:
    """The values that a message weighs; None for messages that weigh nothing.

    Args:
        said: the message.
    """
    text = plainly(said.english)
    named = tuple(one for one in named_in(text) if one.slot not in _NO_SETTING)
    for first, last in _runs(text, named):
        run = named[first : last + 1]
        slot = _slot_of(run)
        values = tuple(dict.fromkeys(_values(run, slot))) if slot is not None else ()
        if slot is None or len(values) < _TWO or not _is_asked(said, text, run):
            continue
        return Weighed(slot, values[:_MOST], _around(text, run), _others(named, run))
    return _against_now(text, named)


class Either(NamedTuple):
    """An f-number and an ISO of which one is to be chosen.

    Args:
        f_number: as marked.
        iso: as marked.
        rest: the other sentences of the message, in English.
    """

    f_number: float
    iso: float
    rest: str


def either_in(said: Said) -> Either | None:
    """The f-number or the ISO that a message asks to choose from; None where it offers no such two.

    Args:
        said: the message.
    """
    text = plainly(said.english)
    if not asks(said) or _TELLS.match(asked_directly(text)):
        return None
    named = tuple(one for one in named_in(text) if one.slot in _OF_EITHER)
    for one, other in pairwise(named):
        parted = {one.slot, other.slot} == _OF_EITHER
        if parted and _EITHER.fullmatch(text[one.end : other.start]):
            values = {one.slot: one.value, other.slot: other.value}
            before, after = text[: one.start], text[other.end :]
            rest = f"{before[: _last_border(before)]} {after[_first_border(after) :]}".strip()
            return Either(values["f_number"], values["iso"], rest)
    return None


def _runs(text: str, named: tuple[Named, ...]) -> list[tuple[int, int]]:
    """The first and last places of values that stand joined, the longest runs."""
    runs: list[tuple[int, int]] = []
    first = 0
    for place, (one, other) in enumerate(pairwise(named), start=1):
        if not _is_joined(text, one, other):
            runs += [(first, place - 1)] if place - 1 > first else []
            first = place
    return [*runs, (first, len(named) - 1)] if len(named) - 1 > first else runs


def _is_joined(text: str, one: Named, other: Named) -> bool:
    """Whether two values are of a kind, and stand beside a word that joins them."""
    if one.slot != other.slot and one.slot and other.slot:
        return False
    if one.start == other.start:
        return one.slot not in {"focal_mm", ""}  # 24-70 mm is a lens
    between = text[one.end : other.start]
    if _AGAINST.fullmatch(between):
        return True
    return _JOINED.fullmatch(between) is not None


def _slot_of(run: tuple[Named, ...]) -> str | None:
    """The one slot of a run; "" where all are bare, None where they are of several."""
    slots = {one.slot for one in run if one.slot}
    if not slots:
        return "" if len({one.start for one in run}) == len(run) else None
    return slots.pop() if len(slots) == 1 else None


def _values(run: tuple[Named, ...], slot: str) -> list[float]:
    """The values of a run, bare ones as the others say; none where one does not fit."""
    found = [one.value if one.slot or not slot else _as(one.value, slot, run) for one in run]
    return [value for value in found if value] if all(found) else []


def _as(value: float, slot: str, run: tuple[Named, ...]) -> float:
    """A bare number as a value of a slot; 0 where it can be none."""
    if slot == "iso":
        return value if value in ISO_MARKS else 0.0
    if slot == "focal_mm":
        return value if value >= SHORTEST_MM else 0.0
    if slot == "f_number":
        return value if value in _F_MARKS else 0.0
    if slot == "shutter_s" and all(one.value < 1 for one in run if one.slot):
        return 1 / value if value >= _LEAST_BELOW else 0.0
    return value


def _is_asked(said: Said, text: str, run: tuple[Named, ...]) -> bool:
    """Whether the values are weighed: words say so, or what stands between them is asked."""
    if _WEIGHS.search(text):
        return True
    against = any(_AGAINST.fullmatch(text[one.end : other.start]) for one, other in pairwise(run))
    short = len(text.split()) <= _FEW and not _TELLS.match(text)
    return against and (short or (asks(said) and "?" in said.typed))


def _against_now(text: str, named: tuple[Named, ...]) -> Weighed | None:
    """The one value that is weighed against what is set now."""
    now = _NOW.search(text)
    behind = [one for one in named if now is not None and one.slot and one.end > now.start()]
    if now is None or len(behind) != 1:
        return None
    before = tuple(one for one in named if one.end <= now.start() and one.slot)
    same = tuple(one for one in before if one.slot == behind[0].slot)[-1:]
    values = tuple(one.value for one in (*same, *behind))
    return Weighed(behind[0].slot, values, _around(text, (*behind,)), _others(before, same))


def _others(named: tuple[Named, ...], run: tuple[Named, ...]) -> dict[str, float]:
    """Settings that are named beside the ones that are weighed."""
    return {one.slot: one.value for one in named if one not in run and one.slot}


def _around(text: str, run: tuple[Named, ...]) -> str:
    """What a message says in other clauses than the one of the values."""
    before, after = text[: run[0].start], text[run[-1].end :]
    return f"{before[: _last_border(before)]} {after[_first_border(after) :]}".strip()


_BORDER: Final = re.compile(r"[.;!?:]+(?: |$)|, ")


def _last_border(text: str) -> int:
    """Where the last clause of a text begins."""
    ends = [match.end() for match in _BORDER.finditer(text)]
    return ends[-1] if ends else 0


def _first_border(text: str) -> int:
    found = _BORDER.search(text)
    return found.end() if found else len(text)
