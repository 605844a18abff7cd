"""Spanish words of what is told at home of the place, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "told_facts.was": r"era|estaba",
    # What is asked of a print: its size is none of the fall.
    "told_facts.print": r"imprim\w*|copia|papel",
}
