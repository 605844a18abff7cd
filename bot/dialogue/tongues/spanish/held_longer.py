"""Spanish words for a button that is held down for a longer time, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "held_longer.asks": (
        r"(?:mantengo|mantener|dejo|dejar|aprieto|apretar|pulso|pulsar"
        r"|presiono)(?: \w+){0,4} (?:pulsado|apretado|presionado|mas tiempo|mas rato)"
    ),
}
