"""German words that all is well, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "all_well.lead": r"nein|das|es|sieht|alles",
    "all_well.fine": r"passt|gut|prima|in ordnung",
    "all_well.behind": r"schon",
    "all_well.well": r"passt (?:so|schon)",
    "all_well.let_be": (
        r"lass (?:es|das|it)(?: so| drin)?|stört (?:mich )?not|gehört dazu|macht nothing"
    ),
}
