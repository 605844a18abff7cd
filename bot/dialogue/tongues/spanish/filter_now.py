"""Spanish words by which is asked what filter is on, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_now.asks": (
        r"(?:es|eso es|seria|va) con (?:el |los )?(?:\w+ ){0,2}?(?:filtros?|nd|polarizador"
        r"|de \w+)(?: o| y)\b"
        r"|con que (?:filtro|nd)"
        r"|con o sin (?:el )?(?:filtro|nd|polarizador)"
        r"|que filtro (?:va|lleva|esta) (?:puesto|delante)?"
    ),
}
