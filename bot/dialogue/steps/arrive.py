"""Arrive: where not to stand, the way out, and when to turn back."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from bot.dialogue.actions import CancelTimer, SetTimer
from bot.dialogue.compose import Role
from bot.dialogue.context import Position
from bot.dialogue.events import PlaceReceived
from bot.dialogue.facts import Facts, Units
from bot.dialogue.questions import in_units
from bot.dialogue.states import Trigger
from bot.dialogue.steps import lens
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.sun.rise_set import sun_times
from core.sun.zone import zone_name
from core.trip import (
    FACTOR_GROUP,
    FACTOR_WET_LOADED,
    MARGIN_MIN,
    turn_back,
    walking_time_min,
)

#: The reminder comes this long before the turn-back time (own rule).
_WARNING: Final = timedelta(minutes=15)
#: In the far north the sun may set after midnight: before this hour, told after noon, the
#: coming night is meant (own rule).
_NIGHT_ENDS_H: Final = 4
_NOON_H: Final = 12
#: Slots whose change moves the turn-back time.
WAY_OUT_SLOTS: Final = frozenset({"walk_km", "climb_m", "sunset", "group_mixed"})


def start(turn: Turn) -> None:
    """A new walk: the cautions, the offer of a turn-back time, then the first question.

    The kit stays; the fall does not, since nobody said that it is the same one.
    """
    turn.change_conversation(walk=None, history=(), question=None, paused=None)
    turn.context = turn.context.model_copy(update={"place": None})
    turn.change_person(cautions=frozenset())
    turn.change_walk(started_at=turn.now)
    turn.move(Trigger.START)
    turn.caution("arrive")
    feet = "_feet" if turn.units is Units.IMPERIAL else ""
    turn.say(Role.ASSUMPTION, f"arrive.offer{feet}")
    turn.move(Trigger.ARRIVED)
    lens.go_on(turn)


def begin_quietly(turn: Turn) -> None:
    """A walk that starts with facts instead of `start`: the caution follows the answer."""
    turn.change_walk(started_at=turn.now)
    turn.change_person(cautions=frozenset())
    turn.caution("arrive_short")


def place_shared(turn: Turn, event: PlaceReceived) -> None:
    """A shared location: kept for an emergency and for the sun, answered with the sunset."""
    position = Position(
        latitude=event.latitude,
        longitude=event.longitude,
        shared_at=event.origin.sent_at,
        room_id=event.origin.room_id,
    )
    turn.change_person(position=position)
    sunset = _sunset(turn.facts, position, turn.now)
    if sunset is None:
        turn.say(Role.SETTINGS, "arrive.no_sunset")
    elif turn.facts.walk_km is None:
        turn.say(Role.SETTINGS, "arrive.sunset", time=measures.clock(sunset))
    else:
        say_turn_back(turn)
    turn.say(Role.ASSUMPTION, "arrive.place_kept")
    if turn.facts.walk_km is None:
        turn.ask(in_units("walk_out", turn.units))


def way_out_told(turn: Turn) -> bool:
    """Answer new facts about the way out; whether something was said."""
    facts = turn.facts
    if facts.walk_km is None:
        return False
    position = turn.context.person.position
    if _sunset(facts, position, turn.now) is None:
        turn.say(Role.SETTINGS, "arrive.no_sunset" if position else "arrive.sunset_missing")
    else:
        say_turn_back(turn)
    return True


def walk_out_min(facts: Facts) -> float | None:
    """Time of the way out with its factor [min], None while its length is unknown."""
    if facts.walk_km is None:
        return None
    factor = FACTOR_GROUP if facts.group_mixed else FACTOR_WET_LOADED
    return walking_time_min(facts.walk_km, facts.climb_m or 0.0, factor)


def leave_at(facts: Facts, position: Position | None, now: datetime) -> datetime | None:
    """The turn-back time, None while sunset or the way out are unknown."""
    out_min = walk_out_min(facts)
    sunset = _sunset(facts, position, now)
    if out_min is None or sunset is None:
        return None
    return turn_back(sunset, out_min)


def _zone(position: Position | None) -> ZoneInfo | None:
    if position is None:
        return None
    return ZoneInfo(zone_name(position.latitude, position.longitude))


def _sunset(facts: Facts, position: Position | None, now: datetime) -> datetime | None:
    """Sunset of the local day: as told, else by the place.

    A told one without a place has no zone: it is taken in the zone of `now` and printed
    without a name.
    """
    zone = _zone(position)
    local = now.astimezone(zone) if zone else now
    if facts.sunset is not None:
        hour, minute = (int(part) for part in facts.sunset.split(":"))
        coming_night = hour < _NIGHT_ENDS_H and local.hour >= _NOON_H
        day = local + timedelta(days=1) if coming_night else local
        return day.replace(hour=hour, minute=minute, second=0, microsecond=0)
    if position is None or zone is None:
        return None
    return sun_times(position.latitude, position.longitude, local.date(), zone).set


def say_turn_back(turn: Turn) -> None:
    """Say the turn-back time, explain it, and set the reminders where the clock is sure."""
    facts, position = turn.facts, turn.context.person.position
    moment = leave_at(facts, position, turn.now)
    sunset = _sunset(facts, position, turn.now)
    assert moment is not None and sunset is not None  # noqa: S101, PT018  # the callers know both
    sure = position is not None
    past = sure and moment <= turn.now
    shown = clock_of(moment, sure=sure)
    turn.say(Role.SETTINGS, "arrive.turn_back_past" if past else "arrive.turn_back", time=shown)
    turn.reason(
        "why.turn_back",
        sunset=clock_of(sunset, sure=sure),
        margin=measures.minutes(MARGIN_MIN),
        walk=measures.walk(facts.walk_km or 0.0, facts.climb_m or 0.0, turn.units),
        out=measures.minutes(walk_out_min(facts) or 0.0),
        factor=measures.plain(FACTOR_GROUP if facts.group_mixed else FACTOR_WET_LOADED),
    )
    for name, due in (("turn_back_soon", moment - _WARNING), ("turn_back_now", moment)):
        if sure and due > turn.now:
            turn.do(SetTimer(name=name, due=due))
        else:
            turn.do(CancelTimer(name=name))


def clock_of(moment: datetime, *, sure: bool) -> str:
    """A time of day; the zone's name only where the place told it."""
    return measures.clock(moment) if sure else f"{moment:%H:%M}"


def timer_fired(turn: Turn, name: str) -> None:
    """A turn-back reminder came due."""
    moment = leave_at(turn.facts, turn.context.person.position, turn.now)
    if moment is not None and turn.context.conversation.walk is not None:
        turn.urgent = True
        turn.say(Role.SAFETY, f"timer.{name}", time=clock_of(moment, sure=True))
