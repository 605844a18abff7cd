"""Corrections over messages: the newest value takes the slot that was told last, and is echoed."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Facts
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.reading.numbers import METRES
from bot.dialogue.reading.phrases import any_of
from bot.dialogue.steps import repeat
from bot.dialogue.texts import known
from bot.dialogue.turn import Turn

#: Slots that one number fills.
CORRECTABLE: Final = frozenset(
    {"fall_height_m", "distance_m", "nearest_m", "section_height_m", "walk_km", "climb_m"}
    | {"focal_mm", "f_number", "shutter_s", "iso"}
)
_LENGTHS: Final = frozenset({"fall_height_m", "distance_m", "nearest_m", "section_height_m"})
_UNIT: Final = r"(?:feet|foot|ft|yards?|yds?|met(?:er|re)s?|m)"
_NUMBER: Final = r"f? ?/?\d[\d.,/]*"
_PUTS_RIGHT: Final = any_of(
    r"^no, (?=\D{0,12}\d)",
    r"no,? wait|wait,? no|hang on,? no|no no|oops|sorry|correction|typo|actually|scratch that",
    r"i (?:mean|meant|misread|was wrong|looked again)|(?:read|got|had|said|wrote) (?:it|that|this)"
    r" wrong|make that|my mistake|i take that back|more like",
    rf"{_UNIT},? not {_UNIT}|not {_UNIT} but|(?:not|instead of|rather than) {_NUMBER}",
    r"ich meinte|entschuldigung|sorry|falsch (?:gelesen|getippt)|doch nicht|vielmehr",
    r"quise decir|perdón|me equivoqué|quería decir|mejor dicho",
)
_ASKS: Final = re.compile(r"^(?:and |but |so )?(?:why|what|how|which|should|can)\b|\?")
#: "Eleven it is", "make it 8", "I'll go with 1/8": what is decided on.
_DECIDED: Final = re.compile(
    r"\b(?:make it|go(?:ing)? with|went with|(?:i'?ll|we'll|let'?s) (?:use|take|do|try|set)) "
    r"(?P<behind>[\w./]+)\s*(?:then|now)?\W*$"
    r"|(?:^|[,.;:!] *|\bthen )(?P<before>[\w./]+) it is\b"
)
_NOT_THE_OTHER: Final = re.compile(
    rf",? *\b(?:and |but )?(?:not|instead of|rather than) (?:the |a |about )?{_NUMBER}"
    rf"(?: ?{_UNIT}\b)?"
)
_OTHER_UNIT: Final = re.compile(rf"\b(?P<right>{_UNIT}),? not (?P<wrong>{_UNIT})\b")
_SHORT: Final = {"foot": "ft", "feet": "ft", "yard": "yd", "yards": "yd", "yds": "yd"}
#: Two lengths nearer than this factor are the same number in another unit (own rule).
_SAME: Final = 1.02


def puts_right(text: str) -> bool:
    """Whether a message takes back or replaces what was told before."""
    said = _plain(text)
    return _PUTS_RIGHT.search(said) is not None and not _ASKS.search(said)


def placed(turn: Turn, text: str, told: Facts) -> Facts:
    """The facts of a message, with a bare number put where it belongs.

    Args:
        turn: the answer under construction; it knows what was told last.
        text: the message in English.
        told: what was read in it, the asked slots filled.

    Returns:
        The facts as told, or those that replace what was told last.
    """
    said = _plain(text)
    decided = _DECIDED.search(said)
    if decided is not None and not read(text, units=turn.units).known():
        return _fitting(turn, decided["behind"] or decided["before"]) or told
    if not turn.walk.told_last or not puts_right(text):
        return told
    right = _NOT_THE_OTHER.sub("", text)
    plainly = read(right, units=turn.units)
    if CORRECTABLE & set(plainly.known()):
        return plainly
    return _in_other_units(turn, said, right) or _nearest(turn, right) or told


def note(turn: Turn, told: Facts) -> None:
    """Keep which slots were told last."""
    slots = tuple(slot for slot in told.known() if slot in CORRECTABLE)
    if slots:
        turn.change_walk(told_last=slots)


def echo(turn: Turn, told: Facts, text: str) -> None:
    """Name what a correction has changed, before anything else is said."""
    listed = known(told, turn.units)
    if listed and puts_right(text) and not any(part.key == "noted" for part in turn.parts):
        turn.parts.insert(0, Part(Role.SETTINGS, "noted", {"list": listed}))


def reopen(turn: Turn, told: Facts, text: str) -> None:
    """A correction answers no question: what stands open is not passed over by it."""
    question = repeat.standing(turn)
    if question is None or turn.context.conversation.walk is None or not puts_right(text):
        return
    if not set(QUESTIONS[question.name].expects) & set(told.known()):
        asked = tuple(name for name in turn.walk.asked if name != question.name)
        turn.change_walk(asked=asked)


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("’", "'").split())


def _values(turn: Turn, text: str, slots: tuple[str, ...]) -> dict[str, float]:
    """What the number of a message would be in each slot."""
    found: dict[str, float] = {}
    for slot in slots:
        value = getattr(read(text, units=turn.units, expecting=frozenset({slot})), slot)
        if value is not None:
            found[slot] = value
    return found


def _only(slot: str, value: float) -> Facts:
    return Facts.model_validate({slot: value})


def _nearest(turn: Turn, text: str) -> Facts | None:
    """The number in the slot told last whose value it is nearest to."""
    facts = turn.facts
    found = {
        slot: (value, abs(math.log(value / old)))
        for slot, value in _values(turn, text, turn.walk.told_last).items()
        if (old := getattr(facts, slot) or _given(turn, slot))
    }
    if not found:
        return None
    slot = min(found, key=lambda name: found[name][1])
    return _only(slot, found[slot][0])


def _given(turn: Turn, slot: str) -> float | None:
    """A setting lives on in what was given."""
    value: float | None = getattr(turn.walk.given, slot, None)
    return value


def _in_other_units(turn: Turn, said: str, text: str) -> Facts | None:
    """`feet not yards`: the length that has this number in the wrong unit."""
    units = _OTHER_UNIT.search(said)
    if units is None:
        return None
    wrong_m, right_m = (METRES[_short(units[name])] for name in ("wrong", "right"))
    facts = turn.facts
    lengths: dict[str, float] = {
        slot: getattr(facts, slot) for slot in sorted(_LENGTHS & facts.known().keys())
    }
    numbers = set(_values(turn, text, tuple(lengths)).values())
    for slot, old_m in lengths.items():
        new_m = old_m / wrong_m * right_m
        same = any(max(new_m / value, value / new_m) < _SAME for value in numbers)
        if same or (not numbers and _is_whole(old_m / wrong_m) and slot in turn.walk.told_last):
            return _only(slot, new_m)
    return None


def _short(unit: str) -> str:
    return _SHORT.get(unit, "m" if unit.startswith("m") else unit.rstrip("s"))


def _is_whole(number: float) -> bool:
    return abs(number - round(number)) < _SAME - 1


def _fitting(turn: Turn, piece: str) -> Facts | None:
    """A bare value that was decided on is of the dial told last, else an f-number."""
    dials = tuple(slot for slot in turn.walk.told_last if slot in {"f_number", "iso", "shutter_s"})
    found = _values(turn, piece, dials or ("f_number",))
    return next((_only(slot, value) for slot, value in found.items()), None)
