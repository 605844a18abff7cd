"""A message in words: a command, a reply to the open question, or facts to go on from."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import partial
from typing import Final

from bot.dialogue import commands, free_words, worded_choice
from bot.dialogue.compose import Role
from bot.dialogue.events import TextReceived
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.meaning.said import Said
from bot.dialogue.numbered_reply import numbered
from bot.dialogue.questions import QUESTIONS, Asked, asked_by
from bot.dialogue.reading import number_answer, read
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_words import wished
from bot.dialogue.replies import chosen, meant, shown
from bot.dialogue.reply_beside import Beside, parted
from bot.dialogue.reply_sense import is_beside, is_other, option_of, surer
from bot.dialogue.steps.anywhere import forget, manner, phone, repeat, reply_again
from bot.dialogue.steps.asked import (
    asides,
    group,
    left_unanswered,
    others_asked,
    roster,
    where_it_blinks,
    which_cause,
)
from bot.dialogue.steps.frames import beside, border_said, judged, look_said, measuring
from bot.dialogue.steps.home import at_home, at_water, editing, home_words
from bot.dialogue.steps.incoming import measured, shared
from bot.dialogue.steps.safety import closed_place, doubt, emergency, ice
from bot.dialogue.steps.telling import (
    late,
    nothing_near,
    rain_told,
    settings_asked,
    sun_now,
    told,
    white_told,
)
from bot.dialogue.steps.visits import visit
from bot.dialogue.steps.walk import (
    arrive,
    composition,
    highlights,
    keep,
    lens,
    next_frame,
    patience,
    resume,
)
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Question

#: A number typed this long before its question was put cannot answer it [s] (own rule: clocks
#: of server and bot differ by a little).
OLD_ANSWER_S: Final = 5.0
#: Geometry may be told without its question while nothing of it is known.
_ALWAYS_EXPECTED: Final = frozenset({"fall_height_m", "distance_m", "nearest_m"})

#: A question that is not understood takes nothing from the reply beside it, nor does good news.
_NOTHING_HEARD: Final = frozenset({"not_understood", "which_one", "unread", "edges.noted"})

#: Their answers begin something else: another lens, another place to stand, a new walk, the end.
_GOES_ON_ELSEWHERE: Final = frozenset({"next", "too_near", "restart"})

Answer = Callable[[Turn, str], None]


def _light_known(turn: Turn, value: str) -> None:
    """Whether the light is still as it was: then what waited is answered as of now."""
    waiting = late.answered(turn, value)
    if waiting is None:
        return
    if waiting.report is not None:
        shared.judge_waiting(turn, waiting, waiting.report, clock_is_off=value == "clock")
        return
    _by_meaning(turn, TextReceived(origin=turn.origin, text=waiting.text))


_ANSWERS: Final[Mapping[str, Answer]] = {
    "format": lens.answer_format,
    "too_near": lens.answer_too_near,
    "top": lambda turn, value: composition.answer(turn, "top", value),
    "sides": lambda turn, value: composition.answer(turn, "sides", value),
    "anchor": lambda turn, value: composition.answer(turn, "anchor", value),
    "light": composition.answer_light,
    "blink": lambda turn, value: highlights.blinked(turn, Blink(value)),
    "blink_again": lambda turn, value: highlights.blinked(turn, Blink(value)),
    "sky_gap": judged.answer_sky_gap,
    "seen": told.answer_seen,
    "phone_again": phone.answer_again,
    "leaves": keep.answer_leaves,
    "next": keep.answer_next,
    "rear_screen": shared.answer_rear_screen,
    "screen_says": shared.answer_screen_says,
    "area": judged.answer_area,
    "border": border_said.answer,
    "glass": beside.answer_glass,
    "look_odds": look_said.answer_odds,
    "water_cells": measured.answer_cells,
    "cause": which_cause.answer,
    "out_there": emergency.answer_out_there,
    "safe": emergency.answer_safe,
    "restart": commands.answer_restart,
    "light_still": _light_known,
    "light_still_frame": _light_known,
    "forget": forget.answer,
}


def answer_words(turn: Turn, event: TextReceived) -> None:
    """Answer a message by its words; after a night the walk is asked about first."""
    said = doubt.text_to_answer(turn, event)
    text = None if said is None else resume.text_to_answer(turn, said)
    if text is not None:
        answers = event.answers if said == event.text else None
        _by_meaning(turn, event.model_copy(update={"text": text, "answers": answers}))
        left_unanswered.say(turn, text)


def _by_meaning(turn: Turn, event: TextReceived) -> None:
    forget.let_go(turn, event.text)
    said = glossed(event.text, manner.written_in(turn, event.text))
    right = reply_again.put_right(turn, event, said)
    if right is not event:
        event, said = right, right.text
    command = command_of(event.text)
    question = turn.context.conversation.question
    asked = QUESTIONS.get(question.name) if question else None
    left = closed_place.left_to_answer(turn, event, said, command)
    if left is not event:
        if left is not None:
            answer_rest(turn, left)
        return
    offered = asked is not None and (
        _is_offered(asked, event.text, said, command)
        or _numbered(turn, event, said, question) is not None
        or worded_choice.worded(asked, manner.said(turn, said, event.text)) is not None
    )
    if command == "skip" and where_it_blinks.instead_of_skipping(
        turn, manner.said(turn, said, event.text), asked
    ):
        return
    if not offered and _is_done_anywhere(turn, event.text, said, command):
        return
    if not offered and _begun_anew(turn, manner.said(turn, said, event.text)):
        return
    if _is_for_another(event, question):
        turn.say(Role.SETTINGS, "old_answer", number=str(number_answer(event.text)))
        repeat.put_again(turn, whole=True)
        return
    _taken_in(turn, event, said, question, offered=offered)
    group.say_for_all(turn)


def answer_rest(turn: Turn, event: TextReceived) -> None:
    """Answer what is said behind good news; the walk's question stands last.

    Args:
        turn: the answer under construction, which has said that it heard the news.
        event: the message with what is left of its words.
    """
    if turn.question_put:
        turn.leave_question_unsaid()
    _by_meaning(turn, event)
    turn.parts = [part for part in turn.parts if part.key not in _NOTHING_HEARD]
    if not turn.question_put:
        repeat.put_again_if_open(turn)


def _taken_in(
    turn: Turn, event: TextReceived, said: str, question: Question | None, *, offered: bool
) -> None:
    """Take in what a message tells: around the visit, of others, as a reply, else in free words."""
    asked = QUESTIONS.get(question.name) if question else None
    at_water.hear(turn, event.text)
    if not (offered or turn.is_at_home) and others_asked.answer(
        turn, manner.said(turn, said, event.text)
    ):
        patience.let_go(turn)
        return
    visit.hear(turn, event.text, said)
    ice.warn(turn, event.text)
    told = read(said, units=turn.units, expecting=_expected(turn, asked))
    if not offered and _is_of_others_or_home(turn, event.text, said, told):
        patience.let_go(turn)
        return
    if turn.is_at_home and turn.context.conversation.question is None:
        question = asked = None  # who has come home by this message ends the walk by it
    if asides.leave(turn, event.text, told, asked) or nothing_near.hear(turn, said, told):
        return
    heard = manner.said(turn, said, event.text)
    if sun_now.answer(turn, heard):
        return
    if where_it_blinks.answer(turn, heard, asked):
        return
    heard = white_told.hear(turn, heard)
    if not turn.beside_white and _answered(turn, event, said, question, told):
        settings_asked.give(turn, heard)
        return
    free_words.answer(turn, heard, _expected(turn, asked), partial(_replied, turn))
    white_told.take_in(turn, event.text)
    settings_asked.give(turn, heard)
    rain_told.say(turn, said)
    patience.let_go(turn)


def _is_done_anywhere(turn: Turn, typed: str, said: str, command: str | None) -> bool:
    """Whether a command was given, another frame begun, or measuring of shared ones wished for."""
    if command is not None:
        commands.run(turn, command)
        return True
    if roster.answer(turn, typed):
        return True
    wish = wished(said)
    if measuring.answer_no_cell(turn, said):
        return True
    return next_frame.answer(turn, typed) or (wish is not None and measuring.answer(turn, wish))


def _begun_anew(turn: Turn, said: Said) -> bool:
    """Begin a new walk where a message wishes for one in so many words; the rest is of that one."""
    rest = worded_choice.behind_new_walk(said)
    if rest is None:
        return False
    arrive.start(turn)
    _take_in_behind(turn, rest)
    return True


def _take_in_behind(turn: Turn, rest: Said) -> None:
    """What is told behind a choice is of what it began; the walk's question stands last."""
    if not rest.typed:
        return
    turn.leave_question_unsaid()
    free_words.beside(turn, rest)
    if not turn.question_put:
        repeat.put_again_if_open(turn)


