"""English words by which the speed of the water that the bot reckons with is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "water_speed.asked": (
        r"(?:water|flow|fall(?:ing)?) (?:speed|velocity)"
        r"|(?:speed|velocity) (?:of|has) (?:the|this|that)"
        r" (?:falling )?(?:water|fall|flow)"
        r"|how (?:fast|quick(?:ly)?) (?:is|does|do (?:you|u) \w+|did (?:you|u) \w+|will|would)"
        r"(?: that)? (?:the |this |that |my )?(?:falling )?water"
        r"(?! (?:rise|rising|coming up|come up|going up|getting|get))"
    ),
    # Of people in it.
    "water_speed.of_people": r"safe\w*|danger\w*|wad\w+|cross\w*|stand|swim\w*|strong",
}
