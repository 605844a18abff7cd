"""Rise, set, transit and civil twilight of one local day."""

from __future__ import annotations

import math
from datetime import UTC, date, datetime, timedelta, timezone, tzinfo
from typing import NamedTuple
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.sun.rise_set import SunTimes, sun_times

MOUNTAIN = timezone(timedelta(hours=-7))
PACIFIC_SUMMER = timezone(timedelta(hours=-7))
GOLDEN = (39.742476, -105.1786)
#: 37 deg 45' 36" N, 122 deg 26' 24" W.
BAY = (37.76, -122.44)


class Ref(NamedTuple):
    """One published time."""

    place: tuple[float, float]
    zone: tzinfo
    day: date
    event: str
    clock: str
    tolerance_s: float
    source: str


SPA = "NREL solar position site, as in pvlib-python tests/test_solarposition.py"
ROOT = "root of the NREL SPA zenith 90.8334 deg, computed with pvlib"
USNO = "US Naval Observatory table, whole minutes"
REFERENCES = [
    Ref(GOLDEN, MOUNTAIN, date(2003, 10, 17), "rise", "06:12:43", 2, "NREL/TP-560-34302, example"),
    # The report prints 17:20:19 for the 17th: that is the evening before (0 h UTC in between).
    Ref(GOLDEN, MOUNTAIN, date(2003, 10, 16), "set", "17:20:18", 2, "NREL/TP-560-34302, a day off"),
    Ref(GOLDEN, MOUNTAIN, date(2003, 10, 17), "set", "17:18:51", 2, ROOT),
    Ref(GOLDEN, MOUNTAIN, date(2015, 1, 2), "rise", "07:21:55", 2, SPA),
    Ref(GOLDEN, MOUNTAIN, date(2015, 1, 2), "set", "16:47:43", 2, SPA),
    Ref(GOLDEN, MOUNTAIN, date(2015, 1, 2), "transit", "12:04:45", 2, SPA),
    Ref(GOLDEN, MOUNTAIN, date(2015, 8, 2), "rise", "05:00:27", 3, SPA),
    Ref(GOLDEN, MOUNTAIN, date(2015, 8, 2), "transit", "12:06:58", 2, SPA),
    # SPA prints 19:13:58 there, the evening of 1 August; the US Naval Observatory 19:13.
    Ref(GOLDEN, MOUNTAIN, date(2015, 8, 2), "set", "19:12:53", 2, ROOT),
    Ref(GOLDEN, MOUNTAIN, date(2015, 8, 1), "set", "19:13:58", 3, SPA + ", a day off"),
    Ref((35, 0), UTC, date(1994, 1, 2), "rise", "07:08:12", 2, "pvlib-python tests/test_spa.py"),
    Ref((35, 0), UTC, date(1994, 1, 2), "set", "16:59:55", 2, "pvlib-python tests/test_spa.py"),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 13), "civil_dawn", "05:56:00", 31, USNO),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 13), "rise", "06:24:00", 31, USNO),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 13), "set", "20:04:00", 31, USNO),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 13), "civil_dusk", "20:32:00", 31, USNO),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 15), "civil_dawn", "05:58:00", 31, USNO),
    Ref(BAY, PACIFIC_SUMMER, date(2016, 8, 15), "set", "20:02:00", 31, USNO),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda r: f"{r.day} {r.event}")
def test_times_match_published_ones(ref: Ref) -> None:
    """The published time comes out, on the right evening, within the digits that are printed."""
    found = getattr(sun_times(*ref.place, ref.day, ref.zone), ref.event)
    expected = datetime.fromisoformat(f"{ref.day}T{ref.clock}").replace(tzinfo=ref.zone)
    assert abs((found - expected).total_seconds()) <= ref.tolerance_s


TROMSO = (69.65, 18.96)
OSLO = ZoneInfo("Europe/Oslo")


def test_polar_day_has_no_sunset() -> None:
    """In June the sun of the far north stays up: no rise, no set, no dusk."""
    times = sun_times(*TROMSO, date(2026, 6, 21), OSLO)
    assert (times.rise, times.set, times.civil_dawn, times.civil_dusk) == (None, None, None, None)
    assert times.highest_deg > 0


