"""Spanish words of worries at the water: shoes, stones, a coat, what caused it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "handy.shoes": r"zapat\w+|tenis|suelas?|botas?|sandalias|descalz[oa]",
    "handy.stones": r"piedras?|rocas?|bloques?|lajas?|hojas?|hojarasca|musgo\w*",
    "handy.beside": (
        r"(?:junto al?|al lado del?|por|en|cerca del?|de) (?:la |el )?(?:\w+ )?(?:orilla|borde|agua"
        r"|arroyo|rio|poza|water|creek|stream|pool|edge|bank)"
    ),
    # What lies on stones at a stream.
    "handy.litter": r"hojas|hojarasca",
    # What tells of a height beside "en el borde": then it is no water's edge.
    "handy.drop": (
        r"cima|arriba|encima|sobre el vac[ií]o|precipicio|abismo|acantilado|cascadas?|ca[ií]da"
        r"|abajo|salto|cumbre|baranda\w*|asom\w*"
    ),
    "handy.coat": r"abrigo|chaqueta|chamarra|campera|anorak|poncho|vestido|impermeable|gorro",
    "handy.cause": r"por qu[eé]|causas?|de d[oó]nde|motivo|qu[eé] (?:es eso|pas[oó])",
}
