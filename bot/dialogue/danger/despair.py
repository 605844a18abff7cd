"""Somebody who speaks of ending their life, themselves or of another: heard by plain words."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.leaps import wishes_to_leap
from bot.dialogue.folding import folded
from bot.dialogue.tongues import whole_words

_DESPAIR: Final = whole_words("despair.of_life")
_BESIDE_A_LEAP: Final = whole_words("despair.beside_a_leap")


def is_despair(text: str) -> bool:
    """Whether a message tells of a wish to die, or of a leap that is no game.

    Args:
        text: as typed, in any of Linn's languages; a manner of speaking ("to die for") is none.
    """
    said = folded(text)
    if _DESPAIR.search(said) is not None:
        return True
    return _BESIDE_A_LEAP.search(said) is not None and wishes_to_leap(text)
