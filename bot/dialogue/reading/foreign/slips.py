"""Slips of the thumb in the German and Spanish words of the trade, put right."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.reading.near_words import NearWords

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
    {"bedeck", "bedecke", "blenda", "blinde", "blonde", "borrosa", "cascara", "desenfocada"}
    | {
        "nublada",
        "oscuro",
        "oscurra",
        "parpadeo",
        "segundas",
        "segundo",
        "verwackele",
        "verwackeln",
    }
)
_TOKEN: Final = re.compile(r"[^\W\d_]{6,18}")


_NEAR: Final = {language: NearWords(words, _OTHERS) for language, words in _WORDS.items()}


def mended(text: str, language: str) -> str:
    """The message with slips in the trade's words put right: `polfiltr`, `tripde`, `stattiv`.

    Args:
        text: in lower case; Spanish without accents.
        language: "de" or "es".
    """
    words, near = _WORDS[language], _NEAR[language]

    def whole(match: re.Match[str]) -> str:
        token = match.group()
        return token if near.knows(token) or token[:-1] in words else near.of(token)

    return _TOKEN.sub(whole, text)
