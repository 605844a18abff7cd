"""Moments that have passed put into words: by the clock, by the day, by their age."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from typing import Final

from bot.dialogue.lateness import KnownBy, Seen
from bot.dialogue.texts import measures
from bot.dialogue.texts.catalogue import TEXTS

_THIS: Final = frozenset({"morning", "afternoon", "evening"})
_AT: Final = frozenset({"noon", "midday", "lunch", "dawn", "sunrise", "daybreak"})


def named(seen: Seen, now: datetime, zone: tzinfo | None) -> str:
    """When something was, to follow `as`, `that was` or `for the light`.

    A clock time where the zone is known, the date with it on another day; without a zone the
    age, which holds in all of them.
    """
    if seen.likely is not None and zone is not None:
        return clock(seen.likely, now, zone)
    if seen.likely is not None:
        return TEXTS["when.ago"].format(age=age(seen, now))
    if seen.by is KnownBy.STAMP:
        return _by_camera(datetime.fromisoformat(seen.words))
    if seen.words in _THIS:
        return TEXTS[f"when.this.{seen.words}"]
    if seen.words in _AT or ":" in seen.words:
        return TEXTS["when.at"].format(time=seen.words)
    return seen.words.removesuffix("'s").removesuffix("’s")


def clock(moment: datetime, now: datetime, zone: tzinfo) -> str:
    """A moment by the clock of a zone, with its date where that is another."""
    local, today = moment.astimezone(zone), now.astimezone(zone).date()
    time = measures.clock(local)
    if local.date() == today:
        return TEXTS["when.at"].format(time=time)
    if local.date() == today - timedelta(days=1):
        return TEXTS["when.yesterday"].format(time=time)
    return TEXTS["when.day"].format(date=measures.date(local), time=time)


def _by_camera(stamp: datetime) -> str:
    time = measures.hour_and_minute(stamp)
    return TEXTS["when.by_camera"].format(date=measures.date(stamp), time=time)


def age(seen: Seen, now: datetime) -> str:
    """How long ago, at the best guess."""
    return measures.minutes((now - (seen.likely or seen.latest)).total_seconds() / 60)
