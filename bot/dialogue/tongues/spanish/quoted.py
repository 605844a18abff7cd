"""Spanish words of a setting that only quotes the bot, as glossed; the number is "#"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_DIJISTE: Final = (
    r"(?:dijiste|has dicho|habias dicho|recomendaste|has recomendado|pusiste|propusiste|diste"
    r"|escribiste)"
)

WORDS: Final[Mapping[str, str]] = {
    "quoted.verbs": (
        r"\b(?:dijiste|dicho|recomendaste|recomendado|pusiste|propusiste|diste|escribiste)\b"
    ),
    "quoted.you_said": rf"(?:me )?{_DIJISTE}\b[^,;.!?\d#]{{0,16}}#|#,? (?:me )?{_DIJISTE}",
    "quoted.done": (
        r"puse|pongo|hice|hecho|tome|use|usado|probe|dispare|saque|deje|como (?:me )?dijiste"
        r"|like (?:me )?dijiste|parpade\w*|ahora|queda"
    ),
}
