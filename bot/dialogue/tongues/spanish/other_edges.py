"""Spanish words of edges that nobody falls from."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "other_edges.edge": (
        r"borde del? (?:la )?(?:camino|sendero|bosque|aparcamiento|carretera|prado)"
    ),
}
