"""German words by which settings are told as what the meter gives, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "metered.gives": (
        r"(?:beli|belichtungsmesser|messer|messung)"
        r" (?:sagt|gibt|zeigt|will|misst|meint)(?: mir)?|gemessen(?: hab\w*)?|ich messe"
    ),
}
