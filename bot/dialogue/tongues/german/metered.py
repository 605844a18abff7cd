"""German words by which settings are told as what the meter gives, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "metered.gives": (
        r"(?:beli|belichtungsmess\w+|messer|messung)(?: jetzt| nun)?"
        r" (?:sagt|gibt|zeigt|will|misst|meint|ergibt)(?: mir)?|gemessen(?: hab\w*)?"
        r"|ich messe|messe ich|misst (?:die kamera|sie|er|es)|kamera(?: jetzt)? misst"
        r"|(?:sagt|gibt|zeigt|will|meint) (?:mir )?(?:der beli\w*|die (?:belichtungs)?messung)"
    ),
}
