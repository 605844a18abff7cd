"""While somebody may stand where nobody should: what is told is kept, nothing else is answered."""

from __future__ import annotations

from typing import Final

from bot.dialogue.events import TextReceived
from bot.dialogue.meaning.asides import Aside, aside_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.replies import chosen
from bot.dialogue.steps import emergency
from bot.dialogue.turn import Turn

_QUESTION: Final = "out_there"
#: Questions that may stand before this one is put again: their answers bring no settings.
_BEFORE_IT: Final = frozenset({"forget", "safe", "in_danger", "resume"})
#: Who thanks or goes home wants no settings.
_LEAVING: Final = frozenset({Aside.BYE, Aside.THANKS})
#: Commands that give no settings and go on to none.
_HARMLESS: Final = frozenset(
    {"help", "stop", "back", "forget", "data", "thanks", "units", "metric", "imperial", "taps"}
    | {"short", "usual", "long", "language", "english", "german", "spanish", "cancel"}
)


def is_open(turn: Turn) -> bool:
    """Whether somebody may stand there still."""
    return turn.context.conversation.closed


def holds_back(turn: Turn, event: TextReceived, said: str, command: str | None) -> bool:
    """Keep what a message tells, and ask again; nobody gets settings for that place.

    Args:
        turn: the answer under construction.
        event: the message.
        said: the message in English.
        command: the word in it that works anywhere.

    Returns:
        Whether that was the answer; not for an answer to the question or to an interruption's
        own, nor for words that lead to no settings.
    """
    if not is_open(turn) or command in _HARMLESS or aside_of(said) in _LEAVING:
        return False
    question = turn.context.conversation.question
    if question is not None and question.name in _BEFORE_IT:
        return False
    for_it = event.answers in {None, _QUESTION}
    asked = QUESTIONS[_QUESTION]
    if for_it and (chosen(asked, event.text) or emergency.worded(_QUESTION, said)):
        return False
    facts = read(said, units=turn.units)
    if facts.known():
        turn.learn(facts)
    emergency.insist(turn)
    return True


def close(turn: Turn) -> None:
    """Whatever else was answered, this question stands open as long as nobody has answered it."""
    question = turn.open_question
    if not is_open(turn) or not turn.parts:
        return
    if question is not None and question.name in {_QUESTION, *_BEFORE_IT}:
        return
    turn.ask(_QUESTION)
    if question is not None and not QUESTIONS[question.name].passing:
        turn.change_conversation(paused=question)  # the walk's own waits behind it
