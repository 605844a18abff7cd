"""What a reply says to whether anybody is in danger, by its words and by its sense."""

from __future__ import annotations

from functools import partial
from typing import Final

from bot.dialogue.danger import Safe, in_danger, who_is_safe, whose
from bot.dialogue.danger.aftermath import leaves_somebody
from bot.dialogue.danger.denied import begins_with_no, tells_of_danger
from bot.dialogue.events import TextReceived
from bot.dialogue.meaning.asides import Aside, aside_of
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.replies import chosen
from bot.dialogue.safety_clauses import Heard
from bot.dialogue.safety_clauses import heard as heard_in_parts
from bot.dialogue.safety_sense import says_safe
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.turn import Turn

_QUESTION: Final = "in_danger"
_SEVERAL: Final = 2
#: These tell of one alone, or of nobody.
_OF_ONE: Final = frozenset({Safe.OWN, Safe.ONE, Safe.HEARD})


def answer(turn: Turn, event: TextReceived, doubted: str) -> bool | None:
    """Whether somebody is in danger, by a number or in words; None where it says neither.

    Args:
        turn: the answer under construction.
        event: the reply.
        doubted: the message that sounded like danger.
    """
    if event.answers not in {None, _QUESTION}:
        return None
    return _says(turn, event.text, doubted)


def answer_by_words(event: TextReceived, doubted: str) -> bool | None:
    """The same of what people say to each other: by known words alone."""
    return _by_words(event.text, doubted) if event.answers in {None, _QUESTION} else None


def denies(turn: Turn, text: str) -> bool:
    """Whether a message that names a danger says, by its sense or in a part, that nobody is in any.

    Args:
        turn: the answer under construction; nothing is denied while nothing was asked.
        text: as typed; a "no" before it proves nothing: "no, she slipped".
    """
    doubted = turn.context.conversation.doubted
    if doubted is None or leaves_somebody(text):
        return False
    if says_safe(_QUESTION, manner.as_said(turn, text), None) is True:
        return True
    return _in_parts(turn, text, doubted).safe is True


def asked_behind(turn: Turn, reply: str) -> str:
    """The sentences of a reply behind the first, where they ask something; "" otherwise."""
    behind = " ".join(sentences_of(reply)[1:])
    return behind if asks(manner.as_said(turn, behind)) else ""


def _says(turn: Turn, text: str, doubted: str) -> bool | None:
    others = whose(doubted).others
    by_words = _by_words(text, doubted)
    if by_words is None and aside_of(text) is Aside.BYE:
        return None  # who only says goodbye says nothing of anybody
    if who_is_safe(text) in _OF_ONE and (others or by_words is None):
        return by_words  # "I'm fine" says nothing of the others
    safe = says_safe(_QUESTION, manner.as_said(turn, text), _denied(by_words))
    return _denied(safe if safe is not None else _in_parts(turn, text, doubted).safe)


def _in_parts(turn: Turn, text: str, doubted: str) -> Heard:
    """Whether all are safe, by one part of a reply."""

    def by_words(part: str) -> bool | None:
        return False if tells_of_danger(part) else _denied(_by_words(part, doubted))

    return heard_in_parts(_QUESTION, text, by_words, partial(manner.as_said, turn))


def _denied(value: bool | None) -> bool | None:
    return None if value is None else not value


def _by_words(text: str, doubted: str) -> bool | None:
    if leaves_somebody(text):
        return True
    others = whose(doubted).others
    if others >= _SEVERAL and who_is_safe(text) is Safe.ONE:
        return None  # one of several is back
    said = in_danger(text, others=others > 0)
    if said is not None or who_is_safe(text) is Safe.HEARD:
        return said
    value = chosen(QUESTIONS[_QUESTION], text)
    if value is None:
        return False if begins_with_no(text) else None
    return value == "yes"
