"""Exposure times without their unit: named by the shutter, or between f-number and ISO."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.base_iso import ISO_MARKS
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity

#: "Shutter 0.4": a whole number may be seconds or their part, a decimal is seconds.
_SHUTTER: Final = re.compile(
    r"\b(?:shutter(?: ?speed| time)?|exposure time|shutter ?speed)"
    r"(?:'s| is| at| now| set| to| of| was| on| about| around)*[ :=]*$"
    r"|^ ?time ?[:=] ?$"
)
_BETWEEN: Final = " ,;/@|·•"


def read_bare_times(draft: Draft) -> None:
    """Decimals that can only be seconds: `shutter 0.4`, `f11 .5 iso 100`."""
    for quantity in draft.free(""):
        plain = not (quantity.signed or quantity.is_range or quantity.fraction)
        if not plain or "." not in quantity.text.replace(",", "."):
            continue
        if _SHUTTER.search(draft.clause_before(quantity)) or _is_in_settings(draft, quantity):
            draft.put("shutter_s", quantity.value, quantity)


def _is_in_settings(draft: Draft, quantity: Quantity) -> bool:
    """Whether a part of one stands right beside an f-number and an ISO, in any order."""
    run = [quantity]
    while (earlier := draft.neighbour(run[0], -1)) and _is_beside(draft, earlier):
        run.insert(0, earlier)
    while (later := draft.neighbour(run[-1], 1)) and _is_beside(draft, run[-1]):
        run.append(later)
    units = {other.unit for other in run}
    last = run[-1]
    speed = "iso" in units or (last.unit == "" and last.value in ISO_MARKS)
    return quantity.value < 1 and speed and "f" in units and "s" not in units


def _is_beside(draft: Draft, quantity: Quantity) -> bool:
    """Whether the next number follows with nothing said between."""
    return not draft.after(quantity).strip(_BETWEEN)
