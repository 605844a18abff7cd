"""English words of edges that nobody falls from."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "other_edges.edge": (
        r"(?:edge|rim) (?:of|along) (?:the|a|this) (?:\w+ )?(?:path|trail|road|track|meadow|field"
        r"|forest|woods?|car park|parking lot|clearing|village|table|bench|boardwalk)"
    ),
}
