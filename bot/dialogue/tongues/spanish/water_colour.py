"""Spanish words: what the colour of the water is asked by."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Brown as tea is, or of mud.
    "water_colour.brown": (
        r"te|color (?:te|cafe|marron)|coca ?cola|whisky|ambar|marron\w*|pard[oa]s?|cafe"
        r"|amarronad[oa]"
    ),
    "water_colour.asked": (
        r"barro|lodo|turba|taninos?|normal|natural|segur[oa]|peligros[oa]|mal[oa]|limpi[oa]"
        r"|suci[oa]"
        r"|crecida|preocup\w*|color|por que|significa"
    ),
    "water_colour.safe": r"segur[oa]|peligros[oa]|meter\w*|beber",
    "water_colour.clear": (
        r"clar[oa]|cristalin[oa]|transparente|(?:se )?ven? (?:bien )?(?:las piedras|el fondo)"
    ),
    "water_colour.cloudy": (
        r"no (?:\w+ )?clara|turbi[oa]|opac[oa]|ramas|palos|sube|subiendo|mas alt[oa]"
        r"|no se ven? (?:las|el)"
    ),
    "water_colour.else": (
        r"fotos?|balance de blancos|editar|edicion|raw|jpe?g|pantalla|polarizador|filtro|nd"
        r"|histograma"
        r"|(?:rocas?|piedras?|hojas?|musgo) (?:marron\w*|pard[oa]s?)|saturacion|exposicion"
        r"|ajustes?|tiempo|tono"
    ),
}
