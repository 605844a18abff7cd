"""German words of worries at the water: shoes, stones, a coat, what caused it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "handy.shoes": r"\w*schuhe?n?|sneakers?|\w*sohlen?|\w*stiefeln?|sandalen|barfu(?:ß|ss)",
    "handy.stones": (
        r"steine?n?|fels\w*|bl(?:ö|o|oe)cke?n?|platten|laub\w*|bl(?:ä|a)tter\w*|moos\w*"
    ),
    "handy.beside": (
        r"(?:am|neben dem|beim|entlang|neben der) (?:\w+ )?(?:\w*ufer|\w*rand|wasser|bach|fluss"
        r"|becken|water|creek|stream|pool|edge|bank)"
    ),
    # What lies on stones at a stream.
    "handy.litter": r"\w*laub\w*|\w*bl(?:ä|a)ttern?",
    # What tells of a height beside "am Rand": then it is no water's edge.
    "handy.drop": (
        r"oben|oberhalb|ober\w*|\w*kanten?|abbruch\w*|klippen?|abgrund|hinunter\w*|runter\w*"
        r"|\w*f(?:a|ä)ll\w*|tiefe|sporn|gel(?:ä|a)nder|absturz\w*"
    ),
    "handy.coat": r"\w*jacke|\w*mantel|anorak|poncho|kleid|m(?:ü|u)tze|pulli",
    "handy.cause": r"warum|wieso|weshalb|woher|woran|ursache|was ist (?:das|los)|grund",
}
