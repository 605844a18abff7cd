"""German words for a place in a list of frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "ordinals.first": r"erste[nmrs]?",
    "ordinals.last": r"letzte[nmrs]?",
    "ordinals.second": r"zweite[nmrs]?",
    "ordinals.third": r"dritte[nmrs]?",
    "ordinals.fourth": r"vierte[nmrs]?",
    "ordinals.fifth": r"fünfte[nmrs]?",
    "ordinals.sixth": r"sechste[nmrs]?",
    "ordinals.seventh": r"siebte[nmrs]?",
}
