"""A thunderstorm that is forecast for a visit: not in a gorge at that hour."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger.storm_words import names_storm
from bot.dialogue.turn import Turn

_NONE: Final = re.compile(
    r"\b(?:no|without|kein\w*|ohne|sin|ni)\s+(?:\w+\s+){0,2}?(?:thunder|lightning|storm|gewitter|unwetter"
    r"|tormenta|trueno)",
    re.IGNORECASE,
)
_SAID: Final = "thunder"


def warn(turn: Turn, typed: str) -> None:
    """Say once what a storm in the forecast means for the plan.

    Args:
        turn: the answer under construction; a visit is planned.
        typed: the message as it came.
    """
    if _SAID in turn.trip.told or not names_storm(typed) or _NONE.search(typed):
        return
    turn.say(Role.SAFETY, "planning.thunder")
    turn.change_walk(trip=turn.trip.marked(_SAID))
