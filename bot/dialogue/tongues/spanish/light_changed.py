"""Spanish words: light that has changed, and not the picture of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "light_changed.place": (r"esta|todo|(?:la |el )?(?:luz|cielo|barranco)|aqui|ahora|ya|se"),
    "light_changed.becomes": (
        r"(?:esta|se|puso|ha|puesto|poniendo|hizo|va|volvio|quedo|ya|ahora|mucho|bastante|un|poco"
        r"|todo|aqui|mas|muy|como|unos?|pasos?|puntos?|\d[\d/.,]*|dos|tres|cuatro|medio|tercios?|y)"
    ),
    "light_changed.darker": (r"oscur[oa]|gris|apagad[oa]|menos clar[oa]"),
    "light_changed.brighter": (r"clar[oa]|luminos[oa]|menos oscur[oa]"),
    "light_changed.less": (
        r"(?:bajo|baja|ha bajado|cayo|se fue|se va) (?:\w+ ){0,3}?la luz|(?:hay |tengo )?menos luz"
    ),
    "light_changed.more": (r"(?:subio|ha subido) (?:\w+ ){0,3}?la luz|hay mas luz"),
    "light_changed.since": (
        r"ahora|ya|se (?:puso|ha puesto|hizo|volvio|esta poniendo)|que antes|nubes?|afuera|aqui"
        r"|todo"
        r"|luz|cielo"
    ),
    "light_changed.picture": (
        r"fotos?|imagen|pantalla|toma|archivo|histograma|bordes?|esquinas?|izquierda|derecha|lados?"
        r"|arriba|abajo|rocas?|agua|demasiado|siguiente|haz\w*|quiero|deberia|si"
    ),
    # Through these it is darker, whatever the light.
    "light_changed.filter": r"filtros?|nd|polari\w+|lente",
}
