"""What a message tells of the visit around the walk, kept before it is answered."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.at_home import stands_there
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.visit_words import car_in, party_in, place_in
from bot.dialogue.reading import read
from bot.dialogue.reading.light import WITH_SUN, only_lacks_sun
from bot.dialogue.reading.sky_hours import spells_in, without_hours
from bot.dialogue.reading.visit import read_visit, with_pace
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.visits import (
    dusk_out,
    forecasts,
    hours_there,
    note_home,
    plan,
    rough_card,
    sky,
)
from bot.dialogue.steps.walk import arrive
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Walk

#: What moves the plan of the day, or is kept for its card.
_RECKONED: Final = arrive.TRIP_SLOTS | {"forecast"}


#: Words beside which a light is none of now, but may be one to come.
_FORECAST: Final = re.compile(
    r"\b(?:(?:the )?(?:weather )?forecast(?:ed)?|tomorrow"
    r"|for (?:sun|mon|tues|wednes|thurs|fri|satur)day|says?|is|will be|looks?|for)\b",
    re.IGNORECASE,
)
#: Sun that comes and goes is planned for as sun, the harder of the two.
_SUN_AND_CLOUDS: Final = re.compile(
    r"\bsun\w* (?:with|and|or|then) (?:(?:some|a few|scattered|passing) )?clouds?\b"
    r"|\bpartly (?:cloudy|sunny)|\b(?:sunny|bright) (?:spells|intervals)|\bclouds? and sun\b",
    re.IGNORECASE,
)
#: Questions behind which an hour is that of the start.
_ASKS_START: Final = frozenset({"plan_start", "plan_hour", "note"})
#: A walk that began with words of the visit alone: its caution is still to be said.
BEGUN: Final = "begun"


def is_new(turn: Turn) -> bool:
    """Whether nothing of the walk was said before this message but words of the visit.

    Who first asked what a phone can has begun no walk by that: the caution is still to be said.
    """
    walk = turn.before.conversation.walk
    begun = BEGUN in turn.trip.told and not turn.context.person.cautions
    return walk is None or begun or _is_only_asked(turn, walk)


def _is_only_asked(turn: Turn, walk: Walk) -> bool:
    """Whether a walk holds nothing but what was asked, or kept while danger was asked about."""
    untold = walk.state is State.ARRIVE and walk.given is None
    return untold and not turn.context.person.cautions


def hear(turn: Turn, typed: str, said: str) -> None:
    """Keep who walks, when, and the words for the one at home.

    Args:
        turn: the answer under construction; `trip_told` is set to what this message tells.
        typed: the message as it came.
        said: the message in English.
    """
    planning.hear(turn, typed)
    if planning.is_planning(turn) and stands_there(typed):
        planning.end(turn)
    hours_there.hear(turn, typed)
    question = turn.context.conversation.question
    asked = question is not None and question.name in _ASKS_START
    by_the_hour = asked and planning.is_planning(turn) and bool(spells_in(typed))
    told = read_visit(said, start_asked=asked and not by_the_hour)
    turn.trip_told = told.updated(_own_words(turn, typed, told))
    if not turn.trip_told.known():
        return
    begun = turn.context.conversation.walk is None
    if begun:
        turn.change_person(cautions=frozenset())
    trip = turn.trip.updated(turn.trip_told)
    turn.change_walk(trip=trip.marked(BEGUN) if begun else trip)


def hear_weather(turn: Turn, said: Said) -> Said:
    """Keep what is forecast for a visit; the message without the hours of its forecast.

    Args:
        turn: the answer under construction.
        said: the message.
    """
    if not planning.is_planning(turn):
        return said
    forecasts.warn(turn, said.typed)
    if not sky.take(turn, said.typed):
        return said
    return said._replace(english=without_hours(said.english))


def _own_words(turn: Turn, typed: str, told: Trip) -> Trip:
    """Names as they were typed; a place is named while a visit is planned."""
    planned = planning.is_planning(turn)
    place = place_in(typed) if planned else ""
    party = party_in(typed) if told.people or planned else ""
    return Trip(place=place, party=party, car=car_in(typed))


def as_forecast(turn: Turn, facts: Facts, text: str) -> Facts:
    """The facts without a light that is only forecast: it is kept with the trip.

    Args:
        turn: the answer under construction.
        facts: what was read.
        text: the message in English.
    """
    if not planning.is_planning(turn):
        return facts
    if turn.trip_told.spells:
        return sky.without_its_own(turn, facts)
    light = facts.light or read(_FORECAST.sub(" ", text)).light
    if light is None and _SUN_AND_CLOUDS.search(text):
        light = "full sun"
    if light is None:
        return facts
    shaded = turn.trip.forecast in WITH_SUN and only_lacks_sun(text)
    if planning.has_begun(turn) and light not in rough_card.OF_THE_SKY and not shaded:
        return facts.model_copy(update={"light": None})  # "to the Raven Gorge" names a place
    forecast = Trip(forecast=light)
    turn.trip_told = turn.trip_told.updated(forecast)
    turn.change_walk(trip=turn.trip.updated(forecast))
    return facts.model_copy(update={"light": None})


def counts_people(turn: Turn) -> bool:
    """Whether bare numbers of the message are people and their years, or nothing of the water."""
    told = turn.trip_told
    return told.people is not None or told.slowest is not None


def tells(turn: Turn) -> bool:
    """Whether the message tells more than names: what the day is reckoned from."""
    return bool(turn.trip_told.known().keys() & _RECKONED)


def answer(turn: Turn, facts: Facts, said: Said, *, asked: bool) -> bool:
    """Answer what is of the visit alone: dusk and the way to the car, a gap of the note home.

    Args:
        turn: the answer under construction.
        facts: what else the message tells.
        said: the message.
        asked: a question of the message is answered already.
    """
    text = said.english
    if dusk_out.answer(turn, text):
        turn.learn(facts)
        return True
    if asked or facts.known():
        return False
    if note_home.completes(turn) or (turn.trip_told.car and planning.is_planning(turn)):
        note_home.say(turn, text)
    elif planning.has_begun(turn) and not (tells(turn) or asks(said)):
        plan.tell(turn)
    else:
        return False
    return True


def with_trip(turn: Turn, facts: Facts, text: str) -> Facts:
    """The facts of a message with the pace that it tells; a new length is one way's.

    Args:
        turn: the answer under construction.
        facts: what was read.
        text: the message in English.
    """
    if facts.walk_km is not None and not turn.trip_told.round_trip and turn.trip.round_trip:
        turn.change_walk(trip=turn.trip.model_copy(update={"round_trip": None}))
    facts = with_pace(facts, text)
    if facts.group_mixed is False and turn.trip.slowest:
        turn.change_walk(trip=turn.trip.model_copy(update={"slowest": None}))
    return facts
