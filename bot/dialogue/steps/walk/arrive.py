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
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk import day_plan, lens
from bot.dialogue.steps.walk.day_plan import clock_of
from bot.dialogue.texts import measures
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import (
    DUE_MARGIN_MIN,
    Way,
    due_back,
    sunset_of,
    turn_back_of,
    way_of,
    when_of,
)
from core.trip import MARGIN_MIN

#: The reminder comes this long before the turn-back time (own rule).
_WARNING: Final = timedelta(minutes=15)
#: A reminder that is later than this finds people out, or in need of help (own rule).
_LONG_PAST: Final = timedelta(hours=3)
#: So long after a word of it a walk is of the same day (own rule).
_SAME_DAY: Final = timedelta(hours=8)
#: The reminders of a turn-back time, by their timers' names.
REMINDERS: Final = ("turn_back_soon", "turn_back_now")
#: Slots whose change moves the turn-back time.
WAY_OUT_SLOTS: Final = frozenset({"walk_km", "climb_m", "sunset", "group_mixed"})
#: The same of what is told of the visit around the walk, and its start.
TRIP_SLOTS: Final = frozenset(
    {"people", "slowest", "start_at", "back_by", "walk_min", "round_trip"}
)


def start(turn: Turn) -> None:
    """A new walk: the cautions, the offer of a turn-back time, then the first question.

    The kit stays, and so does on the same day who walks and the hour to be back by; the fall does
    not, since nobody said that it is the same one.
    """
    of_the_day = _of_the_day(turn)
    turn.change_conversation(walk=None, history=(), question=None, paused=None)
    _leave_home(turn)
    if turn.context.room.direct:
        turn.context = turn.context.model_copy(update={"place": None})
    elif turn.origin.teaches:
        turn.change_room(facts=Facts())
    turn.change_person(cautions=frozenset())
    turn.change_walk(trip=of_the_day)
    turn.move(Trigger.START)
    turn.caution("arrive")
    turn.say(Role.ASSUMPTION, _offer(turn))
    turn.move(Trigger.ARRIVED)
    lens.go_on(turn)


def _of_the_day(turn: Turn) -> Trip:
    """Who walks and by when they must be back, as told for a walk that was spoken of lately."""
    heard_at, trip = turn.before.conversation.heard_at, turn.trip
    if heard_at is None or turn.origin.sent_at - heard_at > _SAME_DAY:
        return Trip()
    return Trip(people=trip.people, slowest=trip.slowest, back_by=trip.back_by)


def _leave_home(turn: Turn) -> None:
    """Out again: the frames of the day before are gone through."""
    turn.change_conversation(home_at=None, review=None)


def start_planned(turn: Turn) -> None:
    """`start` of a visit that was planned: what was told for it stays, the day begins."""
    planning.end(turn)
    turn.change_conversation(history=(), question=None, paused=None)
    _leave_home(turn)
    turn.change_person(cautions=frozenset())
    turn.caution("arrive")
    moment = turn_back_of(turn)
    if moment is not None:
        time = clock_of(moment, sure=turn.position is not None)
        turn.say(Role.CHECK, "where.turn_back", time=time)
    lens.go_on(turn)


def begin_quietly(turn: Turn) -> None:
    """A walk that starts with facts instead of `start`: the caution follows the answer."""
    _leave_home(turn)
    turn.change_walk()
    turn.change_person(cautions=frozenset())
    turn.caution("arrive_short")


def place_shared(turn: Turn, event: PlaceReceived) -> None:
    """A shared location: kept for an emergency and for the sun, answered with the sunset."""
    turn.change_person(position=Position.shared(event))
    _leave_home(turn)
    way, sunset = way_of(turn.facts, turn.trip), _sunset(turn)
    if sunset is None:
        turn.say(Role.SETTINGS, "arrive.no_sunset")
    elif way is None:
        turn.say(Role.SETTINGS, "arrive.sunset", time=measures.clock(sunset))
    else:
        say_turn_back(turn)
    turn.say(Role.ASSUMPTION, "arrive.place_kept")
    if way is None:
        turn.ask(in_units("walk_out", turn.units))


