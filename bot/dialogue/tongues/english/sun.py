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
        r"|half (?:of it )?(?:is )?in (?:the )?sun"
        r"|(?:patches|spots|blobs|blotches|splotches|flecks|splashes) of"
        r" (?:bright |direct )?(?:sun\w*|light)"
        r"|sun(?:ny|lit|light)? (?:patches|spots|bits|blotches|splotches|flecks)"
        r"|(?:blotchy|splotchy|spotty) (?:sun\w*|light)"
    ),
    # It comes through, and there are patches of it.
    "sun.comes_through": r"(?:comes?|coming|came|breaks?|broke|is|s) (?:\w+ )?(?:through|out|in)",
    "sun.patches": (
        r"(?:bright|light|white|glaring|sunny) (?:patches|spots|blobs|blotches|splotches|flecks)"
    ),
    # It is on the glass; and what is left of the water lies in shade.
    "sun.on_glass": r"glass|lens|front element|filter",
    "sun.rest_dark": (
        r"(?:rest|others?|remainder)(?: (?:is|are|of|it|still|all|in|the))* (?:shade|shadow|dark)"
    ),
    # What to do meanwhile.
    "sun.what_now": (r"what (?:(?:should|shall|do|can) (?:i|we) do|now|to do)(?: now| then)?"),
    # The even light is back.
    "sun.gone": (
        r"suns? (?:is |has |s )?(?:\w+ )?(?:gone|away|behind)|no (?:more )?sun|clouded over"
        r"|(?:all |light )?even again|in (?:the )?shade again"
    ),
}
