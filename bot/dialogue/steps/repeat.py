"""Putting the walk's question once more, whatever came between."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.context import Question
from bot.dialogue.questions import QUESTIONS, in_units
from bot.dialogue.turn import Turn


def standing(turn: Turn) -> Question | None:
    """The question that the walk stands at, None without one."""
    conversation = turn.context.conversation
    question = conversation.paused or conversation.question
    if question is None or QUESTIONS[question.name].passing:
        return None
    return question


def put_again(turn: Turn) -> None:
    """Put the walk's question again, in the units of now; without one say how to begin."""
    question = standing(turn)
    if question is None:
        turn.close_question()
        turn.say(Role.QUESTION, "begin")
        return
    turn.ask(in_units(question.name, turn.units), **question.values)
