"""English words of a frame that held, told as the measure for the next, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "reference.frame": (
        r"(?:wide|first|last|other|previous|earlier|one before)(?: angle)?(?: frame| one| shot)?"
        r"|before|earlier"
    ),
    "reference.held": (
        r"fine|held|holds|good|ok|okay|right|worked|spot on|clean|perfect|no blink\w*"
    ),
    "reference.not_held": r"not|isnt|wasnt|too|blinked|blinks|clipped|over|under",
}
