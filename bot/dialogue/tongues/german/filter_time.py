"""German words by which the time behind a filter, or what a filter takes, is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_time.how_long": (
        r"wie ?lang\w*|wie ?viele? sekunden|welche (?:belichtungs)?zeit|was (?:wird|ergibt|macht)"
        r"|welche verschlusszeit"
    ),
    "filter_time.how_much": r"wie ?viele? ?(?:mal|stufen|blenden)|in (?:blenden)?stufen|in blenden",
    "filter_time.bare": (
        r"ohne(?: (?:den|einen|jeden))? ?(?:filter|nd|ihn)?|bloss"
        r"|(?:aus|von) (?=1/|\d)"
    ),
    # Of the time that is set, once the filter is on: by any words, or by those for times alone.
    "filter_time.which": (
        r"welche (?:belichtungs|verschluss)?zeit|auf welche zeit|wie ?lang\w*|neue zeit"
    ),
    "filter_time.exposed": r"wie ?lang\w*|wie ?viele? sekunden",
}
