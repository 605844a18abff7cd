"""Bright stones that are out of the picture are no stones under water: nothing else is told."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any

_TOLD: Final = re.compile(in_any("bright_gone.told"))


def only_bright_gone(text: str) -> bool:
    """Whether a message says that something bright left the frame, and nothing else.

    Args:
        text: as typed; an edge is asked for what is bright there, and so it is answered.
    """
    said = " ".join(folded(text).replace(",", " ").split())
    return _TOLD.fullmatch(said) is not None
