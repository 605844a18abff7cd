"""German words: stones that the water has come over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "covered.stone": (
        r"(?:tritt)?steine?n?|felsen|fels|kies(?:bank)?|brocken|markierung|meine marke"
        r"|der stock"
    ),
    "covered.under": (
        r"unter wasser|untergegangen|uberspult|uberflutet|nicht mehr zu sehen"
        r"|unterm wasser|(?:halb|fast|schon) (?:bedeckt|weg|verschwunden|uberspult)"
    ),
    "covered.before": (
        r"jetzt|nun|schon|vorhin|eben|waren trocken|war trocken|als (?:wir|ich) (?:kam"
        r"|kamen|angekommen)|markiert\w*"
    ),
}
