"""Whether a message asks in which order to get light: ISO up, wider, or the polariser off first."""

from __future__ import annotations

from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of, without
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.tongues import whole_words

_NAMED: Final = tuple(
    whole_words(f"dark_order.{name}") for name in ("iso", "aperture", "polariser")
)
_BRIGHTER: Final = whole_words("dark_order.brighter")
_ORDER: Final = whole_words("dark_order.order")
_TWO: Final = 2


def told_beside(said: Said) -> Said | None:
    """What a message tells beside that question; None where it does not ask it.

    Args:
        said: the message; "polariser off" in the question takes nothing off.
    """
    if not asks(said):
        return None
    typed = without(sentences_of(said.typed), _asks_order)
    return (
        None if typed is None else said._replace(english=glossed(typed, said.language), typed=typed)
    )


def _asks_order(sentence: str) -> bool:
    """Whether a sentence names two of the three, by which it becomes brighter, and an order."""
    text = folded(sentence)
    named = sum(pattern.search(text) is not None for pattern in _NAMED)
    return named >= _TWO and bool(_BRIGHTER.search(text) and _ORDER.search(text))
