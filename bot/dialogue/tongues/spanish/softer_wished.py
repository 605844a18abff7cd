"""Spanish words of water that is too streaky, or is wished softer, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "softer_wished.streaky": (
        r"(?:demasiado|demasiada|muy|tan) (?:rayad[oa]|estriad[oa]|a rayas|fibros[oa]|hilad[oa])"
    ),
    "softer_wished.softer": (
        r"mas (?:suave|suavecit[oa]|sedos[oa]|fluid[oa]|blandit[oa]|cremos[oa])"
    ),
    # As far as it may go.
    "softer_wished.limit": (
        r"(?:sin|no|pero)(?: \w+){0,5} (?:algodon|papilla|niebla|sopa|leche|lechos[oa]|bruma|pure)"
    ),
    "softer_wished.other": (
        r"hojas?|helechos?|ramas?|rocas?|piedras?|cielo|estrellas?|cristal|lente|objetivo|filtro"
        r"|pantalla|manga|trapo|esquinas?|bordes?"
    ),
}
