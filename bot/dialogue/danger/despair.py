"""Somebody who speaks of ending their life, themselves or of another: heard by plain words."""

from __future__ import annotations

from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import whole_words

_DESPAIR: Final = whole_words("despair.of_life")


def is_despair(text: str) -> bool:
    """Whether a message tells of a wish to die; a manner of speaking ("to die for") is none.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _DESPAIR.search(folded(text)) is not None
