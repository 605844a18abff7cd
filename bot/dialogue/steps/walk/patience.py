"""A question that nobody answers is let go: the walk goes on with what can be said."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import composition, lens
from bot.dialogue.turn import Turn

#: What is asked on the way to the lens and can be assumed instead.
_ASSUMABLE: Final = frozenset({"nearest", "water_speed", "kit", "format", "lenses"})
_BEFORE_LENS: Final = frozenset({State.ARRIVE, State.LENS})


def let_go(turn: Turn) -> None:
    """Where a check or a piece of kit would be asked for the fourth time, go on instead."""
    question = repeat.standing(turn)
    if not turn.passed_over or question is None:
        return
    if any(part.key.startswith("what_if.") for part in turn.parts):
        return  # who tries something on paper is still at the question
    name = question.name.removesuffix("_feet")
    if name in composition.CHECKS:
        turn.say(Role.ASSUMPTION, "let_go")
        composition.skip(turn, name)
    elif name in _ASSUMABLE and turn.walk.state in _BEFORE_LENS:
        turn.say(Role.ASSUMPTION, "let_go")
        turn.change_walk(asked=(*turn.walk.asked, question.name))
        lens.go_on(turn)
