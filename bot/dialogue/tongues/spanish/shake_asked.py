"""Spanish words by which somebody asks whether a camera that moved was to blame."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "shake_asked.asks": (r"(?:era|fue|es|seria)(?: por)?|puede (?:ser|haber sido)(?: por)?"),
    # What moves a camera.
    "shake_asked.moves": (
        r"(?:el |la |un |una )?(?:tripode|columna|grava|vibracion|temblor"
        r"|movimiento|trepidacion|bamboleo)"
    ),
    # A frame that came out better since.
    "shake_asked.sharper": r"mas nitid[oa]|ahora nitid[oa]|mejor ahora",
}
