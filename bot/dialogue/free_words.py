"""A message that is no command and no reply: what it tells and asks, and how to go on from it."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning import soft_strands, softer_wished
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.rests import with_rest
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.topics import topic_of
from bot.dialogue.reading import read
from bot.dialogue.reading.unit_words import LENGTH
from bot.dialogue.replies import says_yes_or_no
from bot.dialogue.steps.anywhere import access, manner, planning, repeat
from bot.dialogue.steps.asked import (
    asides,
    bag,
    by_meaning,
    own_numbers,
    questions_asked,
    supposing,
    tried_behind,
    which_cause,
)
from bot.dialogue.steps.asked.topic_or_cause import with_sight
from bot.dialogue.steps.home import home_words
from bot.dialogue.steps.incoming import shared
from bot.dialogue.steps.telling import (
    corrected,
    filters_on,
    late,
    lens_named,
    light_changed,
    look_wished,
    metered,
    phone_told,
    phone_zoom,
    reference_told,
    sun_told,
    time_factor,
    told,
    white_told,
)
from bot.dialogue.steps.visits import day_asked, dusk_out, leaving, visit
from bot.dialogue.steps.walk import composition, keep, liking, now
from bot.dialogue.turn import Turn

#: Topics in which the number of people is told by the way.
_OF_A_GROUP: Final = frozenset({"rounds", "head_count", "exercise", "group_review"})
#: Takes a message that says nothing else as a reply to the open question; whether it is one.
Reply = Callable[[Said, Facts], bool]


def answer(turn: Turn, said: Said, expecting: frozenset[str], reply: Reply) -> None:
    """Answer what is asked, take in what is told, and go on from there.

    Args:
        turn: the answer under construction.
        said: the message; praise and goodbyes are known in each language as typed.
        expecting: slots that a bare number may fill.
        reply: hears what is near to an option of the open question.
    """
    said = visit.hear_weather(turn, said)
    _answer(turn, said, expecting, reply)
    if day_asked.asked(turn, said.typed, said.english) == "leave":
        leaving.say_beside(turn, said.typed)


def _answer(turn: Turn, said: Said, expecting: frozenset[str], reply: Reply) -> None:
    sun_told.note(turn, said)
    if _asks_of_the_day(turn, said) or _asks_of_the_bag(turn, said):
        return
    if _of_what_is_on(turn, said, expecting):
        return
    if keep.hear_all_sharp(turn, said.typed):
        repeat.put_again_if_open(turn)
        return
    noted = access.note(turn, said) | composition.hear(turn, said.english)
    noted |= manner.note_hands(turn, said.typed)
    said = questions_asked.parted(supposing.after_told(turn, tried_behind.alone(said)))
    said = look_wished.as_wish(turn, supposing.as_trial(turn, said))
    rest = None if filters_on.is_all(turn, said) else questions_asked.answer(turn, said)
    if rest is not None:
        expecting = expecting if _answers_by_length(rest, expecting) else frozenset()
    facts = _read(turn, said.english if rest is None else rest, said, expecting)
    if visit.answer(turn, facts, said, asked=rest is not None):
        return
    noted |= light_changed.say(turn, said, facts)
    alone = rest is None and not filters_on.is_all(turn, said)
    if alone and _answered_beside(turn, said, facts, reply, noted=noted):
        return
    _go_on_from(turn, facts, said, rest=rest, noted=noted)
    sun_told.say(turn, said)
    composition.leave_out_told(turn)


def _of_what_is_on(turn: Turn, said: Said, expecting: frozenset[str]) -> bool:
    """Whether a frame that held, a filter on the lens or a meter's reading is told."""
    if reference_told.answer(turn, said):
        return True
    facts = read(said.english, units=turn.units, expecting=expecting)
    return filters_on.answer(turn, said, facts) or metered.answer(turn, said, facts)


#: One number in all, and it is a length.
_ONE_LENGTH: Final = re.compile(rf"[^\d]*\d+(?:[.,]\d+)? ?{LENGTH}\b[^\d]*")


def _answers_by_length(rest: str, expecting: frozenset[str]) -> bool:
    """Whether what is told beside a question is the one length that was asked for.

    A bare number beside a question answers nothing.
    """
    return len(expecting) == 1 and _ONE_LENGTH.fullmatch(rest.casefold()) is not None


def beside(turn: Turn, said: Said) -> None:
    """Take in what stands beside a reply: all of it where it asks or tells facts, else the frame.

    Args:
        turn: the answer under construction; the reply itself is answered behind this.
        said: the message without the reply.
    """
    if asks(said) or read(said.english, units=turn.units).known():
        answer(turn, said, frozenset(), lambda _said, _told: False)
        return
    access.note(turn, said)
    composition.hear(turn, said.english)
    manner.note_hands(turn, said.typed)


def _asks_of_the_day(turn: Turn, said: Said) -> bool:
    """Whether a message asks when to start, or when to leave, which all that it tells decides."""
    hour = day_asked.asked(turn, said.typed, said.english)
    facts = None if hour is None else _read(turn, said.english, said, frozenset())
    if hour is None or facts is None or not day_asked.stands_first(facts):
        return False
    if hour == "leave" and not _knows_the_day(turn, facts):
        return False  # nothing is known of the day: what is usual is said
    due = turn.trip.back_by is not None
    if not due and dusk_out.answer(turn, said.english):
        turn.learn(facts)
        return True
    turn.remember_for_back()
    told.keep(turn, facts)
    day_asked.answer(turn, hour, said.typed, said.english)
    if due:
        dusk_out.say_beside(turn, said.english)
    if hour == "leave" and turn.walk.given is None:
        repeat.put_again_if_open(turn)  # no frame yet: the walk goes on
    return True


