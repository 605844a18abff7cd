"""German words of edges that nobody falls from."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "other_edges.edge": (
        r"(?:weg|wald|wiesen|strassen|straßen)rand"
        r"|rand (?:des|der|vom|einer|eines) (?:weg|wald|wiese|parkplatz|straße|strasse)\w*"
    ),
}
