"""Heights, distances, speeds and ways: every length goes to the slot that its words name."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Units
from bot.dialogue.reading.answers import answers
from bot.dialogue.reading.corrections import corrected_slot
from bot.dialogue.reading.draft import RANGES, Draft
from bot.dialogue.reading.elsewhere import (
    is_covered,
    is_elsewhere,
    is_other,
    is_somebodys_height,
)
from bot.dialogue.reading.numbers import METRES_A_SECOND, Quantity
from bot.dialogue.reading.roles import role, stands_alone
from bot.dialogue.reading.timed_leaf import read_seconds_per_length, read_timed_leaf
from bot.dialogue.reading.unit_words import FOOT, LENGTH_UNITS, METRE, METRES

#: "Fern 0.9, fall 22, trees 70 (metres)": the unit of them all.
_ALL_IN: Final = re.compile(
    r"\d\W*(?:(?:,|\() ?(?:(?:all|in|of|that's|numbers) )*|\b(?:all|in) (?:in )?)"
    rf"(?:{METRE}|(?P<feet>{FOOT}))\W*$"
)
_METRIC: Final = frozenset({"m", "cm", "km", "m/s", "km/h"})
_IMPERIAL: Final = frozenset({"ft", "in", "yd", "mi", "ft/s", "mph"})
#: The order in which the arrival question asks, so the order of bare answers.
_ASKED_IN_ORDER: Final = (
    "fall_height_m",
    "distance_m",
    "nearest_m",
    "farthest_m",
    "camera_height_m",
    "fall_width_m",
    "section_height_m",
    "water_depth_m",
    "walk_km",
    "climb_m",
)
#: Above this a bare number of unknown unit is taken as feet (own rule, told as guessed).
_LIKELY_FEET_ABOVE: Final = {
    "fall_height_m": 60.0,
    "distance_m": 100.0,
    "nearest_m": 4.0,
    "camera_height_m": 2.5,
    "climb_m": 1500.0,
}
#: From this on a bare metric number for a near thing is centimetres (own rule).
_LIKELY_CENTIMETRES_FROM: Final = 30.0
#: "1.200 m of climb" may be twelve hundred.
_DOTTED_THOUSANDS: Final = re.compile(r"\d\.\d{3}(?!\d)")
#: A height of so many kilometres is told by these words.
_STRAIGHT_UP: Final = re.compile(
    r"\b(?:tall|high|height|drops?|climb\w*|ascent|ascend\w*|gain\w*|elevation|vertical)\b"
)
#: A way of so much uphill is told by its length (own rule: no path to a fall climbs higher).
_HIGHEST_CLIMB_M: Final = 2000.0
_WIND: Final = re.compile(r"\b(?:wind|breeze|gusts?|gusting|blowing)\b")
_WATER: Final = re.compile(r"\b(?:water|current|flow\w*|stream|river|creek|fall)\b")
#: From a light breeze on leaves move (2-3 m/s, common practice).
_LEAVES_MOVE_FROM_MPS: Final = 2.0


def note_units(draft: Draft) -> None:
    """Say which units the message shows; both or none: nothing."""
    shown = {quantity.unit for quantity in draft.quantities}
    if not shown & (_METRIC | _IMPERIAL) and (named := _ALL_IN.search(draft.text)):
        shown.add("ft" if named["feet"] else "m")
    metric, imperial = bool(shown & _METRIC), bool(shown & _IMPERIAL)
    if metric != imperial:
        draft.note("units", Units.METRIC if metric else Units.IMPERIAL)


def read_speeds(draft: Draft) -> None:
    """Speeds of the water, typed or by a timed leaf; a speed of the wind moves leaves."""
    for quantity in draft.free(*METRES_A_SECOND):
        speed_mps = quantity.value * METRES_A_SECOND[quantity.unit]
        around = draft.clause_before(quantity) + draft.clause_after(quantity)
        walking = quantity.unit in {"km/h", "mph"} and not _WATER.search(draft.text)
        if quantity.is_range or (walking and not _WIND.search(around)):
            draft.refuse(quantity)
        elif _WIND.search(around):
            draft.claim(quantity)
            if speed_mps >= _LEAVES_MOVE_FROM_MPS:
                draft.note("wind", value=True)
        else:
            draft.put("water_speed_mps", speed_mps, quantity)
    read_timed_leaf(draft)
    read_seconds_per_length(draft)


def _system(draft: Draft) -> Units | None:
    shown = draft.values.get("units")
    return shown if isinstance(shown, Units) else draft.person_units


def _bare_unit(draft: Draft, value: float, slot: str) -> str:
    """The unit of a bare number: the person's, else a guess from its size, which is noted."""
    system = _system(draft)
    if slot == "walk_km":
        unit = "mi" if system is Units.IMPERIAL else "km"
    elif system is Units.IMPERIAL:
        unit = "ft"
    elif slot in {"nearest_m", "camera_height_m"} and value >= _LIKELY_CENTIMETRES_FROM:
        unit = "cm"
    elif system is None and value > _LIKELY_FEET_ABOVE.get(slot, RANGES[slot][1]):
        unit = "ft"
    else:
        unit = "m"
    if system is None:
        draft.guessed.append(slot)
    return unit


