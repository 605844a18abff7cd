"""The text for the one at home: filled in with what is known, its gaps named in one question."""

from __future__ import annotations

from collections.abc import Iterator

from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk import day_plan
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import turn_back_of, way_of


def say(turn: Turn, text: str) -> None:
    """The text, ready to be copied: the bot can neither send it nor know what it does not say."""
    del text
    turn.roomy = planning.is_planning(turn)
    turn.say(Role.SETTINGS, "note.copy")
    _say_who(turn)
    _say_hours(turn)
    if turn.trip.car:
        turn.say(Role.SETTINGS, "note.car", car=turn.trip.car)
    turn.say(Role.ASSUMPTION, "note.cant")
    turn.change_walk(trip=turn.trip.marked("note"))
    gaps = list(_gaps(turn))
    if gaps:
        listed = measures.listing([TEXTS[f"note.gap.{gap}"] for gap in gaps], TEXTS["and"])
        turn.ask("note", list=listed)
    elif turn.context.conversation.question is not None:
        _let_go(turn)


def _let_go(turn: Turn) -> None:
    """Nothing is missing any more: the note's question does not stand open."""
    question = turn.context.conversation.question
    if question is not None and question.name == "note":
        turn.resume_question()


def _say_who(turn: Turn) -> None:
    trip, facts = turn.trip, turn.facts
    way = way_of(facts, trip)
    values = {
        "place": trip.place or TEXTS["note.place_open"],
        "party": _party(turn) or TEXTS["note.party_open"],
    }
    if way is None:
        turn.say(Role.SETTINGS, "note.who", **values)
    else:
        turn.say(Role.SETTINGS, "note.who_way", way=day_plan.told_way(turn), **values)


def _party(turn: Turn) -> str:
    """Who goes, in the person's own words; else how many; "" where nothing tells it."""
    trip = turn.trip
    if trip.people == 1:
        return TEXTS["note.alone"]
    number = TEXTS["note.people"].format(number=trip.people) if trip.people else ""
    if trip.party and number:
        return f"{trip.party} ({number})"
    return trip.party or number


def _say_hours(turn: Turn) -> None:
    position, trip = turn.position, turn.trip
    way, moment = way_of(turn.facts, trip), turn_back_of(turn)
    told = measures.told_clock(trip.start_at) if trip.start_at else TEXTS["note.start_open"]
    if way is None or moment is None:
        turn.say(Role.SETTINGS, "note.start", start=told)
        return
    sure = position is not None
    turn.say(
        Role.SETTINGS,
        "note.hours",
        start=told,
        turn=measures.hour_and_minute(moment),
        **day_plan.return_times(way, moment, sure=sure),
    )


def _gaps(turn: Turn) -> Iterator[str]:
    """What the text still lacks, the most needed first."""
    trip, facts = turn.trip, turn.facts
    if not trip.place:
        yield "place"
    if not _party(turn):
        yield "party"
    if trip.start_at is None:
        yield "start"
    if way_of(facts, trip) is None:
        yield "way"
    elif turn_back_of(turn) is None:
        yield "sunset"
    if not trip.car:
        yield "car"


def remind(turn: Turn) -> None:
    """What belongs into such a text, for who has written it; the turn-back time is one of it."""
    turn.say(Role.SETTINGS, "asked.tell_home")
    moment = turn_back_of(turn)
    if moment is not None:
        time = day_plan.clock_of(moment, sure=turn.position is not None)
        turn.say(Role.CHECK, "asked.tell_home_time", time=time)


def completes(turn: Turn) -> bool:
    """Whether a message tells what the text lacked when its gaps were asked for."""
    question = turn.context.conversation.question
    asked = question is not None and question.name == "note"
    told = turn.trip_told
    return asked and bool(told.car or told.place or told.party or told.people or told.start_at)
