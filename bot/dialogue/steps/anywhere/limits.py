"""Limits of one person: messages a minute, frames a day, bytes kept; each is told once a period."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta, tzinfo
from typing import Final
from zoneinfo import ZoneInfo

from bot.dialogue.compose import Role
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.terms import Spent
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.sun.zone import zone_name

_MINUTE: Final = timedelta(minutes=1)
_DAY: Final = timedelta(days=1)
#: Commands that are read whatever was sent before (own rule: a way out is never closed).
_ALWAYS_READ: Final = frozenset({"stop", "cancel", "forget", "help", "commands"})
#: Questions whose answer is read whatever was sent before: danger, and the way out.
_ALWAYS_HEARD: Final = frozenset({"safe", "out_there", "in_danger", "forget"})
_MEGABYTE: Final = 1_000_000


def message_refused(turn: Turn, text: str = "") -> bool:
    """Whether a message stays unread, since too many came within a minute.

    Counted by the time at which the homeserver stamped the messages: what has waited while the
    bot was down was not sent in one minute. Danger is read before this is asked.
    """
    question = turn.context.conversation.question
    if question is not None and question.name in _ALWAYS_HEARD:
        return False
    if command_of(text) in _ALWAYS_READ:
        return False
    most = turn.context.terms.messages_a_minute
    at = min(turn.origin.sent_at, turn.now)
    if most is None or _takes_one(turn, "messages", most, at, _MINUTE):
        return False
    until = _period(turn, "messages", at, _MINUTE).since + _MINUTE
    wait = measures.wait((until - at).total_seconds())
    _tell_once(turn, "messages", at, _MINUTE, most=str(most), wait=wait)
    return True


def frame_refused(turn: Turn) -> bool:
    """Whether a frame is not measured: the disk's share or the day's frames are used up."""
    return _disk_full(turn) or _day_full(turn)


def _disk_full(turn: Turn) -> bool:
    terms, at = turn.context.terms, turn.now
    if terms.most_bytes is None or terms.kept_bytes < terms.most_bytes:
        _keep(turn, "bytes", None)
        return False
    again = terms.room_again_at or at + timedelta(days=terms.frames_days)
    _tell_once(
        turn,
        "bytes",
        at,
        _DAY,
        most=measures.plain(terms.most_bytes / _MEGABYTE),
        time=_written(turn, again),
        days=str(terms.frames_days),
    )
    return True


def _day_full(turn: Turn) -> bool:
    most, at = turn.context.terms.frames_a_day, min(turn.origin.sent_at, turn.now)
    if most is None or _takes_one(turn, "frames", most, at, _DAY):
        return False
    again = _period(turn, "frames", at, _DAY).since + _DAY
    _tell_once(turn, "frames", at, _DAY, most=str(most), time=_written(turn, again))
    return True


def _takes_one(turn: Turn, name: str, most: int, at: datetime, length: timedelta) -> bool:
    """Use one of a limit, if there is one left in this period."""
    spent = _period(turn, name, at, length)
    if spent.count >= most:
        return False
    _keep(turn, name, spent.model_copy(update={"count": spent.count + 1}))
    return True


def _period(turn: Turn, name: str, at: datetime, length: timedelta) -> Spent:
    """The period under way; one begins with the first that is used of it."""
    spent = turn.context.person.spent.get(name)
    if spent is None or at - spent.since >= length:
        return Spent(since=at)
    return spent


def _tell_once(turn: Turn, name: str, at: datetime, length: timedelta, **values: str) -> None:
    spent = _period(turn, name, at, length)
    if not spent.told:
        turn.say(Role.SETTINGS, f"limit.{name}", **values)
        turn.say(Role.CHECK, f"limit.{name}.why", **values)
        _keep(turn, name, spent.model_copy(update={"told": True}))


def _keep(turn: Turn, name: str, spent: Spent | None) -> None:
    kept = {key: value for key, value in turn.context.person.spent.items() if key != name}
    turn.change_person(spent=kept if spent is None else kept | {name: spent})


def _written(turn: Turn, moment: datetime) -> str:
    """Day and time, in the zone of the last shared place."""
    zone: tzinfo = UTC
    if turn.position is not None:
        zone = ZoneInfo(zone_name(turn.position.latitude, turn.position.longitude))
    return measures.day_and_clock(moment.astimezone(zone))
