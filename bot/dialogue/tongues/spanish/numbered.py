"""Spanish words around the number of an option: "opción 3", "2 como dije"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What names an option, wherever it stands in a message.
    "numbered.option": r"opci[oó]n|respuesta|alternativa",
    # What may stand before its number at the beginning alone.
    "numbered.before": r"n[uú]mero|nro|la|el|es la|la n[uú]mero|el n[uú]mero|pues|claro|otra vez",
    "numbered.one": r"uno|una",
    "numbered.two": r"dos",
    "numbered.three": r"tres",
    "numbered.four": r"cuatro",
    "numbered.five": r"cinco",
    # What adds something to the option instead of naming another.
    "numbered.also": r"y|también|además",
    # What points back to an earlier message, and tells nothing.
    "numbered.as_said": (
        r"como (?:ya )?(?:te )?(?:he dicho|dije|digo|escrib[ií]|antes|siempre)"
        r"|ya (?:te )?lo (?:he dicho|dije|escrib[ií])"
    ),
    # What may follow it without a sign between: none of it is counted or measured.
    "numbered.goes_on": (
        r"<numbered.as_said>|yo|está|estamos|ya|s[ií]|no|pero|porque|pues|sigue"
        r"|otra vez|por favor|creo|lo|se|claro|hay"
    ),
    # Who is unsure chooses all the same.
    "numbered.unsure": (
        r"no (?:lo )?s[eé]|ni idea|no estoy segur[oa]|mm+|eh+|quiz[aá]s?|creo(?: que)?"
        r"|supongo(?: que)?|tal vez"
    ),
}
