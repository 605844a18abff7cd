"""German words by which a time is asked for from another one that was right."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_sum.asks": (
        r"(?:welche|was für (?:ne|eine?)) (?:zeit|belichtung\w*|verschlusszeit)|wie (?:lang\w*"
        r"|viele sek\w*)|zeit (?:bei|mit|für)|belichtungszeit (?:bei|mit)"
    ),
    # In front of the settings that were right.
    "time_sum.reference": r"wenn|weil|da (?=\d|f)|nachdem",
    # A polariser that is put on for it, and how much it takes.
    "time_sum.with": r"mit|hinter|with",
    "time_sum.with_it": r"(?:wenn er|mit ihm|damit|ist er) (?:drauf|on)",
    "time_sum.how_much": r"wie ?viele?|kostet|nimmt|schluckt|verlier\w*",
}
