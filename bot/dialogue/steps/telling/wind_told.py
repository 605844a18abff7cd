"""Wind told once the settings are given: a lull, and a frame of its own for the leaves."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import keep
from bot.dialogue.turn import Turn


def answer(turn: Turn, *, windy: bool) -> bool:
    """Answer that leaves move, or that they hang still; whether there are settings to answer with.

    Args:
        turn: the answer under construction.
        windy: whether leaves move.
    """
    if turn.walk.given is None:
        return False
    if windy:
        if not _just_told(turn):
            keep.leaf_frame(turn)
        turn.say(Role.CHECK, "wind.lull")
    else:
        turn.say(Role.SETTINGS, "wind.calm")
    if turn.walk.state is State.KEEP:
        turn.ask("next")
    else:
        repeat.put_again(turn)
    return True


def _just_told(turn: Turn) -> bool:
    """Whether the frame for the leaves was given, and nothing but what comes next asked since."""
    question = repeat.standing(turn)
    given = turn.walk.checks.get("leaf_frame") == "given"
    return given and question is not None and question.name == "next"
