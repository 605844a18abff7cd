"""A visit planned at home: answers and single offers instead of the questions at the water."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.at_home import is_still_home
from bot.dialogue.meaning.visit_words import days_ahead, speaks_of_day_to_come
from bot.dialogue.questions import in_units
from bot.dialogue.slots import PLACE_SLOTS
from bot.dialogue.states import BEFORE_LENS
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import way_of, zone_of

#: So long after the last word of a visit to come one is still at home (own rule: a night).
_AT_HOME: Final = timedelta(hours=12)
#: Questions that are offers: nothing waits for their answers.
OFFERS: Final = frozenset(
    {"walk_out", "walk_out_feet", "plan_start", "plan_hour", "plan_party", "note"}
)


def is_planning(turn: Turn) -> bool:
    """Whether the visit lies ahead, as far as the person said."""
    walk, since = turn.walk, turn.trip.planning_at
    if since is None or turn.now - since > _AT_HOME or walk.given is not None:
        return False
    told = turn.facts.distance_m is not None or turn.facts.nearest_m is not None
    there = told and not _is_ahead(turn)
    return walk.state in BEFORE_LENS and not there


def _is_ahead(turn: Turn) -> bool:
    """Whether the visit is on a day that has not come: what is near there was read or heard."""
    day = turn.trip.day
    return day is not None and day > _here(turn).date()


def _here(turn: Turn) -> datetime:
    """Now, in the zone of the place as far as it is known."""
    zone = zone_of(turn.position)
    return turn.now.astimezone(zone) if zone is not None else turn.now


#: Somebody wants a plan, and does not only speak of the day.
_PLAN: Final = re.compile(r"\bplan", re.IGNORECASE)


def hear(turn: Turn, typed: str) -> None:
    """Note that a message speaks of a visit on a day to come, or that nobody has left yet."""
    if not (speaks_of_day_to_come(typed) or is_still_home(typed)):
        return
    if turn.is_at_home:
        if not _PLAN.search(typed):
            return  # frames of the day are gone through; the next visit is only mentioned
        turn.unlearn(*PLACE_SLOTS)
        turn.change_conversation(walk=None, history=(), question=None, paused=None, review=None)
    walk = turn.context.conversation.walk
    if walk is not None and not (walk.state in BEFORE_LENS and walk.given is None):
        return
    if walk is None or is_planning(turn) or not turn.facts.known().keys() & _OF_THE_PLACE:
        begin(turn, typed)


#: Who told these stands there.
_OF_THE_PLACE: Final = frozenset({"distance_m", "nearest_m", "water_speed_mps"})


def begin(turn: Turn, typed: str = "") -> None:
    """From now on a visit is planned; for the day that the message names."""
    today = _here(turn)
    ahead = days_ahead(typed, today.weekday())
    changes: dict[str, object] = {"planning_at": turn.now}
    if ahead is not None:
        changes["day"] = (today + timedelta(days=ahead)).date()
    if turn.context.conversation.walk is None:
        turn.change_person(cautions=frozenset())
        turn.change_conversation(home_at=None)
    turn.change_walk(trip=turn.trip.model_copy(update=changes))


def has_begun(turn: Turn) -> bool:
    """Whether this message was the first one of a visit to come."""
    return is_planning(turn) and turn.before.trip.planning_at is None


def end(turn: Turn) -> None:
    """The person is there: from now on the questions at the water are put."""
    if turn.trip.planning_at is not None:
        turn.change_walk(trip=turn.trip.model_copy(update={"planning_at": None, "day": None}))
        turn.close_question()


def go_on(turn: Turn) -> None:
    """Offer what would complete the plan, each once; nothing is asked again."""
    turn.caution("arrive_short")
    facts, trip = turn.facts, turn.trip
    open_ones = (
        ("way", way_of(facts, trip) is None, "walk_out"),
        ("start", trip.start_at is None or trip.people is None, _of_start(trip)),
        ("height", facts.fall_height_m is None and not facts.stream, "height"),
        ("kit", facts.camera_format is None and not facts.lenses, "kit"),
    )
    for name, missing, question in open_ones:
        if missing and name not in trip.told:
            turn.change_walk(trip=turn.trip.marked(name))
            turn.ask(in_units(question, turn.units))
            return
    turn.close_question()


def _of_start(trip: Trip) -> str:
    """The question for the start and for who walks along: for what of it is still untold."""
    if trip.people is not None:
        return "plan_hour"
    return "plan_start" if trip.start_at is None else "plan_party"


def skips(turn: Turn) -> bool:
    """Leave out what was offered last, while a visit is planned; whether it is."""
    planned = is_planning(turn)
    if planned:
        turn.say(Role.SETTINGS, "aside.good")
        go_on(turn)
    return planned


def say_takes(turn: Turn) -> None:
    """While a visit is planned: what its plan is made from."""
    if is_planning(turn):
        turn.say(Role.CHECK, "planning.takes")
