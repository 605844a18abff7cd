"""English words by which the time behind a filter, or what a filter takes, is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_time.how_long": (
        r"how (?:long|many seconds)|(?:what|which) (?:exposure |shutter )?(?:time|speed|shutter"
        r"|exposure)|what (?:do|will|would) i (?:get|need|set)|what (?:does it|do they) become"
        r"|new time"
    ),
    "filter_time.how_much": (
        r"how many (?:times|stops)|how much longer|in stops|what (?:is|does)\b.*\b(?:mean|in stops)"
    ),
    "filter_time.bare": (
        r"without(?: (?:the|a|any))? ?(?:filters?|nds?|it)?|bare|unfiltered|no filters?"
        r"|from (?=1/|\d)|(?:becomes?|turns? into|goes to|makes|gives) (?:how|what)"
    ),
    # Of the time that is set, once the filter is on: by any words, or by those for times alone.
    "filter_time.which": (
        r"(?:what|which) (?:exposure |shutter )?(?:time|speed|shutter|exposure)|how long|new time"
    ),
    "filter_time.exposed": r"how long|how many seconds",
}
