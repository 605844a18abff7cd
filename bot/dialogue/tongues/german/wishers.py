"""German words: somebody else who wishes a look of the water, as the message names them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "wishers.who": (
        r"(?:mein|meine|unser|unsere|der|die|eine?) (?:[^\W\d]+ )?[^\W\d]+"
        r"(?= (?:will|m(?:ö|oe|o)chte|mag|h(?:ä|ae|a)tte|w(?:ü|ue|u)nscht|bevorzugt)\b)"
    ),
    # Nothing but a wish of the water's look, without umlauts: no place to be in.
    "wishers.whole": (
        r"(?:(?:mein|meine|unser|unsere|der|die|eine?) (?:\w+ )?\w+|er|sie) (?:will|mochte|mag"
        r"|hatte|wunscht sich|bevorzugt)"
        r"(?: (?:es|das|ihn|sie|die|den|wasser|fall|bach|bild|foto|tropfen|spritzer|lieber|gern"
        r"|gerne|ganz|eher|so|richtig|total|am liebsten|schon|wie|glas|einzeln\w*))*"
        r" (?:eingefroren|gefroren|seidig|weich|samtig|cremig|milchig|neblig|strukturiert|scharf)"
        r"(?: (?:haben|sein|aussehen|bitte|wie glas))*"
    ),
}
