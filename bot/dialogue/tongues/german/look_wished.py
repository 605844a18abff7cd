"""German words of a longer time that is not possible, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # "I can't go longer", "longer is not possible".
    "look_wished.cannot": NOTHING,
    "look_wished.longer": r"länger|langsamer",
    "look_wished.longer_first": r"länger|langsamer",
    "look_wished.cannot_behind": NOTHING,
}
