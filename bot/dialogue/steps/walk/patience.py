"""A question that nobody answers is let go: the walk goes on with what can be said."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.states import State
from bot.dialogue.steps.walk import lens
from bot.dialogue.turn import Turn

#: What is asked on the way to the lens and can be assumed instead.
_ASSUMABLE: Final = frozenset({"nearest", "water_speed", "kit", "format", "lenses"})
_BEFORE_LENS: Final = frozenset({State.ARRIVE, State.LENS})


def let_go(turn: Turn) -> None:
    """Where the answer would name a piece of kit for the fourth time, go on instead."""
    keys = [part.key for part in turn.parts]
    if "still_open" not in keys or any(key.startswith("what_if.") for key in keys):
        return  # who tries something on paper is still at the question
    name = turn.question_name.removesuffix("_feet")
    if name in _ASSUMABLE and turn.walk.state in _BEFORE_LENS:
        turn.say(Role.ASSUMPTION, "let_go")
        lens.go_on(turn)
