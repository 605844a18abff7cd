"""English words for a button that is held down for a longer time, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "held_longer.asks": (
        r"(?:hold|press|push)(?:ing)? (?:it |the |shutter |button |trigger |down |my finger )*"
        r"(?:down )?(?:for )?longer(?! by hand| handheld)|keep(?:ing)? (?:it |the |my |button "
        r"|finger )*(?:pressed"
        r"|held down)"
    ),
}
