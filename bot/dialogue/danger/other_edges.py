"""Edges that nobody falls from: of a path, a wood, a meadow; read as their side."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.tongues import in_any

_EDGE: Final = re.compile(rf"\b{in_any('other_edges.edge')}\b", re.IGNORECASE)


def without_other_edges(text: str) -> str:
    """A message in which such an edge is only a side, whatever else it tells.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _EDGE.sub("side", text)
