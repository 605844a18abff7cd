"""Facts and limits put into words: what is known, what cannot be."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from collections.abc import Set as AbstractSet
from typing import Any, Final

from bot.dialogue.facts import Facts, LensFact, Units
from bot.dialogue.texts import measures
from bot.dialogue.texts.catalogue import TEXTS
from bot.dialogue.trip import Spell, Trip
from core.errors import OutOfDomainError
from core.series import f_number_label, iso_label, shutter_label

#: How a slot is told: from its name, what it holds, and the person's units.
_Spoken = Callable[[str, Any, Units | None], str]


def _value(slot: str, value: str) -> str:
    return TEXTS[f"known.{slot}"].format(value=value)


def _length(slot: str, value: float, units: Units | None) -> str:
    return _value(slot, measures.length(value, units))


def _flag(slot: str, value: bool, _units: Units | None) -> str:
    return TEXTS[f"known.{slot}.{'yes' if value else 'no'}"]


def _lens(lens: LensFact) -> str:
    ends = [measures.plain(lens.shortest_mm)]
    if lens.longest_mm > lens.shortest_mm:
        ends.append(measures.plain(lens.longest_mm))
    text = f"{'-'.join(ends)} mm"
    widest = [f for f in (lens.widest_at_shortest, lens.widest_at_longest) if f]
    if widest:
        text += " f/" + "-".join(dict.fromkeys(_trade(f) for f in widest))
    return text


def _trade(value: float) -> str:
    """A number as it is engraved on a lens, in every language: `2.8`."""
    return f"{value:.1f}".removesuffix(".0")


def _nd(value: tuple[float, ...]) -> str:
    if not value:
        return TEXTS["known.no_nd"]
    each = (TEXTS["known.nd_each"].format(stops=measures.plain(stops)) for stops in value)
    return TEXTS["known.nd"].format(stops=", ".join(each))


def _nd_on(value: float) -> str:
    if not value:
        return TEXTS["known.no_nd_on"]
    return TEXTS["known.nd_on"].format(stops=measures.plain(value))


#: How each slot is told, in the order of telling.
_SPOKEN: Final[Mapping[str, _Spoken]] = {
    "camera_format": lambda _, value, _units: TEXTS[f"format.{value.replace('.', '_')}"],
    "megapixels": lambda slot, value, _units: _value(slot, measures.plain(value)),
    "lenses": lambda _, value, _units: ", ".join(_lens(lens) for lens in value),
    "has_tripod": _flag,
    "has_polariser": _flag,
    "nd_stops": lambda _, value, _units: _nd(value),
    "base_iso": lambda slot, value, _units: _value(slot, iso_label(value)),
    "small_steps": _flag,
    "automatic": _flag,
    "fall_height_m": _length,
    "fall_width_m": _length,
    "stream": _flag,
    "distance_m": _length,
    "nearest_m": _length,
    "farthest_m": _length,
    "camera_height_m": _length,
    "section_height_m": _length,
    "portrait": _flag,
    "water_speed_mps": lambda slot, value, units: _value(slot, measures.speed(value, units)),
    "water_depth_m": _length,
    "look": lambda slot, value, _units: _value(slot, TEXTS[f"look.{value}"]),
    "focal_mm": lambda slot, value, _units: _value(slot, measures.plain(value, 0)),
    "f_number": lambda _, value, _units: f_number_label(value),
    "shutter_s": lambda _, value, _units: shutter_label(value),
    "iso": lambda _, value, _units: iso_label(value),
    "polariser_on": _flag,
    "nd_on_stops": lambda _, value, _units: _nd_on(value),
    "light": lambda _, value, _units: TEXTS[f"known.light.{value}"],
    "wind": _flag,
    "walk_km": lambda slot, value, units: _value(slot, measures.way(value, units)),
    "climb_m": _length,
    "sunset": lambda slot, value, _units: _value(slot, measures.told_clock(value)),
}


def known(facts: Facts, units: Units | None, *, only: AbstractSet[str] | None = None) -> str:
    """Facts as a short list in words; "" when there are none."""
    filled = facts.known()
    return ", ".join(
        spoken(slot, filled[slot], units)
        for slot, spoken in _SPOKEN.items()
        if slot in filled and (only is None or slot in only)
    )


def known_trip(trip: Trip) -> str:
    """What was told of a visit as a short list in words; "" when there is nothing."""
    values = {
        "people": str(trip.people) if trip.people else "",
        "start_at": measures.told_clock(trip.start_at) if trip.start_at else "",
        "back_by": measures.told_clock(trip.back_by) if trip.back_by else "",
        "walk_min": measures.minutes(trip.walk_min) if trip.walk_min else "",
        "car": trip.car,
        "place": trip.place,
    }
    said = [TEXTS[f"known.{slot}"].format(value=value) for slot, value in values.items() if value]
    if trip.people == 1:
        said[0] = TEXTS["known.alone"]
    if trip.slowest:
        said.append(TEXTS[f"known.slowest.{trip.slowest}"])
    if trip.round_trip:
        said.append(TEXTS["known.round_trip"])
    if trip.spells:
        said += [_spell(spell) for spell in trip.spells]
    elif trip.forecast:
        said.append(TEXTS[f"known.light.{trip.forecast}"])
    return ", ".join(said)


def _spell(spell: Spell) -> str:
    """A stretch of a forecast: `sun and clouds`, `overcast from 12:00`."""
    sky = TEXTS[f"sky.{spell.sky}"]
    if not spell.since:
        return sky
    return TEXTS["sky.since"].format(sky=sky, since=measures.told_clock(spell.since))


#: What a unit of the core is for who uses feet: its name, and how many make one of the core's.
_IN_FEET: Final = {
    "m": ("ft", measures.FEET_PER_METRE),
    "m/s": ("ft/s", measures.FEET_PER_METRE),
    "km": ("mi", 1 / measures.KILOMETRES_PER_MILE),
}


def domain_key(error: OutOfDomainError) -> str:
    """The sentence about an impossible number; a range without an end has its own."""
    return "out_of_domain" if math.isfinite(error.high) else "out_of_domain_below"


def domain_values(error: OutOfDomainError, units: Units | None) -> dict[str, str]:
    """What the sentence about an impossible number needs, in the person's units."""
    unit, factor = error.unit, 1.0
    if units is Units.IMPERIAL:
        unit, factor = _IN_FEET.get(unit, (unit, factor))
    return {
        # Parameters without a word of their own are told by their name in the core.
        "name": TEXTS.get(f"limit.{error.name}", error.name.replace("_", " ")),
        **{
            name: f"{measures.fine(value * factor)} {unit}".strip()
            for name, value in (("value", error.value), ("low", error.low), ("high", error.high))
        },
    }
