"""Arrive: where not to stand, the way out, and when to turn back."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.actions import CancelTimer, SetTimer
from bot.dialogue.compose import Role
from bot.dialogue.context import Position
from bot.dialogue.events import PlaceReceived, TimerFired
from bot.dialogue.facts import Facts, Units
from bot.dialogue.lateness import CLOCKS_DIFFER
from bot.dialogue.questions import in_units
from bot.dialogue.states import Trigger
from bot.dialogue.steps import lens
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import leave_at, sunset_of, walk_out_min
from core.trip import FACTOR_GROUP, FACTOR_WET_LOADED, MARGIN_MIN

#: The reminder comes this long before the turn-back time (own rule).
_WARNING: Final = timedelta(minutes=15)
#: A reminder that is later than this finds people out, or in need of help (own rule).
_LONG_PAST: Final = timedelta(hours=3)
#: The reminders of a turn-back time, by their timers' names.
REMINDERS: Final = ("turn_back_soon", "turn_back_now")
#: Slots whose change moves the turn-back time.
WAY_OUT_SLOTS: Final = frozenset({"walk_km", "climb_m", "sunset", "group_mixed"})


def start(turn: Turn) -> None:
    """A new walk: the cautions, the offer of a turn-back time, then the first question.

    The kit stays; the fall does not, since nobody said that it is the same one.
    """
    turn.change_conversation(walk=None, history=(), question=None, paused=None)
    _leave_home(turn)
    if turn.context.room.direct:
        turn.context = turn.context.model_copy(update={"place": None})
    elif turn.origin.teaches:
        turn.change_room(facts=Facts())
    turn.change_person(cautions=frozenset())
    turn.change_walk()
    turn.move(Trigger.START)
    turn.caution("arrive")
    feet = "_feet" if turn.units is Units.IMPERIAL else ""
    turn.say(Role.ASSUMPTION, f"arrive.offer{feet}")
    turn.move(Trigger.ARRIVED)
    lens.go_on(turn)


def _leave_home(turn: Turn) -> None:
    """Out again: the frames of the day before are gone through."""
    turn.change_conversation(home_at=None, review=None)


def begin_quietly(turn: Turn) -> None:
    """A walk that starts with facts instead of `start`: the caution follows the answer."""
    _leave_home(turn)
    turn.change_walk()
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
    _leave_home(turn)
    sunset = sunset_of(turn.facts, position, turn.now)
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
    position = turn.position
    if sunset_of(facts, position, turn.now) is None:
        turn.say(Role.SETTINGS, "arrive.no_sunset" if position else "arrive.sunset_missing")
    else:
        say_turn_back(turn)
    return True


def say_turn_back(turn: Turn) -> None:
    """Say the turn-back time, explain it, and set the reminders where the clock is sure."""
    facts, position = turn.facts, turn.position
    moment = leave_at(facts, position, turn.now)
    sunset = sunset_of(facts, position, turn.now)
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
    for name, due in zip(REMINDERS, (moment - _WARNING, moment), strict=True):
        if sure and due > turn.now:
            turn.do(SetTimer(name=name, due=due))
        else:
            turn.do(CancelTimer(name=name))


def clock_of(moment: datetime, *, sure: bool) -> str:
    """A time of day; the zone's name only where the place told it."""
    return measures.clock(moment) if sure else f"{moment:%H:%M}"


def timer_fired(turn: Turn, event: TimerFired) -> None:
    """A turn-back reminder came due, perhaps while the bot was down: then it says that it is late.

    The one before the turn-back time is left out once that time has passed: its own follows.
    """
    moment = leave_at(turn.facts, turn.position, event.due)
    if moment is None or turn.context.conversation.walk is None:
        return
    late = turn.now - event.due
    left = moment - turn.now
    if event.name == "turn_back_soon" and left <= timedelta(0):
        return
    key = f"timer.{event.name}"
    if late > _LONG_PAST:
        key = "timer.turn_back_long_past"
    elif late > CLOCKS_DIFFER:
        key += "_late"
    turn.urgent = True
    turn.say(
        Role.SAFETY,
        key,
        time=clock_of(moment, sure=True),
        late=measures.minutes(late.total_seconds() / 60),
        left=measures.minutes(left.total_seconds() / 60),
    )
