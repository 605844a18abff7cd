"""Another frame or another lens, named before it was asked what comes next."""

from __future__ import annotations

from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer
from bot.dialogue.replies import chosen
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import keep
from bot.dialogue.turn import Turn


def answer(turn: Turn, text: str) -> bool:
    """Go on to what is named; whether it was that and nothing else.

    Args:
        turn: the answer under construction.
        text: as typed.
    """
    question = turn.context.conversation.question
    if question is None or question.name == "next" or QUESTIONS[question.name].passing:
        return False
    value = None if number_answer(text) is not None else chosen(QUESTIONS["next"], text)
    if value is None or value == "finish" or turn.walk.given is None:
        return False
    turn.remember_for_back()
    if turn.walk.state is not State.KEEP:
        turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
        turn.move(Trigger.HELD)
    keep.answer_next(turn, value)
    return True
