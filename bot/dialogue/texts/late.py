"""What is said of light that has passed: when it was, whether it still is, and reviews."""

from __future__ import annotations

from datetime import datetime, timedelta, tzinfo
from typing import Final

from bot.dialogue.lateness import KnownBy, Seen
from bot.dialogue.texts import measures

LATE: Final[dict[str, str]] = {
    "late.seen": "That was {when}, {age} ago: first the light, then settings.",
    "late.seen_about": "That was {when}: first the light, then settings.",
    "ask.light_still": "Is the light still as {when}?",
    "ask.light_still.yes": "yes",
    "ask.light_still.darker": "darker",
    "ask.light_still.brighter": "brighter",
    "ask.light_still.left": "we have left",
    "ask.light_still_frame": "Is the light still as {when}?",
    "ask.light_still_frame.yes": "yes",
    "ask.light_still_frame.darker": "darker",
    "ask.light_still_frame.brighter": "brighter",
    "ask.light_still_frame.left": "we have left",
    "ask.light_still_frame.clock": "its clock is off",
    "late.new_frame": "The old frame says nothing for this light: a new one decides.",
    "late.noted": "Noted.",
    "late.settings": "settings",
    "light.at": "For the light {when}.",
    "light.if": "Only if the light is still as {when}.",
    "light.if_silent": "Only if the light is still as you said: nothing came for {age}.",
    "card.light": "Light",
    # reviews
    "review.held": "{when}: that held.",
    "review.room": "{when}: nothing was lost; up to {stops} brighter would have been room.",
    "review.clipped": "{when}: too bright; {stops} darker would have been the next try.",
    "review.dark": "{when}: too dark by about {stops}.",
    "review.sky": "{when}: only sky was clipped, the water held.",
    "review.look": "{when}: for {look} water from there, {shortest} to {longest}.",
    "review.settings": "{when}: {settings}; {look}.",
    "review.light": "{when}: {light}, noted.",
    "review.leaves": "{when}: moving leaves wanted a second, short frame.",
    "review.frame_held": "{when}: the whites hold.",
    "review.frame_room": "{when}: nothing lost; about {stops} of room to the right was left.",
    "review.frame_darker": "{when}: {stops} darker would have been the next try.",
    "review.frame_sky": "{when}: a sky gap, {position}, {share} of the frame; the water held.",
    "review.frame_unsure": (
        "{when}: area {letter}, {position}, is white without detail; a fault in water, not in sky."
    ),
    "review.next": "For the next light send a new frame.",
    "review.leave": "Your turn-back time was {time}: pack up and walk out now.",
    "when.at": "at {time}",
    "when.yesterday": "yesterday at {time}",
    "when.day": "on {day} {month} at {time}",
    "when.by_camera": "on {day} {month} at {time} by the camera's clock",
    "when.this": "this {words}",
    "when.ago": "{age} ago",
}

_MONTHS: Final = (
    *("January", "February", "March", "April", "May", "June", "July", "August"),
    *("September", "October", "November", "December"),
)
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
        return LATE["when.ago"].format(age=age(seen, now))
    if seen.by is KnownBy.STAMP:
        return _by_camera(datetime.fromisoformat(seen.words))
    if seen.words in _THIS:
        return LATE["when.this"].format(words=seen.words)
    if seen.words in _AT or ":" in seen.words:
        return LATE["when.at"].format(time=seen.words)
    return seen.words.removesuffix("'s").removesuffix("’s")


def clock(moment: datetime, now: datetime, zone: tzinfo) -> str:
    """A moment by the clock of a zone, with its date where that is another."""
    local, today = moment.astimezone(zone), now.astimezone(zone).date()
    time = measures.clock(local)
    if local.date() == today:
        return LATE["when.at"].format(time=time)
    if local.date() == today - timedelta(days=1):
        return LATE["when.yesterday"].format(time=time)
    return LATE["when.day"].format(day=local.day, month=_month(local), time=time)


def _by_camera(stamp: datetime) -> str:
    time = f"{stamp:%H:%M}"
    return LATE["when.by_camera"].format(day=stamp.day, month=_month(stamp), time=time)


def _month(moment: datetime) -> str:
    return f"{_MONTHS[moment.month - 1]} {moment.year}"


def age(seen: Seen, now: datetime) -> str:
    """How long ago, at the best guess."""
    return measures.minutes((now - (seen.likely or seen.latest)).total_seconds() / 60)
