"""German words of a frame that held, told as the measure for the next, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "reference.frame": (
        r"(?:weite\w*|erste\w*|letzte\w*|vorige\w*|andere\w*)(?: bild| foto| aufnahme)?|vorhin"
        r"|vorher|davor"
    ),
    "reference.held": r"gut|gepasst|passte|passt|hielt|gehalten|ok|okay|perfekt|sauber|richtig",
    "reference.not_held": r"nicht|nich|kein\w*|zu|blinkte|geblinkt|uber|unter",
}
