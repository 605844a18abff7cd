"""English words of sun that comes and goes, or lies on a part, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "sun.sun": r"suns?|sunlight|sunshine|sunny",
    # It comes and goes.
    "sun.by_turns": (
        r"(?:coming|comes?|popping|pops|in|goes|going|dipping|on) and (?:going|goes?|out|in|coming"
        r"|off)|on and off|off and on|by turns|(?:every )?now and then|every few minutes|spells"
        r"|sun and (?:shade|clouds?)|shade and sun|in and out|patchy"
    ),
    # It lies on a part, or in patches.
    "sun.on_part": (
        r"(?:hits?|hitting|lights?|lighting|strikes?|striking|catch\w*|suns? (?:is |s )?on)"
        r" (?:only |just )?(?:the |its |a )?"
        r"(?:top|upper|left|right|lower|bottom|one side|part|half)"
        r"|(?:top|upper|lower|bottom|left|right|half|part)(?: \w+){0,3} in (?:the |full )?sun"
        r"|half (?:of it )?(?:is )?in (?:the )?sun|(?:patches|spots|blobs) of sun\w*"
        r"|sun(?:ny|lit|light)? (?:patches|spots|bits)"
    ),
    # It comes through, and there are patches of it.
    "sun.comes_through": r"(?:comes?|coming|came|breaks?|broke|is|s) (?:\w+ )?(?:through|out)",
    "sun.patches": r"(?:bright|light|white|glaring) (?:patches|spots|blobs)",
    # The even light is back.
    "sun.gone": (
        r"suns? (?:is |has |s )?(?:\w+ )?(?:gone|away|behind)|no (?:more )?sun|clouded over"
        r"|(?:all |light )?even again|in (?:the )?shade again"
    ),
}
