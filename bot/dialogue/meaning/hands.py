"""Whether somebody says that they can hardly type: gloves, cold or wet fingers, one free hand."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import whole_words

_TOLD: Final = whole_words("hands.told")
_ADVICE: Final = whole_words("hands.advice")


def can_hardly_type(text: str) -> bool:
    """Whether a message says so; who asks for gloves does not.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text, " .!,")
    return "?" not in said and _TOLD.search(said) is not None and not _ADVICE.search(said)
