"""A bare number behind words of correction takes the slot of the number before."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.base_iso import ISO_MARKS
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity
from bot.dialogue.reading.putting_right import BACK, BETTER_KNOWN
from bot.dialogue.reading.roles import counts
from bot.dialogue.reading.stops import exact_thirds
from bot.dialogue.reading.unit_words import METRES

#: "I moved", between a distance and a better one.
_I_MOVED: Final = r"(?:and |but )?(?:i |we )?(?:moved|stepped|walked|shifted)[a-z ]{0,12}[,;. -]+"
#: "i mean", "no, wait": nothing but these between two numbers.
_PUT_RIGHT: Final = re.compile(
    rf"[a-z ]{{0,12}}[,;.?! -]*(?:{_I_MOVED})?(?:\b(?:{BACK}|{BETTER_KNOWN})\b[,;. -]*)+"
    r"(?:(?:it's|its|it is|that's|is|about) )*"
)
#: "No wait the wheel slipped, it's 0.4": why, before the better one.
_BECAUSE: Final = re.compile(
    rf"[a-z ]{{0,12}}[,;. -]*\b(?:{BACK})\b[a-z' ]{{3,30}}[,;.-] ?(?:but |so )?"
    r"(?:it's|its|it is|that's) (?:now )?(?:at |on |about )?"
)
#: "Was at iso 800 before, i'm on 200 now".
_MOVED_ON: Final = re.compile(
    r"(?: before| earlier| at first| then)?[,;. -]*(?:(?:but|and|now|then) )*"
    r"(?:(?:i'm|im|it's|its|i am|we're|went|gone) )?(?:now )?(?:on|at|to)? ?"
)
_NOW: Final = re.compile(r"^ now\b")
#: "Iso is at 3200 from last night, oops, now 100": the new one in a clause of its own.
_NOW_OPENS: Final = re.compile(
    r"[^\d;]{0,60}[,.!-] ?(?:(?:but|and|so|oops|whoops|ok) )*(?:it's |i'm |its |im )?(?:now|back)"
    r"(?: (?:it's|its|at|on|to|down to|up to|set to|back to))* ?"
)
#: Full and third marks of f-numbers (ISO 517 series, from memory).
_F_MARKS: Final = frozenset(
    {1.4, 1.8, 2, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20, 22}
)
_STOPS: Final = frozenset({"meter_stops", "change_stops"})
#: Lengths of the place; a bare one is put right in the unit that it was taken for.
_LENGTHS: Final = frozenset(
    {"fall_height_m", "distance_m", "nearest_m", "farthest_m", "camera_height_m", "fall_width_m"}
)
_DIALS: Final = frozenset({"f_number", "iso", "focal_mm"})


def corrected_slot(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of the number before, where this one only puts it right: `i mean 20 metres`."""
    earlier = draft.neighbour(quantity, -1)
    if earlier is None:
        return None
    between = draft.before(quantity)
    moved = _MOVED_ON.fullmatch(between) and (
        "now" in between.split() or _NOW.match(draft.after(quantity))
    )
    slot = draft.slot_of(earlier)
    if moved or _PUT_RIGHT.fullmatch(between) or _BECAUSE.fullmatch(between):
        return slot
    marks = {"iso": ISO_MARKS, "f_number": _F_MARKS}.get(slot or "", frozenset())
    return slot if quantity.value in marks and _NOW_OPENS.fullmatch(between) else None


def _is_part_of_second(slot: str, value: float) -> bool:
    """Whether a bare decimal can only be the better time."""
    return slot == "shutter_s" and 0 < value < 1


def read_corrections(draft: Draft) -> None:
    """`1/3 over, no, 2/3` and `12 m tall, sorry, 14`: sign and unit are those of the first."""
    for quantity in draft.free(""):
        slot, earlier = corrected_slot(draft, quantity), draft.neighbour(quantity, -1)
        if slot is None or earlier is None or quantity.is_range or counts(draft, quantity):
            continue
        value = quantity.value
        if slot in _STOPS:
            draft.put(slot, math.copysign(exact_thirds(value), draft.values[slot]), quantity)
        elif not quantity.fraction and earlier.unit in METRES and slot != "walk_km":
            draft.put(slot, value * METRES[earlier.unit], quantity)
        elif not quantity.fraction and earlier.unit == "" and slot in _LENGTHS and earlier.value:
            draft.put(slot, value * draft.values[slot] / earlier.value, quantity)
        elif not quantity.fraction and (slot in _DIALS or _is_part_of_second(slot, value)):
            draft.put(slot, value, quantity)
