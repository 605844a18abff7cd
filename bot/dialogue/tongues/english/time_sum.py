"""English words by which a time is asked for from another one that was right."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_sum.asks": (
        r"(?:what|which) (?:shutter|exposure|time|speed)(?: time| speed)?|shutter(?: speed"
        r"| time)?(?= (?:at|with|for|then|now)\b)|how (?:long|many sec\w*)|time (?:at|with)"
        r"|new (?:time|shutter)"
    ),
    # In front of the settings that were right.
    "time_sum.reference": r"if|when|since|because|from|where|as (?=\d|f)",
    # A polariser that is put on for it, and how much it takes.
    "time_sum.with": r"with|behind|through",
    "time_sum.with_it": r"with (?:it|that|this) on",
    "time_sum.how_much": r"how (?:many|much)|costs?|lose|take|eats?",
}
