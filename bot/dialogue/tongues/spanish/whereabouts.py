"""Spanish words: who is out of shelter, at a place already, or left out of a "no"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "whereabouts.outside": (
        r"agua|cascada|rio|arroyo|lago|garganta|fuera|arbol|bosque|prado|cresta|cumbre|montana"
        r"|camino|sendero|vamos|camin\w*|alcanz\w*"
    ),
    "whereabouts.there": r"estoy|estamos|estan|esta (?:arriba|alli|ahi|en)|ahora|ya",
    "whereabouts.somebody": (
        r"mujer|marido|hij[oa]s?|nin[oa]s?|herman[oa]s?|amig[oa]s?|padre|madre|abuel[oa]|yo"
        r"|nosotr[oa]s|nosotros dos"
    ),
    "whereabouts.only": r"solo|salvo|excepto|menos|yo no|pero",
    "whereabouts.the": r"mi|mis|el|la|los|las",
    "whereabouts.good_there": (
        r"sujet[oa]s?|agarr\w*|esta(?: \w+)? (?:seco|seca|firme)|es (?:ancho|estable)|aqui arriba"
        r"|(?:en el|al) (?:borde|filo)|sobre el hielo|con cuidado"
    ),
}
