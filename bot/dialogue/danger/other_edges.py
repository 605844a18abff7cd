"""Edges that nobody falls from: of a path, a wood, a meadow; read as their side."""

from __future__ import annotations

import re
from typing import Final

_EDGE: Final = re.compile(
    r"\b(?:edge|rim) (?:of|along) (?:the|a|this) (?:\w+ )?(?:path|trail|road|track|meadow|field"
    r"|forest|woods?|car park|parking lot|clearing|village|table|bench|boardwalk)\b"
    r"|\b(?:weg|wald|wiesen|strassen|straßen)rand\b"
    r"|\brand (?:des|der|vom|einer|eines) (?:weg|wald|wiese|parkplatz|straße|strasse)\w*"
    r"|\bborde del? (?:la )?(?:camino|sendero|bosque|aparcamiento|carretera|prado)\b",
    re.IGNORECASE,
)


def without_other_edges(text: str) -> str:
    """A message in which such an edge is only a side, whatever else it tells.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _EDGE.sub("side", text)