def _knows_the_day(turn: Turn, facts: Facts) -> bool:
    """Whether anything is known by which to leave: of the visit, the way, or the sunset."""
    of_the_way = {"walk_km", "climb_m", "sunset"} & turn.facts.updated(facts).known().keys()
    return bool(of_the_way or turn.trip.known() or turn.trip_told.known())


def _asks_of_the_bag(turn: Turn, said: Said) -> bool:
    """Whether a message asks what to carry; what is owned is told beside the question."""
    answers = bag.asked(turn, said)
    if not answers:
        return False
    facts = bag.without_things(turn, read(bag.told_in(said), units=turn.units))
    turn.remember_for_back()
    told.keep(turn, visit.as_forecast(turn, facts, said.english))
    turn.roomy = planning.is_planning(turn)
    for say in answers:
        say(turn)
    if now.goes_on_from(turn, facts):
        return True
    repeat.put_again_if_open(turn, whole=False)
    return True


def _answered_beside(turn: Turn, said: Said, facts: Facts, reply: Reply, *, noted: bool) -> bool:
    """Whether a message that asks nothing known was no more than talk, a topic, an arrival."""
    tells = bool(facts.known()) or visit.tells(turn)
    if not tells and (now.arrived(turn, said.typed) or shared.whose(turn, said.typed)):
        return True
    if noted or (visit.tells(turn) and not _asks_of_a_group(said)):
        return False
    if not asks(said) and asides.answer(turn, said.typed, facts):
        return True
    if reply(said, facts):
        return True
    return which_cause.ask(turn, said, facts) or by_meaning.answer(turn, said, facts)


def _asks_of_a_group(said: Said) -> bool:
    """Whether a question of who leads holds how many walk along: "my six students"."""
    return asks(said) and topic_of(said) in _OF_A_GROUP


def _go_on_from(turn: Turn, facts: Facts, said: Said, *, rest: str | None, noted: bool) -> None:
    if rest is None and not noted and not visit.tells(turn):
        facts = with_sight(turn, said, facts)
    if facts.known() or turn.trip_told.known():
        _take_in(turn, facts, said.english if rest is None else rest, said)
        questions_asked.answer_late(turn, said, rest)
    elif rest is None and not noted:
        _not_understood(turn, facts, said.english)
    elif not turn.question_put and (repeat.standing(turn) is not None or not noted):
        repeat.put_again(turn)


def _read(turn: Turn, rest: str, said: Said, expecting: frozenset[str]) -> Facts:
    """The facts of what a message says beside its questions, each where it belongs."""
    facts = read(rest, units=turn.units, expecting=expecting)
    facts = own_numbers.without_own(turn, said, phone_told.without_mention(turn, said, facts))
    facts = composition.without_light_of_the_edge(turn, facts, said.english)
    facts = with_rest(look_wished.wish_behind(said.english, facts), said.english)
    facts = soft_strands.wished(said, sun_told.laid_over(turn, said, facts))
    facts = softer_wished.wished(said, facts)
    facts = light_changed.laid_over(turn, said, white_told.laid_over(turn, facts))
    facts = time_factor.laid_over(turn, said, facts)
    facts = phone_zoom.with_zoom(turn, said, facts)
    read_mm, facts = facts.focal_mm, lens_named.with_lens(turn, said, facts)
    if facts.known() or rest == said.english:  # a try that is answered is not made again
        facts = supposing.supposed(turn, said, facts)
    if facts.focal_mm == read_mm:  # a lens of the bag corrects nothing else
        facts = corrected.placed(turn, said.english, facts)
    facts = asides.with_filter(turn, said.typed, filters_on.laid_over(turn, said, facts))
    facts = asides.without_leaf_frame(turn, said.typed, facts)
    return visit.as_forecast(turn, visit.with_trip(turn, facts, said.english), rest)


def _take_in(turn: Turn, facts: Facts, text: str, said: Said) -> None:
    if turn.is_at_home and not facts.ask_what_if:
        home_words.say_how(turn)
        return
    if not facts.ask_what_if:
        turn.remember_for_back()
    if not late.holds_back_facts(turn, facts, text):
        liking.note(turn, said.typed, facts)
        corrected.reopen(turn, facts, text)
        told.take_in(turn, facts, text)
        corrected.echo(turn, facts, text)
        by_meaning.explain(turn, said._replace(english=text), facts)


def _not_understood(turn: Turn, facts: Facts, text: str) -> None:
    which = says_yes_or_no(text) and repeat.standing(turn) is not None
    if facts.unread:
        turn.say(Role.SETTINGS, "unread", pieces=", ".join(f"`{p}`" for p in facts.unread[:3]))
    elif which:
        turn.say(Role.SETTINGS, "which_one")
    else:
        turn.say(Role.SETTINGS, "not_understood")
        planning.say_takes(turn)
    if turn.is_at_home and not which:
        home_words.say_how(turn)
    else:
        repeat.put_again(turn, whole=which)
