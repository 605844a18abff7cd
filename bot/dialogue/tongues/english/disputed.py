"""English words by which somebody disputes settings of the bot, or holds a sum against them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "disputed.disputes": (
        r"why|how come|instead of|rather than|jump\w*|by my (?:sums?|reckoning|maths?|count)"
        r"|that is way|where does|how do you (?:justify|get)"
    ),
    # Who has reckoned themselves.
    "disputed.own_sum": r"by my (?:sums?|reckoning|maths?|count)",
    # Between settings and those that they come to.
    "disputed.makes": r"makes|gives|is|are|equals|becomes|comes to|means|would be|should be",
}
