"""Spanish words by which the time behind a filter, or what a filter takes, is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_time.how_long": (
        r"cuanto(?: tiempo)? (?:expongo|queda|sale|pongo|tengo|debo|necesito|es|seria)"
        r"|cuantos segundos|que (?:tiempo|velocidad)|en cuanto (?:queda|se queda)|cuanto tiempo"
    ),
    "filter_time.how_much": r"cuantas veces|cuantos (?:pasos|puntos|stops)|en pasos",
    "filter_time.bare": r"sin(?: (?:el|ningun))? ?(?:filtros?|nd)?|(?:de|desde) (?=1/)",
    # Of the time that is set, once the filter is on: by any words, or by those for times alone.
    "filter_time.which": (
        r"(?:que|cual(?: es el)?) (?:tiempo|velocidad|exposicion)|cuanto tiempo|nuevo tiempo"
    ),
    "filter_time.exposed": r"cuanto (?:tiempo )?expongo|cuantos segundos|cuanto tiempo expongo",
}
