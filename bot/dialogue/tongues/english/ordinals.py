"""English words for a place in a list of frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "ordinals.first": r"first",
    "ordinals.last": r"last|final",
    "ordinals.second": r"second",
    "ordinals.third": r"third",
    "ordinals.fourth": r"fourth",
    "ordinals.fifth": r"fifth",
    "ordinals.sixth": r"sixth",
    "ordinals.seventh": r"seventh",
}