def way_out_told(turn: Turn) -> bool:
    """Answer new facts about the way out; whether something was said."""
    way = way_of(turn.facts, turn.trip)
    if way is None:
        due = turn.trip_told.back_by
        if due is not None:
            turn.say(Role.SETTINGS, "arrive.way_missing", back=measures.told_clock(due))
        return due is not None
    if turn_back_of(turn) is None:
        day_plan.say_way(turn, way)
        turn.say(Role.CHECK, "arrive.no_sunset" if turn.position else "arrive.sunset_missing")
    else:
        say_turn_back(turn)
    return True


def tell_or_offer(turn: Turn) -> None:
    """Answer what is known of the way out, else say what to send for it."""
    if not way_out_told(turn):
        turn.say(Role.SETTINGS, _offer(turn))


def _offer(turn: Turn) -> str:
    """The text that offers a turn-back time, in the person's units."""
    return "arrive.offer_feet" if turn.units is Units.IMPERIAL else "arrive.offer"


def moves(turn: Turn) -> bool:
    """Whether this message changed the time of the way, or the factor behind it."""
    before = turn.before
    return way_of(before.facts, before.trip) != way_of(turn.facts, turn.trip)


def _sunset(turn: Turn) -> datetime | None:
    """Sunset of the day of the visit."""
    return sunset_of(turn.facts, turn.position, when_of(turn.trip, turn.position, turn.now))


def say_turn_back(turn: Turn) -> None:
    """Say the turn-back time, explain it, and set the reminders where the clock is sure."""
    position, way = turn.position, way_of(turn.facts, turn.trip)
    moment = turn_back_of(turn)
    assert moment is not None and way is not None  # noqa: S101, PT018  # the callers know both
    sure = position is not None
    if sure and moment <= turn.now:
        turn.say(Role.SETTINGS, "arrive.turn_back_past", time=clock_of(moment, sure=sure))
    else:
        day_plan.say(turn, way, moment, sure=sure)
    remind_and_explain(turn, way, moment)


def remind_and_explain(turn: Turn, way: Way, moment: datetime) -> None:
    """Set the reminders of a turn-back time where the clock is sure; its sum goes to `why`."""
    sure = turn.position is not None
    _explain(turn, way, moment, sure=sure)
    for name, due in zip(REMINDERS, (moment - _WARNING, moment), strict=True):
        if sure and due > turn.now:
            turn.do(SetTimer(name=name, due=due))
        else:
            turn.do(CancelTimer(name=name))


def _explain(turn: Turn, way: Way, moment: datetime, *, sure: bool) -> None:
    """From what the turn-back time comes: the sunset, or when somebody must be back."""
    sunset = _sunset(turn)
    due = due_back(turn.trip, moment)
    if sunset is None and due is not None:
        latest = clock_of(due + timedelta(minutes=MARGIN_MIN), sure=sure)
        turn.say(Role.CHECK, "arrive.no_sunset_yet", latest=latest)
    spare = timedelta(minutes=way.out_min + DUE_MARGIN_MIN)
    if sunset is None or (due is not None and due - spare <= moment):
        key, end = "why.turn_back_due", due or moment
    else:
        key, end = "why.turn_back", sunset
    turn.reason(
        key,
        sunset=clock_of(end, sure=sure),
        margin=measures.minutes(DUE_MARGIN_MIN if key == "why.turn_back_due" else MARGIN_MIN),
        out=measures.minutes(way.out_min),
        walk=day_plan.told_way(turn),
        factor=measures.plain(way.factor),
    )


def timer_fired(turn: Turn, event: TimerFired) -> None:
    """A turn-back reminder came due, perhaps while the bot was down: then it says that it is late.

    The one before the turn-back time is left out once that time has passed: its own follows.
    """
    moment = turn_back_of(turn, event.due)
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
