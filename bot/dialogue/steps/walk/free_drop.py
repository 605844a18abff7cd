"""Water that runs over rock, reckoned as if it fell freely: that is said once, with the speed."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.reckoning import Assumed
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn

#: That the water runs over rock is kept with the checks: "told", and "said" once it was answered.
OVER_ROCK: Final = "over_rock"


def say_free_drop(turn: Turn) -> None:
    """Say it once, where the speed is that of a free fall."""
    if turn.walk.checks.get(OVER_ROCK) != "told":
        return
    found = reckoning.speed_of(turn.facts)
    if found is None or found[1] != "mean_fall":
        return
    turn.change_walk(checks=turn.walk.checks | {OVER_ROCK: "said"})
    turn.say(Role.CHECK, "water.free_drop", speed=measures.speed(found[0], turn.units))


def note_free_drop(turn: Turn, how: str, speed_mps: float, assumed: Assumed) -> None:
    """The same among the assumptions of settings."""
    if OVER_ROCK in turn.walk.checks and how == "mean_fall":
        assumed.note("free_drop", speed_mps=speed_mps)
