"""Spanish words: a time that is told by how many times the last one it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_factor.twice": (
        r"(?:el )?doble (?:de(?:l)? )?(?:tiempo|exposicion)|duplic\w+ el tiempo|el doble de largo"
    ),
    "time_factor.half": (r"(?:la )?mitad (?:de(?:l)? )?(?:tiempo|exposicion)"),
    "time_factor.only": (
        r"(?:ok|bueno|entonces|pongo|que pasa si|y si|si|uso|con|ahora|y|va|vale|pues|probe"
        r"|pruebo|tome|puse"
        r"|por favor|si|lo|a)"
    ),
}
