"""Time zone of a place, offline."""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.sun.zone import zone_name


@pytest.mark.parametrize(
    ("latitude_deg", "longitude_deg", "name"),
    [
        # tz database, zone.tab
        (46.95, 7.45, "Europe/Zurich"),
        (64.14, -21.94, "Atlantic/Reykjavik"),
        (45.52, -122.68, "America/Los_Angeles"),
        (-45.03, 168.66, "Pacific/Auckland"),
        (27.70, 85.32, "Asia/Kathmandu"),
    ],
)
def test_zone_of_a_place_on_land(latitude_deg: float, longitude_deg: float, name: str) -> None:
    """A town is in its country's zone."""
    assert zone_name(latitude_deg, longitude_deg) == name


@pytest.mark.parametrize(
    ("longitude_deg", "hours"), [(-30.0, -2), (0.0, 0), (-150.0, -10), (-179.9, -12)]
)
def test_the_open_sea_keeps_whole_hours(longitude_deg: float, hours: int) -> None:
    """Far from land the zone follows the longitude."""
    name = zone_name(0.0 if longitude_deg else -30.0, longitude_deg)
    offset = datetime(2027, 1, 1, tzinfo=UTC).astimezone(ZoneInfo(name)).utcoffset()
    assert offset == timedelta(hours=hours)


@given(st.floats(-90, 90), st.floats(-180, 180))
def test_every_place_has_a_zone_that_loads(latitude_deg: float, longitude_deg: float) -> None:
    """No point of the Earth is without a zone known to the tz database."""
    assert ZoneInfo(zone_name(latitude_deg, longitude_deg)).key


@pytest.mark.parametrize(
    ("latitude_deg", "longitude_deg"), [(91, 0), (-91, 0), (0, 181), (0, -181), (math.nan, 0)]
)
def test_no_such_place(latitude_deg: float, longitude_deg: float) -> None:
    """Coordinates off the Earth are errors."""
    with pytest.raises(OutOfDomainError):
        zone_name(latitude_deg, longitude_deg)
