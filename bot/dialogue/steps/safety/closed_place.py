"""While somebody may stand where nobody should: what is told is kept, no settings are given."""

from __future__ import annotations

from functools import partial
from typing import Final

from bot.dialogue.danger import (
    Danger,
    Safe,
    anyone_out_there,
    read_danger,
    who_is_safe,
)
from bot.dialogue.danger.came_away import came_away, speaks_for_one, speaks_of_another
from bot.dialogue.danger.denied import nobody_is_there, tells_of_danger
from bot.dialogue.danger.given_up import gives_up
from bot.dialogue.danger.left_open import (
    leaves_it_there,
    leaves_open,
    leaves_something,
    refuses,
    without_setting_asked,
)
from bot.dialogue.danger.whereabouts import tells_of_staying
from bot.dialogue.events import TextReceived
from bot.dialogue.meaning.asides import Aside, aside_of
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer, read
from bot.dialogue.replies import chosen
from bot.dialogue.safety_clauses import NOTHING_HEARD, Heard
from bot.dialogue.safety_clauses import heard as heard_in_parts
from bot.dialogue.safety_sense import says_safe
from bot.dialogue.steps.anywhere import heard, manner
from bot.dialogue.steps.safety import emergency, of_the_day
from bot.dialogue.steps.telling import told
from bot.dialogue.steps.visits import visit
from bot.dialogue.turn import Turn

_QUESTION: Final = "out_there"
_VALUES: Final = {True: "no", False: "yes"}
#: Questions that may stand before this one is put again: their answers bring no settings.
BEFORE_IT: Final = frozenset({"forget", "safe", "in_danger", "resume"})
#: Who thanks or goes wants no settings.
_LEAVING: Final = frozenset({Aside.THANKS, Aside.BYE})
#: Commands that give no settings and go on to none.
_HARMLESS: Final = frozenset(
    {"help", "commands", "stop", "back", "forget", "data", "thanks", "units", "metric", "imperial"}
    | {"short", "usual", "long", "language", "english", "german", "spanish", "cancel", "taps"}
)


def is_open(turn: Turn) -> bool:
    """Whether somebody may stand there still."""
    return turn.context.conversation.closed


def left(turn: Turn, text: str, *, surely: bool) -> bool:
    """Whether a message says that nobody is there any more; surely, if it says nothing else."""
    if not is_open(turn):
        return False
    if _came_away(turn, text):
        return True
    if _in_parts(turn, text).safe:
        return True  # "nobody's up there. How do I get the twig out?" names no climb
    return not surely and _anyone(turn, text) is False


def _came_away(turn: Turn, text: str) -> bool:
    """Whether a message says that whoever was there is away, and nothing else."""
    conversation = turn.context.conversation
    return came_away(text, conversation.closed_kind, others=conversation.closed_others)


def _anyone(turn: Turn, text: str) -> bool | None:
    """Whether somebody is there, by what is known of the place and of who went there."""
    conversation = turn.context.conversation
    said, others = without_setting_asked(text), conversation.closed_others
    if not others and speaks_of_another(said):
        return None
    return anyone_out_there(said, conversation.closed_kind, others=others)


def leads_to_no_settings(said: str, command: str | None) -> bool:
    """Whether a message is answered whatever stands open: it brings no settings.

    Args:
        said: the message.
        command: the word in it that works anywhere.
    """
    return command in _HARMLESS or aside_of(said) in _LEAVING


def is_for_an_interruption(turn: Turn) -> bool:
    """Whether another question stands open whose answer brings no settings."""
    question = turn.context.conversation.question
    return question is not None and question.name in BEFORE_IT - {"in_danger"}


def left_to_answer(
    turn: Turn, event: TextReceived, said: str, command: str | None
) -> TextReceived | None:
    """Keep what a message tells, and ask again; nobody gets settings for that place.

    Args:
        turn: the answer under construction.
        event: the message.
        said: the message in English.
        command: the word in it that works anywhere.

    Returns:
        What is to be answered: the message itself where nothing is held back, for an answer to an
        interruption's own question, and for words that lead to no settings; what is said behind
        "nobody is there"; None where all is answered.
    """
    leaves = aside_of(event.text) in _LEAVING or leads_to_no_settings(said, command)
    if not is_open(turn) or leaves or is_for_an_interruption(turn):
        return event
    in_parts = _heard_in_parts(turn, event)
    value = answered(turn, event) or (None if in_parts.safe is None else _VALUES[in_parts.safe])
    doubtful = in_parts.doubtful and not _came_away(turn, event.text)
    if value is None or (value == "no" and doubtful):
        heard.keep(turn, event.text)
        visit.hear(turn, event.text, said)
        _hold(turn, manner.said(turn, said, event.text), asked_why=command == "why")
        return None
    if value == "no" and in_parts.rest:
        emergency.nobody_there(turn)
        return event.model_copy(update={"text": in_parts.rest, "answers": None})
    turn.remember_for_back()
    if number_answer(event.text) is None:  # "I'm at the railing, 150 ft off"
        told.moved(turn, read(said, units=turn.units), said)
        heard.keep(turn, event.text)
    emergency.answer_out_there(turn, value)
    return None


