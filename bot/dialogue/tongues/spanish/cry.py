"""Spanish words of a bare call for help."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cry.of_need": r"socorro|auxilio|emergencia|urgencia|es una emergencia",
    "cry.help": r"(?:necesito|necesitamos|pido)(?: de)? ayuda|ayuda(?:me|nos|d|dme|dnos|nme|nnos)?",
    "cry.hurry": r"rapido|ya|ahora",
    "cry.beside": r"por favor|rapido|ya|ahora|y|a|alguien|puedes",
}
