"""German words of a bare call for help."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cry.of_need": r"notfall|notruf|rette\w* (?:mich|uns)|das ist ein (?:notfall|emergency)",
    "cry.help": (
        r"(?:ich|wir) brauchen? hilfe|brauche hilfe|hilfe|hilf (?:mir|uns)|helft (?:mir|uns)"
    ),
    "cry.hurry": r"schnell|jetzt|sofort",
    "cry.beside": r"bitte|schnell|jetzt|sofort|und|jemand|kannst du",
}
