"""Putting the walk's question once more, whatever came between."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.questions import QUESTIONS, in_units
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Question

#: A question that was put so often without an answer is left out from then on (own rule: one
#: repeat is heard, a second one is nagging).
MOST_TIMES: Final = 2
#: Where it was left out, too, the walk goes on without it if it can.
PASSED_OVER: Final = MOST_TIMES + 1
#: Answers that say nothing without the question behind them.
_NOTHING_SAID: Final = frozenset({"not_understood", "which_one", "unread"})


def standing(turn: Turn) -> Question | None:
    """The question that the walk stands at, None without one."""
    conversation = turn.context.conversation
    question = conversation.paused or conversation.question
    if question is None or QUESTIONS[question.name].passing:
        return None
    return question


def put_again(turn: Turn, *, whole: bool = False) -> None:
    """Put the walk's question again, in the units of now; without one say how to begin.

    Args:
        turn: the answer under construction.
        whole: with all its options, however often it was put: the person wants to see it.

    Put often enough, it is left out; where the answer says nothing else, it is only named.
    """
    question = standing(turn)
    if (planning.is_planning(turn) or turn.context.conversation.away) and not whole:
        return  # what was offered once is not asked again at home, nor on the way from the water
    if question is None:
        turn.close_question()
        if not turn.is_at_home:
            turn.say(Role.QUESTION, "begin")
        return
    often = question.times >= MOST_TIMES and not whole
    if often and any(part.key not in _NOTHING_SAID for part in turn.parts):
        turn.leave_out(question, passed_over=question.times >= PASSED_OVER)
        return
    turn.passed_over = question.times >= PASSED_OVER and not whole
    name = in_units(question.name, turn.units)
    turn.ask_again(question.model_copy(update={"name": name}), briefly=often)


def put_again_if_open(turn: Turn, *, whole: bool = True) -> None:
    """Put the walk's question again where one stands open, else say nothing."""
    if standing(turn) is not None:
        put_again(turn, whole=whole and not turn.context.conversation.away)


def ask(turn: Turn, name: str) -> None:
    """Put a question of the way to the settings; the same one that stands open, once more."""
    question = standing(turn)
    if question is not None and question.name.removesuffix("_feet") == name.removesuffix("_feet"):
        put_again(turn)
    else:
        turn.ask(name)
