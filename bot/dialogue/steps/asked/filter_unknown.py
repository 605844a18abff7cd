"""A dark filter without a number on it: whether to bring it, and how its strength is measured."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import told_beside
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_FILTER: Final = whole_words("filter_unknown.filter")
_UNKNOWN: Final = whole_words("filter_unknown.unknown")
_ASKS: Final = whole_words("filter_unknown.asks")
_DARK: Final = whole_words("filter_unknown.dark")
#: "The polariser or the dark one": which goes on has an answer of its own.
_POLARISER: Final = whole_words("filters_on.polariser")
_BRING: Final = whole_words("filter_unknown.bring")


def asked(said: Said) -> str | None:
    """The text that answers a question of such a filter; None for any other message.

    Args:
        said: the message.
    """
    text = folded(said.typed)
    if _FILTER.search(text) and _UNKNOWN.search(text) and _ASKS.search(text):
        return "filters.measure"
    brings = _DARK.search(text) and _BRING.search(text) and not _POLARISER.search(text)
    return "filters.bring" if brings else None


def answer(turn: Turn, said: Said) -> str | None:
    """Say how to measure it, or that it is worth bringing.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells; None when it asks nothing of the kind.
    """
    key = asked(said)
    if key is None:
        return None
    turn.say(Role.SETTINGS, key)
    turn.reason("why.practice")
    if turn.walk.given is not None and key == "filters.measure":
        turn.ask("strength")
    return told_beside(said)
