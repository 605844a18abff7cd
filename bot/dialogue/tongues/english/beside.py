"""English words that part a message, or tell facts in a part of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "beside.fact": r"tripod|full frame|polari[sz]er|overcast",
    "beside.between": r"and|but|while",
}
