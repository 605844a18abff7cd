"""What is on the lens in the settings that were given: "is that with the six or the three?"."""

from __future__ import annotations

from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import told_beside
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_ASKS: Final = whole_words("filter_now.asks")


def answer(turn: Turn, said: Said) -> str | None:
    """Say what is on the lens, with the settings that count it.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells; None when it asks nothing of the kind.
    """
    given = turn.walk.given
    if given is None or not _ASKS.search(folded(said.typed)):
        return None
    turn.say(
        Role.SETTINGS,
        "filters.now" if given.filter_stops else "filters.now_none",
        filters=solving.filters_on(given),
        settings=solving.settings_text(given, turn.camera),
    )
    return told_beside(said)
