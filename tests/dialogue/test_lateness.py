"""How old what a message tells is: a table for each thing that can be known, laws for all."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import NamedTuple
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.lateness import (
    GONE_AFTER,
    LIGHT_HOLDS,
    LOW_LIGHT_HOLDS,
    Arrival,
    Day,
    KnownBy,
    Seen,
    Standing,
    light_holds,
    seen_between,
    silence_before,
    standing,
)
from bot.dialogue.reading.moments import split_moment
from bot.dialogue.when_told import When, WhenKind

CREEK = ZoneInfo("America/New_York")  # UTC-4 in June
NOON = datetime(2027, 6, 18, 16, 0, tzinfo=UTC)  # 12:00 at the creek


def ago(minutes: float) -> datetime:
    """So long before noon at the creek."""
    return NOON - timedelta(minutes=minutes)


class Told(NamedTuple):
    """A message of noon at the creek, and the interval that it tells of [min before noon]."""

    text: str
    oldest: float
    youngest: float
    zone: ZoneInfo | None = CREEK


#: Own rules: "an hour ago" within a quarter; parts of the day by the local clock; without a zone a
#: clock time is older than light holds.
TOLD = [
    Told("all of it blinks", 0, 0),
    Told("an hour ago all of it blinked", 75, 45),
    Told("1 h 20 min ago too bright", 100, 60),
    Told("at 11:15 it was too dark", 45, 45),
    Told("at 11:15 pm it was too dark", 12 * 60 + 45, 12 * 60 + 45),
    Told("11:15 patches", 45, 45),
    Told("at 1:15 it was all white", 10 * 60 + 45, 10 * 60 + 45),
    Told("at 12:01 it was all white", 0, 0),
    Told("at 12:30 it was all white", 0, 0),
    Told("this morning it was too dark", 7 * 60, 0),
    Told("at dawn it was too dark", 9 * 60, 3 * 60),
    Told("this evening it was too dark", 0, 0),
    Told("yesterday it was mush", 48 * 60, 8 * 60),
    Told("3 days ago it was mush", 96 * 60, 48 * 60),
    Told("too dark, from earlier", 16 * 60, 30),
    Told("at 11:15 it was too dark", 16 * 60, 30, None),
    Told("this morning it was too dark", 16 * 60, 30, None),
]


@pytest.mark.parametrize("told", TOLD, ids=lambda told: f"{told.text}, {told.zone}")
def test_words_tell_an_interval(told: Told) -> None:
    """The words of a message bound when it was seen."""
    _, when = split_moment(told.text)
    seen = seen_between(Arrival(NOON), when, told.zone)
    assert seen.earliest == ago(told.oldest)
    assert abs(seen.latest - ago(told.youngest)) <= timedelta(seconds=1)


def test_what_was_typed_in_a_silence_is_counted_from_its_ends() -> None:
    """What is told as "an hour ago", typed somewhere in two silent hours."""
    when = When(WhenKind.AGO, "an hour ago", 60)
    seen = seen_between(Arrival(NOON, ago(120)), when, None)
    assert (seen.earliest, seen.latest) == (ago(195), ago(45))


@pytest.mark.parametrize(
    ("gap_s", "silent", "since"),
    [
        (None, False, None),
        (60, False, None),
        (31 * 60, False, "heard"),
        (9 * 3600, False, None),  # another visit
        (5, True, "silence"),  # the second of several that came together
        (60, True, None),
    ],
)
def test_silence_before_a_message(gap_s: float | None, silent: bool, since: str | None) -> None:
    """A silence of more than half an hour counts, for all messages that come together after it."""
    heard_at = None if gap_s is None else NOON - timedelta(seconds=gap_s)
    found = silence_before(NOON, heard_at, ago(300) if silent else None)
    assert found == {"heard": heard_at, "silence": ago(300), None: None}[since]


SUN = Day(sunrise=ago(6 * 60), sunset=NOON + timedelta(hours=8))


@pytest.mark.parametrize(
    ("day", "holds"),
    [
        (Day(), LIGHT_HOLDS),
        (SUN, LIGHT_HOLDS),
        (Day(sunset=NOON + timedelta(minutes=59)), LOW_LIGHT_HOLDS),
        (Day(sunset=ago(30)), LOW_LIGHT_HOLDS),
        (Day(sunrise=ago(59)), LOW_LIGHT_HOLDS),
        (Day(leave_at=ago(1)), LOW_LIGHT_HOLDS),
        (Day(leave_at=NOON + timedelta(hours=1)), LIGHT_HOLDS),
    ],
)
def test_light_holds_shorter_where_it_changes_fast(day: Day, holds: timedelta) -> None:
    """Near sunrise and sunset, and after the turn-back time (own rule)."""
    assert light_holds(NOON, day) == holds


def between(oldest: float, youngest: float) -> Seen:
    """Something that was seen between these ages [min]."""
    return Seen(earliest=ago(oldest), latest=ago(youngest), by=KnownBy.WORDS)


@pytest.mark.parametrize(
    ("seen", "day", "stands"),
    [
        (between(0, 0), SUN, Standing.LIVE),
        (between(30, 30), SUN, Standing.LIVE),
        (between(31, 0), SUN, Standing.UNSURE),
        (between(31, 31), SUN, Standing.PAST),
        (between(11, 11), Day(sunset=NOON + timedelta(minutes=20)), Standing.PAST),
        (between(8 * 60, 8 * 60), SUN, Standing.GONE),
        (between(31, 31), Day(sunset=ago(15)), Standing.GONE),
        (between(31, 31), Day(leave_at=ago(40)), Standing.GONE),
        (between(5, 5), Day(leave_at=ago(40)), Standing.LIVE),
    ],
)
def test_what_light_of_then_is_good_for(seen: Seen, day: Day, stands: Standing) -> None:
    """It holds, may hold, is to be asked about, or is gone with its visit."""
    assert standing(seen, NOON, day) is stands


KINDS = st.sampled_from(
    [
        None,
        When(WhenKind.AGO, "an hour ago", 60),
        When(WhenKind.CLOCK, "11:15", 11 * 60 + 15, either_half=True),
        When(WhenKind.CLOCK, "23:15", 23 * 60 + 15),
        When(WhenKind.PART, "morning"),
        When(WhenKind.PART, "noon"),
        When(WhenKind.DAYS, "yesterday", 1),
        When(WhenKind.EARLIER, "earlier"),
    ]
)
ZONES = st.sampled_from([None, CREEK, ZoneInfo("Asia/Kathmandu"), ZoneInfo("Pacific/Kiritimati")])
MINUTES = st.integers(0, 60 * 24 * 20)


@given(KINDS, ZONES, MINUTES, st.one_of(st.none(), st.integers(31, 479)))
def test_nothing_is_seen_after_it_was_told(
    when: When | None, zone: ZoneInfo | None, minutes: int, silence: int | None
) -> None:
    """The interval has its ends in order, and ends at the arrival at the latest."""
    sent_at = ago(minutes)
    since = None if silence is None else sent_at - timedelta(minutes=silence)
    seen = seen_between(Arrival(sent_at, since), when, zone)
    assert seen.earliest <= seen.latest <= sent_at
    assert seen.likely is None or seen.earliest <= seen.likely <= sent_at


@given(st.integers(0, 3000), st.integers(0, 3000), st.integers(0, 600))
def test_light_never_grows_younger(oldest: int, youngest: int, later: int) -> None:
    """What is past stays past, whatever time goes by."""
    order = [Standing.LIVE, Standing.UNSURE, Standing.PAST, Standing.GONE]
    seen = between(max(oldest, youngest), min(oldest, youngest))
    then = standing(seen, NOON, Day())
    afterwards = standing(seen, NOON + timedelta(minutes=later), Day())
    assert order.index(then) <= order.index(afterwards)


def test_the_night_is_longer_than_light_holds() -> None:
    """The limits stand in their order."""
    assert LOW_LIGHT_HOLDS < LIGHT_HOLDS < GONE_AFTER
