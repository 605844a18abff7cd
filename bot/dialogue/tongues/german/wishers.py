"""German words: somebody else who wishes a look of the water, as the message names them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WISHERS: Final[Mapping[str, str]] = {
    "wishers.who": (
        r"(?:mein|meine|unser|unsere|der|die|eine?) (?:[^\W\d]+ )?[^\W\d]+"
        r"(?= (?:will|m(?:ö|oe|o)chte|mag|h(?:ä|ae|a)tte|w(?:ü|ue|u)nscht|bevorzugt)\b)"
    ),
}
