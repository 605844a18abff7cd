"""Spanish words: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "thunder.storm": r"tormentas?|truenos?|tronadas?",
    "thunder.goes_on": r"truena\w*|relampago\w*|rayos?",
    "thunder.flash": r"relampago\w*|rayo\w*",
    "thunder.bang": r"trueno\w*|estruendo",
    "thunder.seconds": r"segundos?|segs?",
    "thunder.and": r"y",
    "thunder.if": r"si|cuando",
    "thunder.supposed": r"ayer|supon\w*|en general",
}
