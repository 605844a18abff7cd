"""English words: brown or murky water in a few plain words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "murky.told": NOTHING,  # the wordings of danger know it
}
