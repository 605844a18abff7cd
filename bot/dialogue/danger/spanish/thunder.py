"""Spanish wordings: a storm by its name, a flash and its thunder, and what is only supposed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

THUNDER: Final[Mapping[str, str]] = {
    "storm": r"tormentas?|truenos?|tronadas?",
    "goes_on": r"truena\w*|relampago\w*|rayos?",
    "flash": r"relampago\w*|rayo\w*",
    "bang": r"trueno\w*|estruendo",
    "seconds": r"segundos?|segs?",
    "and": r"y",
    "if": r"si|cuando",
    "supposed": r"ayer|supon\w*|en general",
}
