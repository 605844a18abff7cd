"""English words of a longer time that is not possible, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # "I can't go longer", "longer is not possible".
    "look_wished.cannot": r"can'?t|cannot|can not|couldn't|won't|impossible|not possible",
    "look_wished.longer": r"longer|slower|long|slow|more time",
    "look_wished.longer_first": r"longer|slower",
    "look_wished.cannot_behind": r"impossible|can'?t|not|doesn't|won't",
}
