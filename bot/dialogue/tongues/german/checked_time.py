"""German words of a sum of stops and times, as its English gloss has them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "checked_time.on": r"auf|bei|von|zu",
    "checked_time.makes": r"(?:sind|macht|machen|gibt|ergibt|ergeben|ist|werden)",
    "checked_time.asks": r"stimmt\w*|richtig|korrekt|oder|passt das|einverstanden",
}
