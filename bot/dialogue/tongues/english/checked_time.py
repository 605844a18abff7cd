"""English words of a sum of stops and times, as its English gloss has them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "checked_time.on": r"on|onto|over|from|to|added to|upon|at",
    "checked_time.makes": r"(?:is|are|makes?|gives?|comes to|equals|becomes?|gets me)",
    "checked_time.asks": r"agree\w*|right|correct|am i|or not|check",
}