def _hold(turn: Turn, said: Said, *, asked_why: bool) -> None:
    """Answer what leads to no settings, or nothing; whether anybody is there is asked again."""
    another = next(filter(None, map(_danger_told, sentences_of(said.typed))), None)
    if another is not None:
        emergency.answer(turn, *another)
    elif of_the_day.answer(turn, said):
        emergency.ask_out_there_again(turn)
    else:
        emergency.insist(turn, asked_why=asked_why, text=said.typed)


def _danger_told(sentence: str) -> tuple[Danger, str] | None:
    """A danger that one sentence tells of beside others that calm."""
    danger = read_danger(sentence)
    return None if danger is None or not danger.is_told else (danger, sentence)


def _heard_in_parts(turn: Turn, event: TextReceived) -> Heard:
    """The same of a reply part by part, and what it says besides."""
    return _in_parts(turn, event.text) if event.answers in {None, _QUESTION} else NOTHING_HEARD


def _in_parts(turn: Turn, text: str) -> Heard:
    if any(map(refuses, sentences_of(text))):
        return NOTHING_HEARD

    def by_words(part: str) -> bool | None:
        if leaves_it_there(part) or tells_of_staying(part) or tells_of_danger(part):
            return False
        value = _by_words(turn, part)
        return _came_back(turn, part) if value is None else value == "no"

    return heard_in_parts(_QUESTION, text, by_words, partial(manner.as_said, turn))


def _came_back(turn: Turn, part: str) -> bool | None:
    """Whether those who went, or wished to go, are said to be safe: "ok, he's down"."""
    conversation = turn.context.conversation
    of_others = conversation.closed_others or conversation.closed_asked
    safe = {Safe.ALL, Safe.THEY, Safe.ONE} if of_others else {Safe.ALL}
    return True if who_is_safe(part) in safe else None


def answered(turn: Turn, event: TextReceived) -> str | None:
    """The option that a message chooses, by its number or in words; assent to advice is none."""
    if event.answers not in {None, _QUESTION}:
        return None
    by_words = _by_words(turn, event.text)
    if by_words is None and _says_nothing_of_them(turn, event.text):
        return None
    safe = says_safe(
        _QUESTION, manner.as_said(turn, event.text), None if by_words is None else by_words == "no"
    )
    return None if safe is None else "no" if safe else "yes"


def _says_nothing_of_them(turn: Turn, text: str) -> bool:
    """Whether a message tells of others than went there, leaves something there, or only agrees."""
    others = turn.context.conversation.closed_others
    if who_is_safe(text) is Safe.HEARD or tells_of_staying(text):
        return True
    return leaves_something(text) or (speaks_for_one(text) if others else speaks_of_another(text))


def _by_words(turn: Turn, text: str) -> str | None:
    """The same by its words alone."""
    if turn.context.conversation.closed_asked and gives_up(text):
        return "no"
    out = _anyone(turn, text)
    if out is not None:
        return "yes" if out else "no"
    if nobody_is_there(text, alone=not turn.context.conversation.closed_others):
        return "no"
    heard_only = who_is_safe(text) is Safe.HEARD or leaves_open(text)
    return None if heard_only else chosen(QUESTIONS[_QUESTION], text)


def close(turn: Turn) -> None:
    """Whatever else was answered, this question stands open as long as nobody has answered it."""
    question = turn.open_question
    if not is_open(turn) or emergency.is_held(turn) or not turn.parts:
        return
    if question is not None and question.name in {_QUESTION, *BEFORE_IT}:
        return
    turn.ask(_QUESTION)
    if question is not None and not QUESTIONS[question.name].passing:
        turn.change_conversation(paused=question)  # the walk's own waits behind it
