"""Light levels by their names, and how bright settings make a scene in them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from core.camera import MOST_FILTER_STOPS
from core.domain import between
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


#: Contrast that one frame holds and that still looks clean [stops] (common practice: 8 to 9 of the
#: 10 to 13 that a sensor records; a camera's JPEG shows no more of them than that).
HELD_STOPS: Final = 9.0


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
