"""A thunderstorm that is forecast for a visit: not in a gorge at that hour."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.turn import Turn

#: Thunder by its names in the three languages, as people write of a forecast.
_THUNDER: Final = re.compile(
    r"\b(?:thunder\w*|lightning|storms?|stormy|\w*gewitter\w*|blitz und donner|unwetter\w*"
    r"|tormentas?|truenos?|tronadas?)\b",
    re.IGNORECASE,
)
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
    if _SAID in turn.trip.told or not _THUNDER.search(typed) or _NONE.search(typed):
        return
    turn.say(Role.SAFETY, "planning.thunder")
    turn.change_walk(trip=turn.trip.marked(_SAID))
