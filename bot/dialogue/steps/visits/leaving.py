"""When to leave the water: the time to turn back, or before a gate shuts, and what is left."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading.clock_now import ClockNow, clock_now
from bot.dialogue.steps.walk import arrive, day_plan
from bot.dialogue.steps.walk.day_plan import clock_of
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import DUE_MARGIN_MIN, Way, due_back, turn_back_of, way_of

#: What says when to leave already.
_SAY_WHEN: Final = frozenset(
    {"arrive.turn_back", "arrive.turn_back_moved", "arrive.turn_back_past", "leave.due"}
    | {"leave.now", "leave.too_late"}
)


def say(turn: Turn, typed: str) -> None:
    """Say when to leave, and how long that is from now where the hour of now is known.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
    """
    way, moment = way_of(turn.facts, turn.trip), turn_back_of(turn)
    if way is None or moment is None:
        arrive.tell_or_offer(turn)
        return
    now = _now(turn, typed, moment)
    due = _due_first(turn, way, moment)
    if now is not None and now >= moment:
        _say_go(turn, way, moment, due, now)
    else:
        _say_when(turn, way, moment, due, now)
    day_plan.say_way(turn, way)
    if due is None:
        back = clock_of(moment + timedelta(minutes=way.out_min), sure=turn.position is not None)
        turn.say(Role.CHECK, day_plan.back_key(turn), back=back)
    arrive.remind_and_explain(turn, way, moment)


def say_beside(turn: Turn, typed: str) -> None:
    """The time to leave alone, which no answer to anything else of a message takes the place of.

    Args:
        turn: the answer under construction, as far as it answers all else.
        typed: the message as it came.
    """
    way, moment = way_of(turn.facts, turn.trip), turn_back_of(turn)
    if way is None or moment is None or any(part.key in _SAY_WHEN for part in turn.parts):
        return
    now, due = _now(turn, typed, moment), _due_first(turn, way, moment)
    if now is not None and now >= moment:
        _say_go(turn, way, moment, due, now)
    else:
        key = "leave.due" if due is not None else "arrive.turn_back"
        values = {"time": clock_of(moment, sure=turn.position is not None)}
        turn.say(Role.SAFETY, key, **values, **(_due_values(way, due) if due is not None else {}))


def _due_first(turn: Turn, way: Way, moment: datetime) -> datetime | None:
    """When they must be back, where that and not the sun sets the time to leave."""
    due = due_back(turn.trip, moment)
    if due is None or due - timedelta(minutes=way.out_min + DUE_MARGIN_MIN) > moment:
        return None
    return due


def _now(turn: Turn, typed: str, moment: datetime) -> datetime | None:
    """Now by the person's clock: as told, else by the zone of the place; None while unknown."""
    told = clock_now(typed)
    if told is not None:
        return _nearest(told, moment)
    return turn.now.astimezone(moment.tzinfo) if turn.position is not None else None


def _nearest(told: ClockNow, moment: datetime) -> datetime:
    """The time that is told, in the half of the day that is nearer to the time to leave."""
    now = moment.replace(hour=told.hour, minute=told.minute, second=0, microsecond=0)
    later = now + timedelta(hours=12)
    return later if told.either and abs(later - moment) < abs(now - moment) else now


def _say_when(
    turn: Turn, way: Way, moment: datetime, due: datetime | None, now: datetime | None
) -> None:
    sure = turn.position is not None
    values = {"time": clock_of(moment, sure=sure)}
    if due is not None:
        values |= _due_values(way, due)
        turn.say(Role.SAFETY, "leave.due", **values)
        turn.say(Role.CHECK, "leave.due_last", **values)
    else:
        turn.say(Role.SETTINGS, "arrive.turn_back", **values)
    if now is not None:
        left = measures.minutes((moment - now).total_seconds() / 60)
        turn.say(Role.SETTINGS, "leave.left", left=left)


def _due_values(way: Way, due: datetime) -> dict[str, str]:
    last = due - timedelta(minutes=way.out_min)
    return {
        "due": measures.hour_and_minute(due),
        "last": measures.hour_and_minute(last),
        "out": measures.minutes(way.out_min),
        "margin": measures.minutes(DUE_MARGIN_MIN),
    }


def _say_go(turn: Turn, way: Way, moment: datetime, due: datetime | None, now: datetime) -> None:
    """The time has come, or is over: go, and nobody runs for a gate."""
    arrival = now + timedelta(minutes=way.out_min)
    values = {
        "time": measures.hour_and_minute(moment),
        "arrival": measures.hour_and_minute(arrival),
        "due": measures.hour_and_minute(due or moment),
    }
    turn.urgent = True
    late = due is not None and arrival > due
    turn.say(Role.SAFETY, "leave.too_late" if late else "leave.now", **values)
