"""When a frame was taken: the camera's stamp, its zone, and how far off its clock is."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, tzinfo
from typing import Final

from bot.dialogue.lateness import CLOCKS_DIFFER, KnownBy, Seen

#: The clocks of the earth stand between these offsets from UTC (tz database).
WESTERNMOST: Final = timedelta(hours=-12)
EASTERNMOST: Final = timedelta(hours=14)
#: A frame that was asked for is taken at once when it comes within this (own rule).
AT_ONCE: Final = timedelta(minutes=15)


@dataclass(frozen=True)
class Stamp:
    """What a frame's file says of its time.

    Args:
        local: the camera's clock, without a zone.
        offset: the zone that the camera states.
    """

    local: datetime
    offset: timedelta | None = None

    @property
    def may_be_unset(self) -> bool:
        """Whether a clock may never have been set: they begin with a year (own rule: its day)."""
        return self.offset is None and (self.local.month, self.local.day) == (1, 1)

    @property
    def as_utc(self) -> datetime:
        """The stamp taken at its word; without a zone as if it were of UTC."""
        return self.local.replace(tzinfo=UTC) - (self.offset or timedelta(0))


def stamp_of(taken_at: str | None, offset_min: int | None) -> Stamp | None:
    """The stamp of a report, None where the file has none."""
    if taken_at is None:
        return None
    offset = None if offset_min is None else timedelta(minutes=offset_min)
    return Stamp(datetime.fromisoformat(taken_at), offset)


def taken_between(
    stamp: Stamp, sent_at: datetime, *, zone: tzinfo | None, ahead: timedelta | None
) -> Seen | None:
    """Between which moments a frame was taken.

    What is known best counts: how far off this camera's clock was found to be, the zone that the
    camera states, the zone of the place; without any, all zones of the earth.

    Args:
        stamp: what the file says.
        sent_at: when it reached the server; it was taken before.
        zone: of the place.
        ahead: the stamp at its word less the true time, learned from a frame sent at once.

    Returns:
        The interval, None where the stamp says nothing: a clock in the future, or one that a
        zone alone can explain.
    """
    if ahead is None and stamp.offset is None and zone is None:
        return _in_any_zone(stamp, sent_at)
    if ahead is not None or stamp.offset is not None:
        taken = stamp.as_utc - (ahead or timedelta(0))
    else:
        taken = stamp.local.replace(tzinfo=zone).astimezone(UTC)
    slack = AT_ONCE if ahead is not None else CLOCKS_DIFFER
    if taken > sent_at + slack:
        return None
    taken = min(taken, sent_at)
    return Seen(earliest=taken, latest=taken, by=KnownBy.STAMP, likely=taken)


def _in_any_zone(stamp: Stamp, sent_at: datetime) -> Seen | None:
    """Old in every zone of the earth, or nothing is known."""
    latest = stamp.as_utc - WESTERNMOST
    if latest >= sent_at:
        return None
    return Seen(
        earliest=stamp.as_utc - EASTERNMOST,
        latest=latest,
        by=KnownBy.STAMP,
        words=stamp.local.isoformat(),
    )


def ahead_of_utc(stamp: Stamp, taken: datetime) -> timedelta:
    """How far a stamp at its word is ahead of the time when the frame was taken."""
    return stamp.as_utc - taken
