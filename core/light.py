"""Light levels, placing the white, contrast of a scene."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from core.camera import MOST_FILTER_STOPS
from core.domain import between, positive
from core.exposure import EV_RANGE, Settings
from core.exposure import ev100 as ev100_of


@dataclass(frozen=True)
class Light:
    """A level of light by its name.

    Args:
        key: name of the light, as in `LIGHTS`.
        ev100: level, EV at ISO 100.
        low: lowest level that still goes by the name.
        high: highest one.
        estimate: not from a published table.
        source: where the level comes from.
    """

    key: str
    ev100: float
    low: float
    high: float
    estimate: bool
    source: str


_TABLE: Final = "ANSI PH2.7-1973 and PH2.7-1986, table of exposure values"
_ESTIMATE: Final = "common practice, an estimate"

#: Levels by name. Those of the table hold from two hours after sunrise to two hours before sunset
#: with front light; one less for side light, two less for back light (there too), hence the low
#: end of full sun. Where the table prints a range, its middle and ends; else half a stop either
#: way, and a whole one for estimates (own rule).
LIGHTS: Final[Mapping[str, Light]] = MappingProxyType(
    {
        light.key: light
        for light in (
            Light("snow in sun", 16, 15, 16.5, estimate=False, source=_TABLE),
            Light("full sun", 15, 13, 15.5, estimate=False, source=_TABLE),
            Light("hazy sun", 14, 13, 14.5, estimate=False, source=_TABLE),
            Light("bright cloud", 13, 12.5, 13.5, estimate=False, source=_TABLE),
            Light("overcast", 12, 11.5, 12.5, estimate=False, source=_TABLE),
            Light("open shade", 12, 11.5, 12.5, estimate=False, source=_TABLE),
            Light("before sunset", 13, 12, 14, estimate=False, source=_TABLE),
            Light("sunset", 12, 11.5, 12.5, estimate=False, source=_TABLE),
            Light("after sunset", 10, 9, 11, estimate=False, source=_TABLE),
            Light("open gorge", 10, 9, 11, estimate=True, source=_ESTIMATE),
            Light("light canopy", 9, 8, 10, estimate=True, source=_ESTIMATE),
            Light("wooded gorge", 8, 7, 9, estimate=True, source=_ESTIMATE),
            Light("dense canopy", 7, 6, 8, estimate=True, source=_ESTIMATE),
            Light("deep slot", 6, 5, 7, estimate=True, source=_ESTIMATE),
            Light("dusk", 6, 5, 7, estimate=True, source=_ESTIMATE),
            Light("full moonlight", -2.5, -3, -2, estimate=False, source=_TABLE),
        )
    }
)

#: From the metered mid-tone to clipping in raw [stops]: log2(1 / 0.127); a speed rated by
#: saturation puts the mid-tone at 18 % / sqrt(2) = 12.7 % of it (ISO 12232:2006, from memory).
RAW_HEADROOM: Final = 2.98
#: Where spot-metered white water goes, above the metered mid-tone [stops]: in raw, about a stop
#: below clipping, left for sparkle (common practice).
WHITE_PLACEMENT_RAW: Final = 2.0
#: The bold limit in raw [stops] (common practice).
WHITE_BOLD_RAW: Final = 2 + 2 / 3
#: At most this for JPEG and phones, and in raw where sun may break through [stops] (common
#: practice).
WHITE_PLACEMENT_JPEG: Final = 1 + 2 / 3

#: Part of the light that white, foaming water gives back (low, high) (common practice).
FOAM_REFLECTANCE: Final = (0.6, 0.8)
#: Part of the light that dark, wet rock gives back (low, high) (common practice).
WET_ROCK_REFLECTANCE: Final = (0.04, 0.05)
#: Contrast that one frame holds and that still looks clean [stops] (common practice: 8 to 9 of the
#: 10 to 13 that a sensor records; a camera's JPEG shows no more of them than that).
HELD_STOPS: Final = 9.0
#: Range of readings on a tone against the mid-tone [stops] (own rule: meters show less).
SPOT_RANGE: Final = (-10.0, 10.0)
#: Range of placements of the white, and of headrooms of a sensor [stops] (own rule).
PLACEMENT_RANGE: Final = (0.0, 4.0)
HEADROOM_RANGE: Final = (0.0, 6.0)


def metered_level(settings: Settings, ev100: float, filter_stops: float = 0.0) -> float:
    """Where settings put a scene's mid-tone against the meter's [stops]; 0 as metered, + brighter.

    The level of the light, less the level for which the settings are right, less the filters.

    Args:
        settings: what is set, exact values.
        ev100: level of the light, EV at ISO 100, -30 to 30.
        filter_stops: what the filters take [stops], 0 to 30.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: definition of the exposure value.
    """
    between("ev100", ev100, "EV", *EV_RANGE)
    between("filter_stops", filter_stops, "stops", 0.0, MOST_FILTER_STOPS)
    return ev100 - ev100_of(settings.f_number, settings.shutter_s, settings.iso) - filter_stops


def white_change(spot_stops: float, placement: float = WHITE_PLACEMENT_RAW) -> float:
    """Change that puts the white where it belongs [stops], + brighter: placement less reading.

    Args:
        spot_stops: what the camera's meter shows on the white with the settings as they are,
            against its mid-tone [stops], -10 to 10.
        placement: where the white shall be [stops], 0 to 4.

    Raises:
        OutOfDomainError: a number is out of range.
    """
    between("spot_stops", spot_stops, "stops", *SPOT_RANGE)
    between("placement", placement, "stops", *PLACEMENT_RANGE)
    return placement - spot_stops


def room_above(spot_stops: float, headroom: float = RAW_HEADROOM) -> float:
    """Room between a spot-metered tone and clipping in raw [stops]; negative when it clips.

    Args:
        spot_stops: reading on that tone against the mid-tone [stops], -10 to 10.
        headroom: from the mid-tone to clipping [stops], 0 to 6.

    Raises:
        OutOfDomainError: a number is out of range.
    """
    between("spot_stops", spot_stops, "stops", *SPOT_RANGE)
    between("headroom", headroom, "stops", *HEADROOM_RANGE)
    return headroom - spot_stops


def contrast_stops(
    bright_reflectance: float, dark_reflectance: float, bright_ev: float, dark_ev: float
) -> float:
    """Contrast between two things that may stand in different light [stops].

    log2 of the ratio of their reflectances, plus the difference of the levels of their light.

    Args:
        bright_reflectance: part of the light that the bright one gives back, above 0 to 1.
        dark_reflectance: the same for the dark one, above 0 to 1.
        bright_ev: light on the bright one, EV at ISO 100, -30 to 30.
        dark_ev: light on the dark one, EV at ISO 100, -30 to 30.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: luminance is illuminance times reflectance over pi.
    """
    positive("bright_reflectance", bright_reflectance, "", 1.0)
    positive("dark_reflectance", dark_reflectance, "", 1.0)
    between("bright_ev", bright_ev, "EV", *EV_RANGE)
    between("dark_ev", dark_ev, "EV", *EV_RANGE)
    return math.log2(bright_reflectance / dark_reflectance) + bright_ev - dark_ev
