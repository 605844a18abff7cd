"""Spanish words for a place in a list of frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "ordinals.first": r"primer[oa]?s?",
    "ordinals.last": r"ultim[oa]s?",
    "ordinals.second": r"segund[oa]",
    "ordinals.third": r"tercer[oa]?",
    "ordinals.fourth": r"cuart[oa]",
    "ordinals.fifth": r"quint[oa]",
    "ordinals.sixth": r"sext[oa]",
    "ordinals.seventh": r"septim[oa]",
}
