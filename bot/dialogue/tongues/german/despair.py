"""German words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        r"(?:will|wollte|mochte|mag) (?:\w+ ){0,2}?(?:sterben|tot sein|nicht mehr leben"
        r"|nimmer leben)"
        r"|(?:will|wollte|mochte|versucht\w*|droht) (?:\w+ ){0,2}?(?:mich|sich|uns) (?:umbringen"
        r"|umzubringen|was antun|etwas antun)|(?:mich|sich) das leben nehmen"
        r"|bring\w* (?:mich|sich) um(?! mit)|suizid\w*|selbstmord\w*|selbsttotung"
        r"|nicht mehr leben (?:will|wollen|mag)|lebensmude"
    ),
    # Beside a leap from a height it is no game.
    "despair.beside_a_leap": (
        r"(?:keine[rn]|niemand\w*) (?:vermisst|interessiert|kummert)|kann nicht mehr"
        r"|ein ende machen"
        r"|hat keinen sinn|leb wohl|lebt wohl|weint|verzweifelt"
    ),
}
