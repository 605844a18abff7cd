"""What brown water means, where somebody asks: peat or flood, and never a leave."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.danger import Danger, DangerKind, Level
from bot.dialogue.meaning.water_colour import Brown, asks_whether_safe, brown_asked
from bot.dialogue.steps.anywhere import heard, repeat
from bot.dialogue.steps.safety import emergency
from bot.dialogue.turn import Turn


def answer(turn: Turn, text: str) -> bool:
    """Answer a message that asks of it; whether it does.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    brown = brown_asked(text)
    if brown is None:
        return False
    if brown is Brown.CLOUDY:
        emergency.answer(turn, Danger(DangerKind.FLOOD, Level.EMERGENCY), text)
        return True
    turn.say(Role.SAFETY, "water.tea" if brown is Brown.CLEAR else "water.brown_asked")
    if asks_whether_safe(text):
        turn.say(Role.SAFETY, "water.no_leave")
    heard.keep(turn, text)
    repeat.put_again_if_open(turn)
    return True
