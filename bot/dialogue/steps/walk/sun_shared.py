"""That sun and shade share the water, or come by turns: kept with the checks of the walk."""

from __future__ import annotations

from typing import Final

from bot.dialogue.turn import Turn

CHECK: Final = "sun"
#: That it was said to wait is kept, too: who tells of it again gets settings for the sun.
WAITS: Final = "sun_waited_for"


def keep(turn: Turn, *, by_turns: bool) -> None:
    """Keep that it is so, or that even light is back."""
    others = {name: one for name, one in turn.walk.checks.items() if name not in {CHECK, WAITS}}
    if not by_turns:
        turn.change_walk(checks=others)
    elif not is_told(turn):
        turn.change_walk(checks=others | {CHECK: "by_turns"})


def is_told(turn: Turn) -> bool:
    """Whether it is so, as far as was told."""
    return CHECK in turn.walk.checks
