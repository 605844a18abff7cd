"""My data: everything that is kept of a person, as files, where nobody else reads."""

from __future__ import annotations

from bot.dialogue.actions import TellData
from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.turn import Turn


def tell(turn: Turn) -> None:
    """Have the files made and sent; in a group room say where to ask."""
    if turn.origin.direct:
        turn.say(Role.SETTINGS, "data.comes")
        turn.say(Role.CHECK, "data.not_here")
        turn.do(TellData())
    else:
        turn.say(Role.SETTINGS, "data.in_private")
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)
