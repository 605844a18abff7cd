"""When a frame was taken, by clocks that keep any zone and are any way off."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.camera_clock import Stamp, ahead_of_utc, stamp_of, taken_between

CREEK = ZoneInfo("America/New_York")  # UTC-4 in June
NOON = datetime(2027, 6, 18, 16, 0, tzinfo=UTC)  # 12:00 at the creek


def stamp(text: str, offset_min: int | None = None) -> Stamp:
    """The stamp of a file that has one."""
    found = stamp_of(text, offset_min)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("text", "offset_min", "zone", "ahead_min", "age_min"),
    [
        ("2027-06-18T11:50:00", None, CREEK, None, 10),
        ("2027-06-18T11:50:00", -240, None, None, 10),
        ("2027-06-18T17:50:00", 120, CREEK, None, 10),  # the stated zone beats that of the place
        ("2027-06-18T12:01:30", None, CREEK, None, 0),  # clocks differ a little
        ("2027-06-18T12:03:00", None, CREEK, None, None),  # a clock in the future tells nothing
        ("2027-06-18T13:40:00", None, CREEK, 110 - 240, 10),
        ("2027-06-18T13:20:00", 0, None, -150, 10),  # learned beside a stated zone
        ("2027-06-18T14:20:00", None, CREEK, -240, None),  # the learned clock was changed
    ],
)
def test_one_moment(
    text: str,
    offset_min: int | None,
    zone: ZoneInfo | None,
    ahead_min: float | None,
    age_min: float | None,
) -> None:
    """Learned clock, stated zone, zone of the place: the best known one counts."""
    ahead = None if ahead_min is None else timedelta(minutes=ahead_min)
    found = taken_between(stamp(text, offset_min), NOON, zone=zone, ahead=ahead)
    if age_min is None:
        assert found is None
    else:
        assert found is not None
        assert found.earliest == found.latest == found.likely
        assert NOON - found.latest == timedelta(minutes=age_min)


@pytest.mark.parametrize(
    ("text", "old"),
    [
        ("2027-06-18T11:50:00", False),
        ("2027-06-18T04:01:00", False),  # 12 hours behind UTC it would be now
        ("2027-06-18T03:59:00", True),
        ("2027-06-17T14:10:00", True),
        ("2030-01-01T00:00:00", False),
    ],
)
def test_without_any_zone(text: str, old: bool) -> None:
    """Only what is old in every zone of the earth is old."""
    found = taken_between(stamp(text), NOON, zone=None, ahead=None)
    assert (found is not None) is old
    if found is not None:
        assert found.latest < NOON
        assert found.latest - found.earliest == timedelta(hours=26)
        assert found.words == text


def test_no_stamp() -> None:
    """A file without a stamp tells no time."""
    assert stamp_of(None, 120) is None


@given(
    st.datetimes(stamp("1990-01-01T00:00:00").local, stamp("2099-01-01T00:00:00").local),
    st.one_of(st.none(), st.integers(-720, 840)),
    st.integers(0, 10_000),
)
def test_a_learned_clock_tells_the_time(
    local: datetime, offset_min: int | None, later_min: int
) -> None:
    """However far off a clock is: learned once, it dates the frames that follow."""
    first = Stamp(local, None if offset_min is None else timedelta(minutes=offset_min))
    ahead = ahead_of_utc(first, NOON)
    second = Stamp(local + timedelta(minutes=later_min), first.offset)
    sent_at = NOON + timedelta(minutes=later_min)
    found = taken_between(second, sent_at, zone=CREEK, ahead=ahead)
    assert found is not None
    assert found.latest == sent_at
