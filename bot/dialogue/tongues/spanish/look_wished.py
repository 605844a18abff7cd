"""Spanish words of a longer time that is not possible, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "I can't go longer", "longer is not possible".
    "look_wished.cannot": r"no puedo|no se puede",
    "look_wished.longer": r"more largo",
    "look_wished.longer_first": r"more largo|more lento",
    "look_wished.cannot_behind": r"no puedo|no se puede",
}
