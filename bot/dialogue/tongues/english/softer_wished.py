"""English words of water that is too streaky, or is wished softer, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "softer_wished.streaky": (
        r"(?:too|so|overly|rather) (?:much )?(?:streaky|streaked|stripy|stripey|stringy|wiry)"
    ),
    "softer_wished.softer": r"softer|smoother|silkier|creamier|more (?:silky|flowing|soft)",
    # As far as it may go.
    "softer_wished.limit": (
        r"(?:without|not|no|but|short of)(?: \w+){0,5} (?:mush\w*|cotton|wool|fog|foggy|soup|milk"
        r"|milky|candyfloss)"
    ),
    "softer_wished.other": (
        r"leaf|leaves|ferns?|branch\w*|rocks?|stones?|boulders?|cliffs?|sky|stars?|glass|lens"
        r"|filter|screen|sleeve|cloth|corners?|edges?"
    ),
}
