"""Corrections over messages: the newest value takes the slot that was told last, and is echoed."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Facts, Units
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import putting_right, read
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.numbers import scan
from bot.dialogue.reading.unit_words import METRES
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import known
from bot.dialogue.turn import Turn
from core.series import is_same_mark

#: Slots that one number fills.
CORRECTABLE: Final = frozenset(
    {"fall_height_m", "distance_m", "nearest_m", "section_height_m", "walk_km", "climb_m"}
    | {"focal_mm", "f_number", "shutter_s", "iso"}
)
_LENGTHS: Final = frozenset(
    {"fall_height_m", "distance_m", "nearest_m", "section_height_m", "fall_width_m", "farthest_m"}
    | {"camera_height_m", "water_depth_m"}
)
#: "Eleven it is", "make it 8", "I'll go with 1/8": what is decided on.
_DECIDED: Final = re.compile(
    r"\b(?:make it|go(?:ing)? with|went with|(?:i'?ll|we'll|let'?s) (?:use|take|do|try|set)) "
    r"(?P<behind>[\w./]+)\s*(?:then|now)?\W*$"
    r"|(?:^|[,.;:!] *|\bthen )(?P<before>[\w./]+) it is\b"
)
_ROUND: Final = 0.02
_TWO: Final = 2


def puts_right(text: str) -> bool:
    """Whether a message takes back or replaces what was told before."""
    return putting_right.puts_right(_plain(text))


def placed(turn: Turn, text: str, told: Facts) -> Facts:
    """The facts of a message, with what it puts right where it belongs.

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
    moved = _swapped(turn, said) or _renamed(turn, said)
    if moved is None and CORRECTABLE & read(text, units=turn.units).known().keys():
        return told  # "it's a 14 m fall, not 22" says what it puts right
    return moved or _put_right(turn, said) or told


def _put_right(turn: Turn, said: str) -> Facts | None:
    """Another value or another unit for one of the slots that are known."""
    right, other = putting_right.without_the_other(said)
    exchanged = _exchanged(turn, right, other) if other else None
    if exchanged is not None:
        return exchanged
    plainly = read(right, units=turn.units)
    if CORRECTABLE & set(plainly.known()):
        return plainly
    return _in_other_units(turn, said, right) or _nearest(turn, right)


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
    return " ".join(text.casefold().replace("’", "'").split()).rstrip(" .!")


def _lengths(turn: Turn) -> dict[str, float]:
    """The lengths told last, by their slots."""
    told = turn.walk.told_last
    return {slot: value for slot in told if slot in _LENGTHS and (value := _value(turn, slot))}


def _swapped(turn: Turn, said: str) -> Facts | None:
    """`swap those two`: the two lengths that were named, or told last, change places."""
    named = putting_right.swaps(said)
    if named is None:
        return None
    lengths = _lengths(turn) if not named else {slot: _value(turn, slot) for slot in named}
    if len(lengths) != _TWO or None in lengths.values():
        return None
    (one, first), (other, second) = lengths.items()
    return Facts.model_validate({one: second, other: first})


def _renamed(turn: Turn, said: str) -> Facts | None:
    """`the width, not the height`: the value moves to the slot that was meant."""
    exchange = putting_right.slots_meant(said)
    if exchange is None or exchange.wrong is None:
        return None
    value = _value(turn, exchange.wrong)
    numbers = [quantity.value for quantity in scan(normalise(said))]
    if value is None or any(not _is_same(value, number) for number in numbers):
        return None
    turn.unlearn(exchange.wrong)
    return _only(exchange.right, value)


def _exchanged(turn: Turn, right: str, other: str) -> Facts | None:
    """`not 12 m, 15 m`: the slot that holds the old number takes the new one, in its unit."""
    new, old = scan(normalise(right)), scan(normalise(other))
    if len(new) != 1 or len(old) != 1:
        return None
    for slot in dict.fromkeys((*turn.walk.told_last, *sorted(turn.facts.known()))):
        value = _value(turn, slot) if slot in CORRECTABLE | _LENGTHS else None
        if value is None:
            continue
        if slot in _LENGTHS and old[0].unit in {"", *METRES}:
            for name in (old[0].unit,) if old[0].unit else ("m", "ft", "yd"):
                if _is_same(value, old[0].value * METRES[name]):
                    return _only(slot, new[0].value * METRES.get(new[0].unit or name, 1.0))
            continue
        found = _values(turn, right, (slot,)).get(slot)
        if found is not None and _is_same(value, _values(turn, other, (slot,)).get(slot, 0.0)):
            return _only(slot, found)
    return None


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
    """The number in the slot that is named, else in the one told last that it is nearest to."""
    named = putting_right.slot_named(text)
    slots = (named,) if named in turn.walk.told_last else turn.walk.told_last
    found = {
        slot: (value, abs(math.log(value / old)))
        for slot, value in _values(turn, text, slots).items()
        if (old := _value(turn, slot))
    }
    if not found:
        return None
    slot = min(found, key=lambda name: found[name][1])
    return _only(slot, found[slot][0])


def _value(turn: Turn, slot: str) -> float | None:
    """What a slot holds; a setting lives on in what was given."""
    value: float | None = getattr(turn.facts, slot) or getattr(turn.walk.given, slot, None)
    return value


def _in_other_units(turn: Turn, said: str, text: str) -> Facts | None:
    """`feet not yards`, `sorry, in feet`: the lengths told last have the other unit.

    With a number, that one alone has it whose number it is.
    """
    units = putting_right.units_meant(said)
    if units is None:
        return None
    imperial = turn.units is Units.IMPERIAL
    wrong = units.wrong or ("ft" if units.right == "m" else "yd" if imperial else "m")
    factor = METRES[units.right] / METRES[wrong]
    known = sorted(_LENGTHS & turn.facts.known().keys())
    numbers = set(_values(turn, text, tuple(known)).values())
    lengths: dict[str, float] = (
        {slot: getattr(turn.facts, slot) for slot in known} if numbers else _lengths(turn)
    )
    changed = {
        slot: old_m * factor
        for slot, old_m in lengths.items()
        if any(_is_same(old_m * factor, value) for value in numbers)
        or (not numbers and _is_round(old_m / METRES[wrong]))
    }
    if not changed:
        return None
    system = Units.METRIC if units.right == "m" else Units.IMPERIAL
    return Facts.model_validate({**changed, "units": system})


def _is_same(one: float, other: float) -> bool:
    return other > 0 and is_same_mark(one, other)


def _is_round(number: float) -> bool:
    """Whether a number has one decimal at most, as people type lengths."""
    return abs(10 * number - round(10 * number)) < _ROUND


def _fitting(turn: Turn, piece: str) -> Facts | None:
    """A bare value that was decided on is of the dial told last, else an f-number."""
    dials = tuple(slot for slot in turn.walk.told_last if slot in {"f_number", "iso", "shutter_s"})
    found = _values(turn, piece, dials or ("f_number",))
    return next((_only(slot, value) for slot, value in found.items()), None)
