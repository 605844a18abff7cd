"""German words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        r"(?:will|wollte|mochte|mag) (?:\w+ ){0,2}?(?:sterben|tot sein|nicht mehr leben"
        r"|nimmer leben)"
        r"|(?:mich|sich|uns) (?:umbringen|das leben nehmen|was antun|etwas antun)|das leben nehmen"
        r"|suizid\w*|selbstmord\w*|selbsttotung|nicht mehr leben (?:will|wollen|mag)|lebensmude"
    ),
}