def _is_of_others_or_home(turn: Turn, typed: str, said: str, told: Facts) -> bool:
    """Whether a message is about other people's cameras, or goes through frames at home."""
    if at_home.hear(turn, typed, told) or editing.answer(turn, manner.said(turn, said, typed)):
        return True
    asked = number_answer(typed) is not None and turn.context.conversation.question is not None
    home = not asked and home_words.answer(turn, typed, said, told)
    return home or group.answer(turn, typed, said)


def _is_offered(asked: Asked, text: str, said: str, command: str | None) -> bool:
    """Whether words that work anywhere are an option here: `keep it` of a thing at the border.

    The bare word is the command that a frame is kept by, as the texts offer it.
    """
    kept = command == "keep" and len(text.split()) > 1 and meant(asked, said) is not None
    return kept or chosen(asked, text) is not None


def _answered(
    turn: Turn, event: TextReceived, said: str, question: Question | None, told: Facts
) -> bool:
    """Whether the message was a numbered or worded reply to the open question.

    The options' own words are those of the person's language; `said` is the message in English.
    """
    if question is None or not (asked := QUESTIONS[question.name]).options:
        return False
    number = number_answer(event.text)
    if number is not None and _is_old(event, question):
        turn.say(Role.SETTINGS, "old_answer", number=str(number))
        repeat.put_again(turn, whole=True)
        return True
    heard = manner.said(turn, said, event.text)
    both = (
        _numbered(turn, event, said, question)
        or worded_choice.worded(asked, heard)
        or parted(asked, heard)
    )
    if both is not None:
        _answered_both(turn, event.text, asked, both)
        return True
    value = chosen(asked, event.text) or shown(asked, said)
    if value is None and not composition.settles(turn, said):
        value = meant(asked, said)
        other = is_other(asked, heard, told)
        beside = value is None or other or is_beside(heard)
        value = None if beside or value is None else surer(asked, heard, value)
    if value is not None:
        turn.remember_for_back()
        composition.note_beside(turn, asked.name, value, said)
        if not late.holds_back_reply(turn, asked.name, value, event.text):
            _ANSWERS[asked.name](turn, value)
        return True
    if number is None:
        return False
    turn.say(Role.SETTINGS, "no_such_option", number=str(number), most=str(len(asked.options)))
    turn.ask(question.name, **question.values)
    return True


