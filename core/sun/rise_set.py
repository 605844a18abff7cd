"""Rise, set, transit and civil twilight of one local day."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from typing import Final

import ephem

from core.errors import within

#: Altitude of the upper limb at rise and set: 34' of refraction (US Naval Observatory).
RISE_LIMB_DEG: Final = -34 / 60
#: Altitude of the centre at civil dawn and dusk, without refraction (US Naval Observatory).
CIVIL_CENTRE_DEG: Final = -6.0

_HALF_DAY_S: Final = 43200.0
#: The sun's mean motion in hour angle [s of time per turn].
_DAY_S: Final = 86400.0
#: Roots are found to well under the second that anybody prints (own rule).
_ROOT_S: Final = 0.05

_Altitude = Callable[[float], float]


@dataclass(frozen=True)
class SunTimes:
    """Times of one day of light, in the zone that was asked for; None: does not happen.

    All belong to the light around `transit`, the sun's highest stand on that local day. Where
    the clock is far from the sun (an evening that ends after midnight), `set` carries the
    next date; a caller prints the date when it differs.
    """

    transit: datetime
    rise: datetime | None
    set: datetime | None
    civil_dawn: datetime | None
    civil_dusk: datetime | None
    #: Altitude of the sun's centre at transit, without refraction [deg].
    highest_deg: float


def sun_times(latitude_deg: float, longitude_deg: float, day: date, zone: tzinfo) -> SunTimes:
    """Rise, set and twilight around the sun's transit on a local day.

    Each is a root of the altitude between a midnight of the sun and the transit, so that an
    evening past 0 h UTC stays on its day, and a day of 23 or 25 hours does no harm.

    Args:
        latitude_deg: north positive [deg], -90 to 90.
        longitude_deg: east positive [deg], -180 to 180.
        day: the local date.
        zone: the zone of that date, and of the answer.

    Returns:
        The times, good to a few seconds over a flat horizon at sea level; a skyline hides the
        sun earlier. Within hours of the start or end of a polar day, about a minute.

    Raises:
        OutOfDomainError: a coordinate is NaN or out of range.

    Source: positions by PyEphem (VSOP87); definitions of the US Naval Observatory.
    """
    within("latitude_deg", latitude_deg, "deg", -90, 90)
    within("longitude_deg", longitude_deg, "deg", -180, 180)
    noon = datetime.combine(day, time(12), tzinfo=zone).astimezone(UTC)
    sky = _Sky(latitude_deg, longitude_deg, noon)
    highest_s = sky.transit_s()

    def at(level: _Altitude, side: int) -> datetime | None:
        found_s = _root(level, highest_s + side * _HALF_DAY_S, highest_s)
        return None if found_s is None else sky.moment(found_s, zone)

    return SunTimes(
        transit=sky.moment(highest_s, zone),
        rise=at(sky.limb_over_rise, -1),
        set=at(sky.limb_over_rise, 1),
        civil_dawn=at(sky.centre_over_civil, -1),
        civil_dusk=at(sky.centre_over_civil, 1),
        highest_deg=sky.centre_deg(highest_s),
    )


class _Sky:
    """The sun over one place, by seconds from a moment."""

    def __init__(self, latitude_deg: float, longitude_deg: float, start: datetime) -> None:
        self._start = start
        self._epoch = ephem.Date(start.replace(tzinfo=None))
        self._place = ephem.Observer()
        self._place.lat = math.radians(latitude_deg)
        self._place.lon = math.radians(longitude_deg)
        self._place.pressure = 0  # refraction is in the definitions, not in the positions
        self._sun = ephem.Sun()

    def moment(self, seconds: float, zone: tzinfo) -> datetime:
        return (self._start + timedelta(seconds=seconds)).astimezone(zone)

    def _look(self, seconds: float) -> None:
        self._place.date = self._epoch + seconds / _DAY_S
        self._sun.compute(self._place)

    def centre_deg(self, seconds: float) -> float:
        self._look(seconds)
        return math.degrees(self._sun.alt)

    def limb_over_rise(self, seconds: float) -> float:
        return self.centre_deg(seconds) + math.degrees(self._sun.radius) - RISE_LIMB_DEG

    def centre_over_civil(self, seconds: float) -> float:
        return self.centre_deg(seconds) - CIVIL_CENTRE_DEG

    def transit_s(self) -> float:
        """Transit nearest to the start, by Newton's steps on the hour angle."""
        seconds = 0.0
        for _ in range(4):
            self._look(seconds)
            angle = float(self._place.sidereal_time()) - float(self._sun.ra)
            seconds -= math.remainder(angle, math.tau) / math.tau * _DAY_S
        return seconds


def _root(level: _Altitude, low_s: float, high_s: float) -> float | None:
    """Where `level` passes zero between a midnight and the transit; None: it does not."""
    if level(low_s) >= 0 or level(high_s) < 0:
        return None
    while abs(high_s - low_s) > _ROOT_S:
        middle_s = (low_s + high_s) / 2
        if level(middle_s) < 0:
            low_s = middle_s
        else:
            high_s = middle_s
    return (low_s + high_s) / 2