def store(draft: Draft, slot: str, quantity: Quantity) -> None:
    """Fill a slot with a length in metres; a range is told as unread."""
    unit = quantity.unit
    if unit == "quote":
        unit = "in"
        draft.values.setdefault("units", Units.IMPERIAL)
    if quantity.is_range:
        draft.refuse(quantity)
        return
    if slot == "climb_m" and _DOTTED_THOUSANDS.match(quantity.text):
        draft.refuse(quantity)
        return
    unit = unit or _bare_unit(draft, quantity.value, slot)
    metres = quantity.value * METRES[unit]
    draft.put(slot, metres / 1000 if slot == "walk_km" else metres, quantity)


def _corrected_length(draft: Draft, quantity: Quantity) -> str | None:
    slot = corrected_slot(draft, quantity)
    return slot if slot in _ASKED_IN_ORDER else None


def _is_upright(draft: Draft, quantity: Quantity, slot: str | None) -> bool:
    """Whether kilometres or miles go straight up, by a word of it: "1.5 miles up" is a way."""
    if slot not in {"fall_height_m", "climb_m"}:
        return False
    if slot == "climb_m" and quantity.value * METRES[quantity.unit] > _HIGHEST_CLIMB_M:
        return False
    around = draft.clause_before(quantity) + draft.clause_after(quantity)
    return _STRAIGHT_UP.search(around) is not None


def read_lengths(draft: Draft) -> None:
    """Lengths whose words say what they are; kilometres and miles are the way in."""
    for quantity in draft.free(*LENGTH_UNITS, "quote"):
        if is_elsewhere(draft, quantity):
            draft.claim(quantity)
            continue
        if is_other(draft, quantity):
            draft.refuse(quantity)
            continue
        slot = role(draft, quantity) or _corrected_length(draft, quantity)
        if quantity.unit in {"km", "mi"} and not _is_upright(draft, quantity, slot):
            slot = "walk_km"
        if slot:
            store(draft, slot, quantity)


def read_bare_lengths(draft: Draft) -> None:
    """Numbers without a unit that the words beside them make a length: `18 away`."""
    for quantity in draft.free(""):
        if is_somebodys_height(draft, quantity) or is_covered(draft, quantity):
            draft.claim(quantity)
            continue
        slot = None if quantity.fraction or quantity.signed else role(draft, quantity)
        if slot and is_other(draft, quantity):
            draft.refuse(quantity)
        elif slot:
            store(draft, slot, quantity)


def read_asked_lengths(draft: Draft) -> None:
    """Lengths without words: what the open question asks for, in the order it asks."""
    asked = [name for name in _ASKED_IN_ORDER if name in draft.expecting]
    open_slots = [name for name in asked if name not in draft.values]
    with_unit = draft.free(*LENGTH_UNITS, *(["quote"] if open_slots else []))
    if not open_slots and draft.values.get("section"):
        open_slots = ["section_height_m"]
    elif not open_slots and "fall_height_m" not in draft.values and _has_neighbours(draft):
        open_slots = ["fall_height_m"]
    plain = [
        quantity
        for quantity in with_unit or (draft.free("") if asked else [])
        if not quantity.signed and (not asked or answers(draft, quantity, (open_slots or asked)[0]))
    ]
    if open_slots[:1] == ["walk_km"] and any(q.unit not in {"km", "mi", ""} for q in plain):
        return  # "200 m": along the way or up?
    if len(plain) > len(open_slots):
        return
    if not asked and "section" not in draft.values:
        plain = [q for q in plain if stands_alone(draft, q) and _comes_first(draft, q)]
    for slot, quantity in zip(open_slots, plain, strict=False):
        store(draft, slot, quantity)


def _comes_first(draft: Draft, quantity: Quantity) -> bool:
    """Whether no other length stands before; "nearest 1 m, maybe 1.2 m" names no fall."""
    lengths = [other for other in draft.quantities if other.unit in LENGTH_UNITS]
    return lengths[0] == quantity


def _has_neighbours(draft: Draft) -> bool:
    """Whether distance or foreground stand beside, so that a length without words is the fall."""
    return "distance_m" in draft.values or "nearest_m" in draft.values
