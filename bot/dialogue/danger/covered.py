"""Stones that were dry and are under water now: the water has risen, whoever is named."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

#: A stone, and within a sentence or two that it is under.
_COVERED: Final = re.compile(
    rf"\b{in_any('covered.stone')}\b(?: [\w,.]+){{0,16}}? {in_any('covered.under')}\b"
)
#: That it was not so before: stones under clear water are a picture.
_BEFORE: Final = whole_words("covered.before")


def is_covered(text: str) -> bool:
    """Whether a message says that the water has come over stones.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return _COVERED.search(said) is not None and _BEFORE.search(said) is not None
