"""English words by which somebody asks whether another time would do."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # In front of the time, as the gloss leaves them.
    "time_enough.in_front": (
        r"(?:could|can|should|may|might) (?:i|we) (?:get away with|go (?:with|for|to)|use|take|try"
        r"|do(?: with)?|make do with|stay at|keep)|(?:isn'?t|is|wouldn'?t|would|be) (?:it )?enough"
    ),
    # Behind it.
    "time_enough.behind": (
        r"(?:be )?(?:enough|ok(?:ay)?|fine|do(?: it)?|work|suffice|all right|short enough"
        r"|long enough)"
    ),
}
