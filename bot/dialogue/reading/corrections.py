"""A bare number behind words of correction takes the slot of the number before."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import METRES, Quantity
from bot.dialogue.reading.roles import counts
from bot.dialogue.reading.stops import exact_thirds

#: "i mean", "no, wait": nothing but these between two numbers.
_PUT_RIGHT: Final = re.compile(
    r"[a-z ]{0,12}[,;. -]*(?:\b(?:no|er|erm|sorry|oops|wait|i mean|i meant|make that|actually"
    r"|(?:or )?(?:rather|more like)|nah|nope|but (?:the |my )?(?:sign|map|board|app|laser"
    r"|guide ?book|rangefinder|gps"
    r"|leaflet|plaque|tape) (?:says|reads|gives|shows|has|said)|but i (?:measured|paced)(?: it)?"
    r"|(?:scratch|strike|forget) that|hang on|hold on|correction|typo"
    r"|(?:but |and )?(?:on )?(?:looking again|a second look|i looked again)|i misread)\b"
    r"[,;. -]*)+(?:(?:it's|its|it is|that's|is|about) )*"
)
_STOPS: Final = frozenset({"meter_stops", "change_stops"})
_DIALS: Final = frozenset({"f_number", "iso", "focal_mm"})


def corrected_slot(draft: Draft, quantity: Quantity) -> str | None:
    """The slot of the number before, where this one only puts it right: `i mean 20 metres`."""
    earlier = draft.neighbour(quantity, -1)
    if earlier is None or not _PUT_RIGHT.fullmatch(draft.before(quantity)):
        return None
    return draft.slot_of(earlier)


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
        elif not quantity.fraction and slot in _DIALS:
            draft.put(slot, value, quantity)
