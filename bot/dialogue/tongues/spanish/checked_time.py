"""Spanish words of a sum of stops and times, as its English gloss has them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "checked_time.on": r"sobre|a|desde|con|en",
    "checked_time.makes": r"(?:son|da|dan|es|hacen|queda|quedan)",
    "checked_time.asks": r"verdad|correcto|cierto|o no|de acuerdo|bien asi",
}
