"""Brown or murky water, told in a few words that need no weighing."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any

_TOLD: Final = re.compile(in_any("murky.told"))
_PARTS: Final = re.compile(r" ?[.,] ?")


def is_murky(text: str) -> bool:
    """Whether a part of a message says that the water is brown or murky, and nothing else.

    Args:
        text: as typed or dictated; what is denied, or brown by its bog, has other words in it.
    """
    return "?" not in text and any(map(_TOLD.fullmatch, _PARTS.split(folded(text))))
