"""Forget me: asked once more, then everything of the person goes."""

from __future__ import annotations

from bot.dialogue.actions import ForgetPerson
from bot.dialogue.compose import Part, Role, message
from bot.dialogue.context import Context
from bot.dialogue.steps import repeat
from bot.dialogue.turn import Turn


def ask(turn: Turn) -> None:
    """Say what would be deleted and ask once more."""
    turn.say(Role.SETTINGS, "forget.what")
    turn.ask("forget")


def answer(turn: Turn, value: str) -> None:
    """Delete everything, or keep it."""
    if value != "delete":
        turn.say(Role.SETTINGS, "forget.kept")
        repeat.put_again(turn)
        return
    farewell = message([Part(Role.SETTINGS, "forget.done")])
    turn.context = Context(room=turn.context.room)
    turn.do(ForgetPerson(farewell=farewell))
