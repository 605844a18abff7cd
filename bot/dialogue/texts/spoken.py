"""Facts and limits put into words: what is known, what cannot be."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from collections.abc import Set as AbstractSet
from typing import Any, Final

from bot.dialogue.facts import Facts, LensFact, Units
from bot.dialogue.texts import measures
from core.errors import OutOfDomainError
from core.series import f_number_label, iso_label, shutter_label

_Spoken = Callable[[Any, Units | None], str]


def _length(name: str) -> _Spoken:
    return lambda value, units: f"{name} {measures.length(value, units)}"


def _flag(yes: str, no: str) -> _Spoken:
    return lambda value, _units: yes if value else no


def _lens(lens: LensFact) -> str:
    ends = [measures.plain(lens.shortest_mm)]
    if lens.longest_mm > lens.shortest_mm:
        ends.append(measures.plain(lens.longest_mm))
    text = f"{'-'.join(ends)} mm"
    widest = [f for f in (lens.widest_at_shortest, lens.widest_at_longest) if f]
    if widest:
        text += " f/" + "-".join(dict.fromkeys(measures.plain(f) for f in widest))
    return text


def _nd(value: tuple[float, ...]) -> str:
    if not value:
        return "no ND"
    return "ND " + ", ".join(f"{measures.plain(stops)}-stop" for stops in value)


_MEANT: Final = {
    "aps-c": "APS-C 1.5×",
    "aps-c 1.6": "APS-C 1.6×",
}

#: How each slot is told, in the order of telling.
_SPOKEN: Final[Mapping[str, _Spoken]] = {
    "camera_format": lambda value, _units: str(_MEANT.get(value, value)),
    "megapixels": lambda value, _units: f"{measures.plain(value)} MP",
    "lenses": lambda value, _units: ", ".join(_lens(lens) for lens in value),
    "has_tripod": _flag("tripod", "no tripod"),
    "has_polariser": _flag("polariser", "no polariser"),
    "nd_stops": lambda value, _units: _nd(value),
    "base_iso": lambda value, _units: f"base {iso_label(value)}",
    "small_steps": _flag("small steps", "whole steps"),
    "automatic": _flag("camera on automatic", "camera on manual"),
    "fall_height_m": _length("fall"),
    "fall_width_m": _length("width"),
    "stream": _flag("a stream", "a fall"),
    "distance_m": _length("from"),
    "nearest_m": _length("nearest"),
    "farthest_m": _length("farthest"),
    "camera_height_m": _length("camera up"),
    "section_height_m": _length("section"),
    "portrait": _flag("portrait", "landscape"),
    "water_speed_mps": lambda value, units: f"water {measures.speed(value, units)}",
    "water_depth_m": _length("water depth"),
    "look": lambda value, _units: f"look {value}",
    "focal_mm": lambda value, _units: f"at {measures.plain(value, 0)} mm",
    "f_number": lambda value, _units: f_number_label(value),
    "shutter_s": lambda value, _units: shutter_label(value),
    "iso": lambda value, _units: iso_label(value),
    "polariser_on": _flag("polariser on", "polariser off"),
    "nd_on_stops": lambda value, _units: (
        f"{measures.plain(value)}-stop ND on" if value else "no ND on"
    ),
    "light": lambda value, _units: str(value),
    "wind": _flag("leaves move", "no wind"),
    "walk_km": lambda value, units: f"walk out {measures.walk(value, 0, units).split(',')[0]}",
    "climb_m": _length("climb"),
    "sunset": lambda value, _units: f"sunset {value}",
}


def known(facts: Facts, units: Units | None, *, only: AbstractSet[str] | None = None) -> str:
    """Facts as a short list in words; "" when there are none."""
    filled = facts.known()
    return ", ".join(
        spoken(filled[slot], units)
        for slot, spoken in _SPOKEN.items()
        if slot in filled and (only is None or slot in only)
    )


#: What the core's parameters are called before a person; others are told by their own name.
_NAMES: Final = {
    "height_m": "A height",
    "distance_m": "A distance",
    "nearest_m": "A nearest distance",
    "near_m": "A nearest distance",
    "far_m": "A distance",
    "focal_mm": "A focal length",
    "f_number": "An f-number",
    "shutter_s": "A time",
    "iso": "An ISO",
    "speed_mps": "A speed of water",
    "distance_km": "A walk",
    "climb_m": "A climb",
    "camera_height_m": "A camera height",
    "section_m": "A section",
}


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
        "name": _NAMES.get(error.name, error.name.replace("_", " ")),
        **{
            name: f"{measures.fine(value * factor)} {unit}".strip()
            for name, value in (("value", error.value), ("low", error.low), ("high", error.high))
        },
    }