def test_polar_night_has_twilight_only() -> None:
    """In December it stays below the horizon, and civil dawn and dusk still come."""
    times = sun_times(*TROMSO, date(2026, 12, 21), OSLO)
    assert (times.rise, times.set) == (None, None)
    assert times.highest_deg < 0
    assert times.civil_dawn is not None
    assert times.civil_dusk is not None
    # 90 deg less the latitude less the tilt of the Earth's axis, 23.44 deg
    assert times.highest_deg == pytest.approx(90 - 69.65 - 23.44, abs=0.02)


def test_last_sunrise_before_the_polar_day() -> None:
    """On the first day without a sunset the sun still rises."""
    times = sun_times(*TROMSO, date(2026, 5, 18), OSLO)
    assert times.rise is not None
    assert times.set is None


def test_deep_polar_night_has_not_even_twilight() -> None:
    """At the pole in December nothing happens."""
    times = sun_times(90, 0, date(2026, 12, 21), UTC)
    assert (times.civil_dawn, times.civil_dusk) == (None, None)


def test_an_evening_after_midnight_belongs_to_its_day() -> None:
    """Where the clock runs three hours before the sun, the day's sunset carries the next date."""
    times = sun_times(64.5, -165.4, date(2026, 6, 21), ZoneInfo("America/Nome"))
    assert times.rise is not None
    assert times.set is not None
    assert times.set.date() == date(2026, 6, 22)
    assert times.rise < times.transit < times.set


@pytest.mark.parametrize("day", [date(2027, 3, 28), date(2027, 10, 31)])
def test_days_on_which_the_clocks_change(day: date) -> None:
    """A day of 23 or 25 hours has the same real length of light as its neighbours, nearly."""
    zone = ZoneInfo("Europe/Zurich")
    lengths = []
    for shift in (-1, 0, 1):
        times = sun_times(46.95, 7.45, day + timedelta(days=shift), zone)
        assert times.rise is not None
        assert times.set is not None
        assert times.rise.date() == times.set.date() == day + timedelta(days=shift)
        light = times.set.astimezone(UTC) - times.rise.astimezone(UTC)
        lengths.append(light.total_seconds())
    assert lengths[1] == pytest.approx((lengths[0] + lengths[2]) / 2, abs=5)


def _events(times: SunTimes) -> list[datetime]:
    found = [times.civil_dawn, times.rise, times.transit, times.set, times.civil_dusk]
    return [moment.astimezone(UTC) for moment in found if moment is not None]


@given(
    st.floats(-90, 90),
    st.floats(-180, 180),
    st.dates(date(1950, 1, 1), date(2099, 12, 31)),
)
def test_events_follow_each_other(latitude_deg: float, longitude_deg: float, day: date) -> None:
    """Dawn, rise, transit, set, dusk: in this order, within half a day of the transit."""
    zone = timezone(timedelta(hours=round(longitude_deg / 15)))
    times = sun_times(latitude_deg, longitude_deg, day, zone)
    events = _events(times)
    assert events == sorted(events)
    assert events[-1] - events[0] <= timedelta(hours=24, seconds=2)
    assert times.transit.date() == day


@given(st.floats(-60, 60), st.floats(-180, 180), st.dates(date(1950, 1, 1), date(2099, 12, 31)))
def test_below_the_polar_circles_the_sun_rises_and_sets(
    latitude_deg: float, longitude_deg: float, day: date
) -> None:
    """Between 60 deg south and north every day has all five events."""
    zone = timezone(timedelta(hours=round(longitude_deg / 15)))
    assert len(_events(sun_times(latitude_deg, longitude_deg, day, zone))) == 5


@pytest.mark.parametrize(
    ("latitude_deg", "longitude_deg"), [(90.1, 0), (-90.1, 0), (0, 180.1), (0, math.nan)]
)
def test_no_such_place(latitude_deg: float, longitude_deg: float) -> None:
    """Coordinates off the Earth are errors."""
    with pytest.raises(OutOfDomainError):
        sun_times(latitude_deg, longitude_deg, date(2027, 1, 1), UTC)
