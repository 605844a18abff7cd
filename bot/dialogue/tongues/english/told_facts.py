"""English words of what is told at home of the place, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "told_facts.was": r"was|were|had been",
    # What is asked of a print: its size is none of the fall.
    "told_facts.print": r"print\w*|poster|canvas|paper",
}