def _numbered(
    turn: Turn, event: TextReceived, said: str, question: Question | None
) -> Beside | None:
    """The option that a number among other words chooses, typed after its question was put."""
    asked = QUESTIONS.get(question.name) if question else None
    if question is None or asked is None or _is_old(event, question):
        return None
    if event.answers is not None and asked_by(event.answers)[0] != question.name:
        return None
    return numbered(asked, manner.said(turn, said, event.text))


def _answered_both(turn: Turn, typed: str, asked: Asked, both: Beside) -> None:
    """A reply with more beside it: that is taken in, and answered where it asks, first.

    What stands beside "another lens" or "go back" is of the next frame, and comes after it.
    """
    turn.remember_for_back()
    if asked.name in _GOES_ON_ELSEWHERE:
        _ANSWERS[asked.name](turn, both.value)
        _take_in_behind(turn, both.rest)
        return
    composition.keep(turn, asked.name, both.value)
    free_words.beside(turn, both.rest)
    turn.parts = [part for part in turn.parts if part.key not in _NOTHING_HEARD]
    composition.note_beside(turn, asked.name, both.value, both.reply)
    if not late.holds_back_reply(turn, asked.name, both.value, typed):
        _ANSWERS[asked.name](turn, both.value)


def _replied(turn: Turn, said: Said, told: Facts) -> bool:
    """Whether a message that says nothing else means an option of the open question."""
    question = turn.context.conversation.question
    asked = None if question is None else QUESTIONS[question.name]
    value = None if asked is None else option_of(asked, said, told)
    if asked is None or value is None:
        return False
    turn.remember_for_back()
    if not late.holds_back_reply(turn, asked.name, value, said.typed):
        _ANSWERS[asked.name](turn, value)
    return True


def _is_for_another(event: TextReceived, question: Question | None) -> bool:
    """The number is the answer to a question that does not stand open, or of another frame."""
    if number_answer(event.text) is None or event.answers is None:
        return False
    name, about = asked_by(event.answers)
    return question is None or name != question.name or about not in {"", question.about}


def _is_old(event: TextReceived, question: Question) -> bool:
    """The number was typed before this question was put."""
    return (question.asked_at - event.origin.sent_at).total_seconds() > OLD_ANSWER_S


def _expected(turn: Turn, asked: Asked | None) -> frozenset[str]:
    """The slots that a bare number may fill: those asked for, or the fall while it is unknown."""
    expects = frozenset(asked.expects) if asked else frozenset()
    if visit.counts_people(turn):
        return frozenset()
    part_open = turn.facts.section and turn.facts.section_height_m is None
    if part_open and not _ALWAYS_EXPECTED & expects:
        return expects | {"section_height_m"}  # "half of it, unless you tell me another part"
    if expects or _ALWAYS_EXPECTED & set(turn.facts.known()):
        return expects
    return _ALWAYS_EXPECTED
