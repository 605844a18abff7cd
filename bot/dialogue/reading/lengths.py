"""Heights, distances, speeds and ways: every length goes to the slot that its words name."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Units
from bot.dialogue.reading.answers import answers
from bot.dialogue.reading.corrections import corrected_slot
from bot.dialogue.reading.draft import RANGES, Draft
from bot.dialogue.reading.numbers import METRES, METRES_A_SECOND, Quantity
from bot.dialogue.reading.people import KIN
from bot.dialogue.reading.role_words import ELSEWHERE, OTHER_TALL, TALL_OTHER
from bot.dialogue.reading.roles import role, stands_alone

LENGTH_UNITS: Final = ("m", "cm", "ft", "in", "yd", "km", "mi")
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
_DRIVE: Final = re.compile(r"\b(?:drive|drove|driving|car ride|flight|train|bus)\b")
#: "Walked 2 km already" is behind us, the way back may be another.
_WALKED: Final = re.compile(r"\b(?:walked|hiked|ran|run|did|done|covered|came)\b")
#: "Still 3 km to go": what is left of the way in.
_STILL: Final = re.compile(r"\b(?:still|another|faltan|quedan)(?: about| maybe| some)? ?$")
_TO_GO: Final = re.compile(r"^ ?(?:more )?(?:to go|left|remaining|ahead|more)\b")
_HOMEWARDS: Final = re.compile(r"\b(?:walk|back|out|car|road|parking|trail ?head)\b")
_ALREADY: Final = re.compile(r"\b(?:already|to go|so far|today|behind us|this morning)\b")
_SOMEBODY: Final = re.compile(
    rf"\b(?:i'm|im|i am|he's|she's|(?:he|she|{KIN})(?: is|'s))(?: about| only)? ?$"
)
_TALL: Final = re.compile(r"^ ?(?:tall|high)\b")
#: "I'm 6'1": feet and inches as people tell their own height [m] (own rule).
_OWN_HEIGHT_M: Final = (1.3, 2.15)
_OWN_FORM: Final = re.compile(r"\d ?(?:'|ft|foot|feet) ?\d|^1[4-9]\d ?cm|^1[.,][5-9]\d? ?m")
_PLACED_BEHIND: Final = re.compile(r"^ ?(?:away|from|back|off|to|above|in front)\b")
#: "1.200 m of climb" may be twelve hundred.
_DOTTED_THOUSANDS: Final = re.compile(r"\d\.\d{3}(?!\d)")
_PART_BEFORE: Final = re.compile(
    r"\b(?:each|every|elevation|altitude"
    r"|(?:upper|lower|first|second|third|other|bigger|smaller|top|bottom)"
    r" (?:one|drop|step|tier|part|half))(?: is| of| about)? ?$"
)
_PART_BEHIND: Final = re.compile(
    r"^ ?(?:(?:further|farther|closer|nearer|lower|higher)(?! than)"
    r"|each(?! way)|apiece|down(?! to the (?:water|pool|river|foot))"
    r"|(?:further |farther )?(?:down|up)(?:stream| the (?:trail|path|road|river))"
    r"|above (?:the )?sea(?: level)?|a?m?sl|altitude|elevation\b(?! gain))\b"
)
#: "Moved 3 m to the left": how far somebody went, not where from.
_MOVED: Final = re.compile(
    r"\b(?:went|moved?|stepped|walked|go|step|shuffled|backed|climbed|crept|shifted)(?: up"
    r"| back| down)?"
    r"(?: about| another| maybe| some)? ?$"
)
_BY_SO_MUCH: Final = re.compile(
    r"^ ?(?:to the (?:left|right|side)|back\b|closer|nearer|forwards?|further|farther|sideways"
    r"|left\b"
    r"|right\b|up\b|down\b|in\b)"
)
_FOCUSED: Final = re.compile(r"\b(?:focus\w*|hyperfocal|autofocus)\b")
_ELSEWHERE: Final = re.compile(
    rf"\b{ELSEWHERE}(?: is|'s| are| lies| was)?(?: about| only| just| maybe| some)* ?$"
)
_LIES: Final = re.compile(r"^ ?(?:away|off|back|from here|down|up|further|behind)\b")
_OTHER_WIDTH: Final = re.compile(
    r"\b(?:path|trail|bridge|pool|gorge|canyon|ledge|gap|road|platform|valley|track|ravine"
    r"|boulder)\b"
    r"[^,;.]{0,16}$"
)
_WIDE: Final = re.compile(r"^ ?(?:wide|across|in width|long|in diameter)\b")
#: "The snow is 20 cm deep": nothing that anybody would wade through.
_OTHER_DEPTH: Final = re.compile(
    r"\b(?:snow|schnee|nieve|mud|sand|ice|silt|litter|hole|cave)\b[^,;.]{0,16}$"
)
_DEEP: Final = re.compile(r"^ ?(?:deep|of (?:snow|mud|sand|ice))\b")
_FLOAT: Final = re.compile(
    r"\b(?:leaf|leaves|stick|twig|foam|bubbles?|cork|float\w*|drift\w*|travel\w*|takes?|took|did)\b"
)
_PER_LENGTH: Final = re.compile(r"^ ?(?:per|a|each|for each|for every) (met(?:er|re)|m|foot|ft)\b")
_WIND: Final = re.compile(r"\b(?:wind|breeze|gusts?|gusting|blowing)\b")
_WATER: Final = re.compile(r"\b(?:water|current|flow\w*|stream|river|creek|fall)\b")
#: From a light breeze on leaves move (2-3 m/s, common practice).
_LEAVES_MOVE_FROM_MPS: Final = 2.0


def note_units(draft: Draft) -> None:
    """Say which units the message shows; both or none: nothing."""
    shown = {quantity.unit for quantity in draft.quantities}
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
    _read_timed_leaf(draft)
    _read_seconds_per_length(draft)


def _read_timed_leaf(draft: Draft) -> None:
    """A length and a time side by side: `3 m in 3 s`, `leaf takes 4 seconds for 10 ft`."""
    for first in draft.free(*LENGTH_UNITS, "s"):
        second = draft.neighbour(first, 1)
        if second is None or second not in draft.free(*LENGTH_UNITS, "s"):
            continue
        length, time = (second, first) if first.unit == "s" else (first, second)
        between = draft.after(first).strip()
        leaf = _FLOAT.search(draft.text) or "water_speed_mps" in draft.expecting
        joined = between in {"in", "per", "in about"} or (
            leaf and between in {"for", "over", "to go", "to do", "to cover"}
        )
        if joined and time.unit == "s" and length.unit != "s" and time.value > 0:
            metres = length.value * METRES[length.unit]
            draft.claim(time)
            draft.put("water_speed_mps", metres / time.value, length)


def _read_seconds_per_length(draft: Draft) -> None:
    """`2 s per metre`: how long the leaf needs for one."""
    for quantity in draft.free("s"):
        match = _PER_LENGTH.search(draft.after(quantity))
        if match and quantity.value > 0 and not quantity.is_range:
            unit = "m" if match.group(1).startswith("m") else "ft"
            draft.put("water_speed_mps", METRES[unit] / quantity.value, quantity)
            draft.values.setdefault("units", Units.METRIC if unit == "m" else Units.IMPERIAL)


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


def _store(draft: Draft, slot: str, quantity: Quantity) -> None:
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


def _is_elsewhere(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is none of this place: a drive, a way behind us, somebody's own height."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    if quantity.unit in {"km", "mi"}:
        return bool(
            _DRIVE.search(draft.before(quantity) + after)
            or (_WALKED.search(before) and _ALREADY.search(draft.text))
            or (
                (_STILL.search(before) or _TO_GO.match(after))
                and not _HOMEWARDS.search(after)
                and "walk_km" not in draft.expecting
            )
        )
    if not _SOMEBODY.search(before):
        return False
    own = _OWN_HEIGHT_M[0] <= quantity.value * METRES.get(quantity.unit, 0.0) <= _OWN_HEIGHT_M[1]
    person = quantity.value * METRES.get(quantity.unit, 0.0) <= _OWN_HEIGHT_M[1]
    return bool(person and _TALL.match(after)) or (
        own and _OWN_FORM.search(quantity.text) is not None and not _PLACED_BEHIND.match(after)
    )


def _corrected_length(draft: Draft, quantity: Quantity) -> str | None:
    slot = corrected_slot(draft, quantity)
    return slot if slot in _ASKED_IN_ORDER else None


def _is_other(draft: Draft, quantity: Quantity) -> bool:
    """Whether a length is of another place or of a part: `800 m downstream`, `each 4 m`."""
    before, after = draft.clause_before(quantity), draft.clause_after(quantity)
    return bool(
        _PART_BEFORE.search(before)
        or _PART_BEHIND.match(after)
        or (_MOVED.search(before) and _BY_SO_MUCH.match(after))
        or (_FOCUSED.search(before) and role(draft, quantity) not in {"nearest_m", "farthest_m"})
        or (_ELSEWHERE.search(before) and _LIES.match(after))
        or (_OTHER_WIDTH.search(before) and _WIDE.match(after))
        or (_TALL.match(after) and (OTHER_TALL.match(before) or TALL_OTHER.match(after)))
        or (_OTHER_DEPTH.search(before) and _DEEP.match(after))
    )


def read_lengths(draft: Draft) -> None:
    """Lengths whose words say what they are; kilometres and miles are the way in."""
    for quantity in draft.free(*LENGTH_UNITS, "quote"):
        if _is_elsewhere(draft, quantity):
            draft.claim(quantity)
            continue
        if _is_other(draft, quantity):
            draft.refuse(quantity)
            continue
        slot = role(draft, quantity) or _corrected_length(draft, quantity)
        if quantity.unit in {"km", "mi"} and slot not in {"fall_height_m", "climb_m"}:
            slot = "walk_km"
        if slot:
            _store(draft, slot, quantity)


def read_bare_lengths(draft: Draft) -> None:
    """Numbers without a unit that the words beside them make a length: `18 away`."""
    for quantity in draft.free(""):
        if _SOMEBODY.search(draft.clause_before(quantity)) and _TALL.match(draft.after(quantity)):
            draft.claim(quantity)
            continue
        slot = None if quantity.fraction or quantity.signed else role(draft, quantity)
        if slot:
            _store(draft, slot, quantity)


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
        _store(draft, slot, quantity)


def _comes_first(draft: Draft, quantity: Quantity) -> bool:
    """Whether no other length stands before; "nearest 1 m, maybe 1.2 m" names no fall."""
    lengths = [other for other in draft.quantities if other.unit in LENGTH_UNITS]
    return lengths[0] == quantity


def _has_neighbours(draft: Draft) -> bool:
    """Whether distance or foreground stand beside, so that a length without words is the fall."""
    return "distance_m" in draft.values or "nearest_m" in draft.values
