"""A button held down longer: it makes no longer time, and what does."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import told_beside
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.steps.walk import base
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_ASKS: Final = whole_words("held_longer.asks")


def answer(turn: Turn, said: Said) -> str | None:
    """Say what makes a time longer, with that of the wished look.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells; None when it asks nothing of the kind.
    """
    if not _ASKS.search(folded(said.typed)):
        return None
    turn.learn(read(said.english).only(frozenset({"look"})))
    time_s = base.standing(turn).wanted.shutter_s
    phone = reckoning.is_phone(turn.facts)
    time = solving.time_text(time_s, turn.camera)
    turn.say(Role.SETTINGS, "asked.hold_phone" if phone else "asked.hold_camera", time=time)
    return told_beside(said)
