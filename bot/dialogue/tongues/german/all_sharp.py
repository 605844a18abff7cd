"""German words: a frame that is sharp all over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "all_sharp.all": (
        r"(?:alles?|alle|beide|passt|is|ist|sind|sieht|schaut|fels\w*|steine?|ecken?)(?: (?:ist"
        r"|is|sind|schon"
        r"|auch|alles|richtig|sehr|ganz|knack|gestochen|und|die|der|ecken?|fels\w*|steine?"
        r"|aus))* (?:scharf"
        r"|knackscharf|gestochen scharf)"
    ),
    "all_sharp.everywhere": (
        r"(?:uberall|durchgehend|durchwegs|rundum) scharf|scharf (?:uberall|bis in die ecken"
        r"|durchgehend)"
    ),
    "all_sharp.beside": (
        r"ja|jo|ok|gut|passt|super|bei|prozent|auf|dem|am|display|schirm|geschaut|geprüft|gepruft"
        r"|und|keine?"
        r"|tropfen|nichts|auch|alles|die|der|sieht|schaut|aus|so|jetzt|ecken?|fels|vorn|hinten"
        r"|schon|glas"
    ),
    "all_sharp.not": (r"nicht|ausser|aber|unscharf|weich|fast|nur|wenn|bis auf"),
}
