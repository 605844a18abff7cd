"""Slips of the thumb in the German and Spanish words of the trade, put right."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

#: Words that decide what a number or a complaint is; a token one letter off is one of them.
_WORDS: Final[Mapping[str, frozenset[str]]] = {
    "de": frozenset(
        {"belichtungszeit", "belichtungsmesser", "wasserfall", "polfilter", "graufilter"}
        | {"hochformat", "querformat", "vordergrund", "hintergrund", "entfernung", "histogramm"}
        | {"vollformat", "sekunden", "sekunde", "brennweite", "stativ", "überbelichtet"}
        | {"unterbelichtet", "freihand", "sonnenuntergang", "verwackelt", "bedeckt", "blende"}
        | {"blenden", "unscharf", "verschlusszeit", "viertelsekunde", "windstill", "abstand"}
    ),
    "es": frozenset(
        {"tripode", "polarizador", "diafragma", "segundos", "cascada", "distancia", "histograma"}
        | {"exposicion", "apertura", "nublado", "parpadea", "parpadean", "sensibilidad", "borroso"}
        | {"vertical", "horizontal", "objetivo", "obturador", "exposimetro", "fotometro", "oscura"}
        | {"sobreexpuesta", "subexpuesta", "desenfocado", "fondo", "atardecer", "textura", "metros"}
    ),
}
#: Words of their own that are one letter off.
_OTHERS: Final = frozenset(
    {"stative", "stativs", "blendet", "blinde", "blenda", "blonde", "abstands", "bedecke", "bedeck"}
    | {"sekundär", "cascara", "cascadas", "segundas", "aperturas", "parpadeo", "parpadear"}
    | {"borrosa", "borrosos", "nublada", "nublados", "objetivos", "fondos", "hondo", "fonda"}
    | {"oscuro", "oscuras", "oscurar", "retros", "metro", "meros", "desenfocada", "texturas"}
    | {"blend", "blendend", "verwackeln", "verwackele", "wasserfalls", "hintergrunds"}
    | {"exposicion", "exponer", "oscurra", "unscharfe", "unscharfer", "segundo", "segunda"}
)
_TOKEN: Final = re.compile(r"[^\W\d_]{6,18}")


def _cuts(word: str) -> set[str]:
    """The word and what is left of it without one of its letters."""
    return {word} | {word[:at] + word[at + 1 :] for at in range(len(word))}


_CUTS: Final[Mapping[str, Mapping[str, str]]] = {
    language: {cut: word for word in sorted(words) for cut in _cuts(word)}
    for language, words in _WORDS.items()
}


def mended(text: str, language: str) -> str:
    """The message with slips in the trade's words put right: `polfiltr`, `tripde`, `stattiv`.

    Args:
        text: in lower case; Spanish without accents.
        language: "de" or "es".
    """
    words, cuts = _WORDS[language], _CUTS[language]

    def whole(match: re.Match[str]) -> str:
        token = match.group()
        if token in words or token in _OTHERS or token[:-1] in words:
            return token
        found = (cuts[cut] for cut in sorted(_cuts(token)) if cut in cuts)
        return next((word for word in found if word[0] == token[0]), token)

    return _TOKEN.sub(whole, text)
