"""Spanish words for a filter of which nobody knows the strength, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_unknown.filter": r"filtros?|nd|de pinza|de clip",
    "filter_unknown.unknown": (
        r"(?:no se|ni idea)(?: \w+){0,5} (?:numero|fuerza|fuerte|oscuro|pasos|densidad)"
        r"|(?:que|cual) (?:numero|fuerza)(?: \w+){0,3} filtro|como de (?:fuerte|oscuro) es"
        r"|no (?:pone|dice|trae|lleva) nada|sin numero|ningun numero"
    ),
    "filter_unknown.asks": r"como|averigu\w*|saber|mid\w+|medir|cual|que numero|ni idea|no se",
    "filter_unknown.dark": (
        r"(?:filtro|cristal|nd) (?:\w+ ){0,2}?(?:oscuro|negro|de pinza"
        r"|de clip|barato)"
    ),
    "filter_unknown.bring": (
        r"(?:lo|la) (?:llevo|traigo|meto)|(?:debo|tengo que|vale la pena"
        r"|hay que) (?:llevar|traer)\w*|llevarlo"
    ),
}
