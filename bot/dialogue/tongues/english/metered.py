"""English words by which settings are told as what the meter gives, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "metered.gives": (
        r"(?:light ?)?meter(?:s| is| has|ing)?(?: now| just)?(?: gives?| gave| says?| said"
        r"| reads?| shows?| wants?| suggests?)(?: me)?"
        r"|metered(?: it)?(?: at)?"
    ),
}
