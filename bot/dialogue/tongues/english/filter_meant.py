"""English words for a filter that was named before."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_meant.it": r"it|that|this",
}
