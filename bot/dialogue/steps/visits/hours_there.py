"""The hours at the water as they are told: the arrival, and the last time of day; for the log."""

from __future__ import annotations

from bot.dialogue.meaning.arrival import says_here
from bot.dialogue.meaning.at_home import is_home
from bot.dialogue.reading.clock_now import AFTERNOON_BELOW_H, ClockNow, clock_in, clock_now
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.turn import Turn


def hear(turn: Turn, typed: str) -> None:
    """Keep the hour that a message at the water tells as now.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
    """
    away = turn.is_at_home or planning.is_planning(turn) or is_home(typed)
    if turn.context.conversation.walk is None or away:
        return
    told = clock_now(typed) or (clock_in(typed) if says_here(typed) else None)
    if told is None:
        return
    trip = turn.trip
    at = _at(told, trip.there_at)
    changes = {"seen_at": at} if trip.there_at else {"there_at": at}
    turn.change_walk(trip=trip.model_copy(update=changes))


def _at(told: ClockNow, since: str | None) -> str:
    """The time of day, after noon where it is told small or comes behind the arrival."""
    at = f"{told.hour:02d}:{told.minute:02d}"
    later = told.hour < AFTERNOON_BELOW_H or (since is not None and at < since)
    return f"{told.hour + 12:02d}:{told.minute:02d}" if told.either and later else at
