"""A dark filter without a number on it: whether to bring it, and how its strength is measured."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_FILTER: Final = whole_words("filter_unknown.filter")
_UNKNOWN: Final = whole_words("filter_unknown.unknown")
_ASKS: Final = whole_words("filter_unknown.asks")
_DARK: Final = whole_words("filter_unknown.dark")
#: "The polariser or the dark one": which goes on has an answer of its own.
_POLARISER: Final = whole_words("filters_on.polariser")
_BRING: Final = whole_words("filter_unknown.bring")


def answer(turn: Turn, said: Said) -> bool:
    """Say how to measure it, or that it is worth bringing; whether either was asked."""
    text = folded(said.typed)
    if _FILTER.search(text) and _UNKNOWN.search(text) and _ASKS.search(text):
        key = "filters.measure"
    elif _DARK.search(text) and _BRING.search(text) and not _POLARISER.search(text):
        key = "filters.bring"
    else:
        return False
    turn.say(Role.SETTINGS, key)
    turn.reason("why.practice")
    if turn.walk.given is not None and key == "filters.measure":
        turn.ask("strength")
    else:
        repeat.put_again_if_open(turn)
    return True
