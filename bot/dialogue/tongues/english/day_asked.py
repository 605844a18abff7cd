"""English words of what is asked of a day's hours: when to start, when to leave the water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # When to start, asked at home; words of the way back ask when to turn round.
    "day_asked.start": (
        r"(?:(?:what|which) (?:hour|time)|when|how (?:early|late|soon))\b(?:(?!"
        r"\b(?:turn|back|home|sun\w*)\b)[^?.;!]){0,40}?"
        r"\b(?:leave|start|set (?:off|out)|head (?:out|up|in|off)|get going|go|begin|be there"
        r"|arrive"
        r"|get there|hit the trail)(?: (?:then|tomorrow|out|walking|hiking|the (?:walk|hike)))*"
        r"(?= ?(?:[?.,;!]|$|to\b|for\b|if\b|so\b|from\b|and\b))"
    ),
    # Whether a start is good, or another would be better.
    "day_asked.start_good": (
        r"(?:is|would|will|does|sound) (?:that|it|this|\d[\d:.]*(?: ?[ap]m)?)(?: start)?(?: be)? "
        r"(?:a )?(?:good|fine|ok(?:ay)?|all ?right|right|work|early enough|soon enough"
        r"|late enough|too (?:early|late))"
        r"|(?:go|start|leave|set off|head out|begin|be|come)(?: out| there)? (?:a bit |much "
        r"|even )?(?:later|earlier)"
    ),
    # When to leave the water, or how long is left.
    "day_asked.leave": (
        r"(?:when|what time|how late|by when|latest)\b[^?.;!]{0,30}?\b(?:i|we)\b[^?.;!]{0,20}?"
        r"\b(?:(?:be )?walking|walk (?:back|out|again)|leave|set (?:off|out)|head (?:back|out"
        r"|off|down|home)|turn(?:ing)? "
        r"(?:back|around|round)|start (?:back|walking|down)|go (?:back|home)"
        r"|pack(?:ing)?(?: up)?|be off|get going|call it a day|wrap(?:ping)? up"
        r"|(?:stop|finish|quit)(?: (?:taking|shooting|photographing|with|now)\b| ?[?,]|$)"
        r"|get moving|go for)"
        r"|how (?:much time|long)(?: more)? (?:is there|do (?:i|we) have|have (?:i|we)(?: got)?"
        r"|left)\b"
        r"(?! (?:to|until the) )"
        r"|(?:time|minutes?) (?:is |are )?left(?: (?:before|until|till) (?:i|we|the gate))?(?= ?\?)"
        r"|(?<!no )time (?:to|i|we) (?:go|went|left|leave|be off|pack(?:ed)?(?: up)?"
        r"|turn(?:ed)? (?:back|around|round)|(?:head|start)(?:ed)? (?:back|home|out|off))"
        r"(?: (?:now|yet|then|already|soon))*(?= ?[?,])"
        r"|how (?:long|late) (?:can|may|could) (?:i|we) (?:still |even )?stay"
        r"|(?:am i|are we)(?: \w+)? (?:too )?late(?! for)|(?:am i|are we) running late"
        r"|(?:do|can|will) (?:i|we) (?:still )?(?:make|catch|get) (?:it to )?(?:the|my|our)"
        r" (?:\S+ )?(?:bus|train|ferry|boat|shuttle)"
    ),
    # "It's 2:20 now".
    "day_asked.it_is": r"it'?s|it is|(?:the )?time(?: now)? is|now(?: it'?s)?|right now(?: it'?s)?",
    "day_asked.about": r"about|around|already|just|nearly|now|gone|only|almost|like",
    "day_asked.now": r"now|already|o'? ?clock|right now|by my watch",
    # Signs for which one leaves at once.
    "day_asked.at_once": (
        r"ris(?:e|es|ing)|brown"
        r"|muddy(?! (?:path|trail|track|way|ground|boots|walk|bit|steps))|flood\w*"
        r"|surge|driftwood|debris|roar\w*|thunder\w*|lightning"
        r"|storm\w*|downpour|cloudburst"
    ),
    # Before an hour that is asked about alone.
    "day_asked.what_of": r"and|or|what about|how about|what if (?:i|we) (?:start|leave|go)(?: at)?",
}
