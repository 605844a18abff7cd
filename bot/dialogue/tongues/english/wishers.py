"""English words: somebody else who wishes a look of the water, as the message names them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # As the wish itself tells.
    "wishers.who": NOTHING,
    "wishers.whole": NOTHING,
}
