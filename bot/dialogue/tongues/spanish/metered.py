"""Spanish words by which settings are told as what the meter gives, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "metered.gives": (
        r"(?:fotometro|exposimetro|medidor|camara|medicion)(?: ahora| ya)?(?: me)?"
        r" (?:da|dice|marca|pide|mide|sale)|medid[oa]|mido|he medido"
        r"|(?:mide|marca) (?:ahora )?(?:la camara|el (?:fotometro|exposimetro))"
    ),
}
