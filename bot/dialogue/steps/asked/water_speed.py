"""How fast the water is that times and shares are reckoned from, and where that comes from."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.water_speed import rest_beside
from bot.dialogue.steps.asked import own_reasons
from bot.dialogue.turn import Turn


def answer(turn: Turn, said: Said) -> str | None:
    """Say the speed with its sum, and the share that it makes of the frame.

    Args:
        turn: the answer under construction; before a walk there is no water to speak of.
        said: the message.

    Returns:
        What else the message says; None when it asks nothing of the kind.
    """
    rest = None if turn.context.conversation.walk is None else rest_beside(said)
    if rest is None:
        return None
    own_reasons.say_speed(turn)
    if not rest:
        own_reasons.say_inputs(turn, ("speed",), Role.ASSUMPTION)
    return rest
