"""Spanish words of what people say of their ears and eyes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "access.colour": (
        r"dalt[oó]nic[oa]s?|daltonismo"
        r"|no (?:distingo|diferencio) (?:bien )?(?:el rojo|los colores)"
    ),
    "access.hearing": r"sord[oa]s?|oigo (?:muy |bastante )?mal|no oigo bien",
    "access.sight": (
        r"lector de pantalla|veo (?:muy |bastante )?mal(?= ?(?:$|[,.;]| y\b| de))"
        r"|soy (?:casi )?cieg[oa]|letra pequeña|baja visi[oó]n"
    ),
    "access.no_needs": r"sin notas",
}
