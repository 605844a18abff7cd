"""How old what a message tells is: from what can be known to an interval, and what follows."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time, timedelta, tzinfo
from enum import Enum
from typing import Final

from pydantic import AwareDatetime

from bot.dialogue.stored import Stored
from bot.dialogue.when_told import When, WhenKind

#: Light that was seen holds for this long without a word (own rule: in half an hour the sun goes
#: 7.5 degrees on, a fist at arm's length less a finger; shade and clouds move as far).
LIGHT_HOLDS: Final = timedelta(minutes=30)
#: Near sunrise and sunset, and after the turn-back time (own rule: in the hour before sunset light
#: falls by a stop in about 15 min, after it in 4 to 5 min, from the lux of clear skies, from
#: memory: 10 000 with the sun 10 degrees up, 400 at sunset, 3.4 at the end of civil twilight; who
#: is past the turn-back time is on the way out and tells of light that was left behind).
LOW_LIGHT_HOLDS: Final = timedelta(minutes=10)
#: The hour before sunset and after sunrise counts as low light (own rule).
LOW_LIGHT: Final = timedelta(hours=1)
#: Older than this nobody stands in that light any more (own rule: as the night between two walks).
GONE_AFTER: Final = timedelta(hours=8)
#: Messages that come within this of each other after a silence were typed offline (own rule:
#: nobody types two reports of a frame in ten seconds).
TOGETHER: Final = timedelta(seconds=10)
#: Clocks of phones and servers differ by as much (own rule).
CLOCKS_DIFFER: Final = timedelta(minutes=2)

#: "An hour ago" is meant within a quarter of itself (own rule).
_ABOUT: Final = 0.25
#: A clock time that was this long ago at most is meant by "at 14:10" (own rule).
_SAME_DAY: Final = timedelta(hours=16)
#: Parts of a day as people name them [h of the local clock] (own rule).
_PARTS: Final[dict[str, tuple[int, int]]] = {
    "morning": (5, 12),
    "afternoon": (12, 18),
    "evening": (17, 23),
    "noon": (11, 14),
    "midday": (11, 14),
    "lunch": (11, 14),
    "dawn": (3, 9),
    "daybreak": (3, 9),
    "sunrise": (3, 9),
}


class KnownBy(Enum):
    """What the age of a message was taken from; the value is what the database stores."""

    ARRIVAL = "arrival"  # one message, nothing against its being typed when it came
    SILENCE = "silence"  # the first ones after a silence: typed somewhere in it
    WORDS = "words"  # the message says when
    STAMP = "stamp"  # the camera's stamp in the file
    CONFIRMED = "confirmed"  # the person says that the light is still the same


class Seen(Stored):
    """Between which two moments something was seen, and the best guess."""

    earliest: AwareDatetime
    latest: AwareDatetime
    by: KnownBy
    #: The likeliest moment, None where only the interval is known.
    likely: AwareDatetime | None = None
    #: How it is named where no clock can: the person's own words, the camera's stamp.
    words: str = ""


class Standing(Enum):
    """What light that was seen is good for now."""

    LIVE = "live"  # it holds
    UNSURE = "unsure"  # it may be older than light holds: settings with their condition
    PAST = "past"  # it is older: ask before giving settings
    GONE = "gone"  # that visit is over: a review


@dataclass(frozen=True)
class Arrival:
    """How a message came.

    Args:
        sent_at: the server's stamp; it was typed then or before.
        silent_since: when the person was heard before, if a silence lies between.
    """

    sent_at: datetime
    silent_since: datetime | None = None

    @property
    def seen(self) -> Seen:
        """What the arrival alone tells."""
        if self.silent_since is None:
            return Seen(
                earliest=self.sent_at,
                latest=self.sent_at,
                by=KnownBy.ARRIVAL,
                likely=self.sent_at,
            )
        return Seen(
            earliest=self.silent_since,
            latest=self.sent_at,
            by=KnownBy.SILENCE,
            likely=self.sent_at,
        )


@dataclass(frozen=True)
class Day:
    """What is known of the light of the day around now; None: not known.

    Args:
        sunrise: of the local day.
        sunset: of the local day.
        leave_at: the turn-back time.
    """

    sunrise: datetime | None = None
    sunset: datetime | None = None
    leave_at: datetime | None = None


def silence_before(
    sent_at: datetime,
    heard_at: datetime | None,
    silent_since: datetime | None,
    holds: timedelta = LIGHT_HOLDS,
) -> datetime | None:
    """When the silence before a message began, None when there was none.

    Args:
        sent_at: the server's stamp of the message.
        heard_at: that of the person's message before; None: there was none.
        silent_since: the silence that lay before that one, if one did.
        holds: a silence is at least this long.
    """
    if heard_at is None:
        return None
    gap = sent_at - heard_at
    if gap > GONE_AFTER:
        return None  # another visit, or home: what comes now was typed now
    if gap > holds:
        return heard_at
    return silent_since if gap <= TOGETHER else None


def seen_between(arrival: Arrival, when: When | None, zone: tzinfo | None) -> Seen:
    """Between which moments was seen what a message tells.

    Args:
        arrival: how it came.
        when: what it says itself.
        zone: of the place, None while unknown: then a clock time can't be placed in the day.

    Returns:
        The interval; its end is never after the arrival.
    """
    if when is None:
        return arrival.seen
    match when.kind:
        case WhenKind.AGO:
            return _ago(arrival, timedelta(minutes=when.amount))
        case WhenKind.CLOCK if zone is not None:
            return _by_clock(arrival, when, zone)
        case WhenKind.PART if zone is not None:
            return _by_part(arrival, when, zone)
        case WhenKind.DAYS:
            return _days_ago(arrival, when)
        case _:
            return _before(arrival, when)


def _ago(arrival: Arrival, ago: timedelta) -> Seen:
    """Counted from when it was typed, which lies in the silence or at the arrival."""
    typed_from = arrival.silent_since or arrival.sent_at
    return Seen(
        earliest=typed_from - ago * (1 + _ABOUT),
        latest=arrival.sent_at - ago * (1 - _ABOUT),
        by=KnownBy.WORDS,
        likely=arrival.sent_at - ago,
    )


def _by_clock(arrival: Arrival, when: When, zone: tzinfo) -> Seen:
    """The last time that the local clock showed this; one to come is none."""
    local = arrival.sent_at.astimezone(zone)
    halves = (0, 12) if when.either_half else (0,)
    moments = []
    for half in halves:
        hour, minute = divmod(int(when.amount) + 60 * half, 60)
        moment = datetime.combine(local.date(), time(hour, minute), tzinfo=zone)
        moments += [moment, moment - timedelta(days=1)]
    past = [moment for moment in moments if moment <= local + CLOCKS_DIFFER]
    found = min(max(past), local)
    if local - found > _SAME_DAY:
        return arrival.seen
    return Seen(earliest=found, latest=found, by=KnownBy.WORDS, likely=found)


def _by_part(arrival: Arrival, when: When, zone: tzinfo) -> Seen:
    local = arrival.sent_at.astimezone(zone)
    begin, end = (
        datetime.combine(local.date(), time(hour), tzinfo=zone) for hour in _PARTS[when.words]
    )
    if begin >= local:
        return arrival.seen
    return Seen(
        earliest=begin,
        latest=min(end, local),
        by=KnownBy.WORDS,
        words=when.words,
    )


def _days_ago(arrival: Arrival, when: When) -> Seen:
    """Another day: gone, however late in the night it was."""
    return Seen(
        earliest=arrival.sent_at - timedelta(days=when.amount + 1),
        latest=arrival.sent_at - max(timedelta(days=when.amount - 1), GONE_AFTER),
        by=KnownBy.WORDS,
        words=when.words,
    )


def _before(arrival: Arrival, when: When) -> Seen:
    """Some time before: long enough to be worth saying (own rule: longer than light holds)."""
    return Seen(
        earliest=arrival.sent_at - _SAME_DAY,
        latest=arrival.sent_at - LIGHT_HOLDS - timedelta(seconds=1),
        by=KnownBy.WORDS,
        words=when.words,
    )


# what follows


def light_holds(now: datetime, day: Day) -> timedelta:
    """For how long light that was seen holds, at this hour of the day.

    Returns:
        The longer limit by day; the shorter one near sunrise and sunset, in the night, and after
        the turn-back time.
    """
    low = day.leave_at is not None and now >= day.leave_at
    if day.sunset is not None:
        low = low or now >= day.sunset - LOW_LIGHT
    if day.sunrise is not None:
        low = low or now <= day.sunrise + LOW_LIGHT
    return LOW_LIGHT_HOLDS if low else LIGHT_HOLDS


def standing(seen: Seen, now: datetime, day: Day) -> Standing:
    """What light that was seen then is good for now.

    Args:
        seen: between which moments.
        now: the present.
        day: sun and turn-back time around now.
    """
    holds = light_holds(now, day)
    over = day.leave_at is not None and day.leave_at <= now
    over = over or (day.sunset is not None and seen.latest < day.sunset <= now)
    youngest, oldest = now - seen.latest, now - seen.earliest
    if youngest >= GONE_AFTER or (over and youngest > holds):
        return Standing.GONE
    if youngest > holds:
        return Standing.PAST
    return Standing.UNSURE if oldest > holds else Standing.LIVE
