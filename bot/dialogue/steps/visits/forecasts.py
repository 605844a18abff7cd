"""A thunderstorm that is forecast for a visit: not in a gorge at that hour."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger.storm_words import names_storm
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

_NONE: Final = re.compile(
    rf"\b(?:{in_any('weather.no')}|{in_any('weather.nor')})\s+(?:\w+\s+){{0,2}}?{in_any('weather.of_storm')}",
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
