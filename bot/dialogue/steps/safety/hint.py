"""Words that may tell of danger, but seldom do: one line about it first, then the usual answer."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.standing import asks_to_stand
from bot.dialogue.replies import chosen
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.safety import doubt
from bot.dialogue.turn import Turn


def goes_on(turn: Turn, text: str) -> bool:
    """Say that a call for help goes first, where a message tells or asks something besides.

    Args:
        turn: the answer under construction.
        text: the message.

    Returns:
        Whether it is to be answered as any other. Words that tell nothing but that are asked
        about: nothing of a walk explains them. Who asks leave to stand in water is answered so.
    """
    if doubt.is_open(turn) or doubt.is_harmless(turn, text):
        return True
    if asks_to_stand(text) or not _tells_or_asks(turn, text):
        return False
    turn.say(Role.SAFETY, "danger.hint")
    return True


def _tells_or_asks(turn: Turn, text: str) -> bool:
    """Whether a message tells facts, asks something, or answers what stands open."""
    if manner.tells_or_asks(turn, text):
        return True
    question = turn.context.conversation.question
    return question is not None and (
        number_answer(text) is not None or chosen(QUESTIONS[question.name], text) is not None
    )
