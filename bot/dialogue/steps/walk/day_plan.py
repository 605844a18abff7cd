"""The day from the car and back: time of the way, arrival, hours at the fall, turn-back, return."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import Way, leave_at, way_km

#: Less time than this at one fall is short (common practice: 2 to 3 h for one fall).
ENOUGH: Final = timedelta(hours=2)
#: So long after they should be back somebody is called (common practice: 1 to 2 h).
_CALL_AFTER: Final = timedelta(hours=2)


def clock_of(moment: datetime, *, sure: bool) -> str:
    """A time of day; the zone's name only where the place told it."""
    return measures.clock(moment) if sure else measures.hour_and_minute(moment)


def say(turn: Turn, way: Way, moment: datetime, *, sure: bool) -> None:
    """The plan of the day in a few lines, each time once.

    Args:
        turn: the answer under construction.
        way: one way of the walk.
        moment: the turn-back time.
        sure: the place told the clock.
    """
    moved = say_moved(turn, moment, Role.SETTINGS, sure=sure)
    if not moved:
        turn.say(Role.SETTINGS, "arrive.turn_back", time=clock_of(moment, sure=sure))
    _say_hours(turn, way, moment)
    say_way(turn, way)
    if moved and "note" in turn.trip.told:
        turn.say(Role.CHECK, "arrive.note_too", **return_times(way, moment, sure=sure))


def say_moved(turn: Turn, moment: datetime, role: Role, *, sure: bool) -> bool:
    """Say a turn-back time that this message has moved; whether it has."""
    before = _told_before(turn)
    old = None if before is None else measures.hour_and_minute(before)
    if old is None or old == measures.hour_and_minute(moment):
        return False
    time = clock_of(moment, sure=sure)
    turn.say(role, "arrive.turn_back_moved", time=time, before=old)
    return True


def say_way(turn: Turn, way: Way) -> None:
    """The time of one way: by the rule, with its factor, and why that one."""
    turn.say(
        Role.CHECK,
        "arrive.way",
        out=measures.minutes(way.out_min),
        bare=measures.minutes(way.bare_min),
        factor=measures.plain(way.factor),
        why=TEXTS[f"pace.{way.why}"],
    )
    if turn.facts.walk_km is not None and turn.facts.climb_m is None:
        turn.reason("why.no_climb")


def told_way(turn: Turn) -> str:
    """The way as it was told: its length and climb, else its time."""
    facts, trip = turn.facts, turn.trip
    if facts.walk_km is None:
        return measures.minutes(trip.walk_min or 0.0)
    return measures.walk(way_km(facts, trip), facts.climb_m or 0.0, turn.units)


def return_times(way: Way, moment: datetime, *, sure: bool) -> dict[str, str]:
    """When they are back at the latest, and the hour at which somebody is called."""
    back = moment + timedelta(minutes=way.out_min)
    return {"back": clock_of(back, sure=sure), "call": clock_of(back + _CALL_AFTER, sure=sure)}


def start_of(turn: Turn, day: datetime) -> datetime | None:
    """The start on the day of a moment, as told."""
    told = turn.trip.start_at
    return None if told is None else at_clock(day, told)


def at_clock(day: datetime, told: str) -> datetime:
    """A time of day, "HH:MM", on the day of a moment."""
    hour, minute = (int(part) for part in told.split(":"))
    return day.replace(hour=hour, minute=minute, second=0, microsecond=0)


def _say_hours(turn: Turn, way: Way, moment: datetime) -> None:
    """From the start to the return; a start too late for it is told."""
    out = timedelta(minutes=way.out_min)
    start, back = start_of(turn, moment), measures.hour_and_minute(moment + out)
    if start is None:
        turn.say(Role.CHECK, back_key(turn), back=back)
        return
    stay = moment - start - out
    values = {
        "start": measures.hour_and_minute(start),
        "there": measures.hour_and_minute(start + out),
        "back": back,
    }
    if stay <= timedelta(0):
        turn.say(Role.SETTINGS, "arrive.start_too_late", **values)
        return
    key = "arrive.hours" if stay >= ENOUGH else "arrive.hours_short"
    turn.say(Role.CHECK, key, stay=measures.minutes(stay.total_seconds() / 60), **values)


def back_key(turn: Turn) -> str:
    """The text of when they are back: at the car, unless a bus, a train or a gate sets the hour."""
    return "arrive.back" if turn.trip.back_by is None else "arrive.back_due"


def _told_before(turn: Turn) -> datetime | None:
    """The turn-back time that the facts before this message gave."""
    before = turn.before
    return leave_at(before.facts, before.trip, turn.position, turn.now)
