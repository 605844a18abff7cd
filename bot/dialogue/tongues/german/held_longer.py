"""German words for a button that is held down for a longer time, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "held_longer.asks": (
        r"(?:langer|laenger|lange)(?: \w+){0,3} (?:druck\w*|drueck\w*"
        r"|drauf ?halt\w*|gedruckt|gedrueckt|halten)|(?:ausloser|ausloeser"
        r"|knopf)(?: \w+){0,3} (?:langer|laenger|lange|gedruckt)"
    ),
}
