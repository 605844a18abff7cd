"""English words by which somebody asks of the bot's own numbers."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Asks where a number comes from, or doubts it.
    "own_asked.whence": (
        r"why(?! not)|how come|how (?:did|do|does|is|are|was) (?:you|that|this|it)"
        r"|where (?:does|did|do|is|are|have)|where'?s|from where|based on|come from|explain"
        r"|(?:can't|cannot|can not) be(?: right| true)?|(?:doesn't|doesnt|does not|don't) add up"
        r"|i (?:get|got|make it|make that|come to|calculate|worked out)(?= (?:\w+ )?[\d.])"
        r"|(?:are )?you sure"
        r"|sure about|how so|says who"
    ),
    # Right in front of a number: "why 20?", "why did you say f/13".
    "own_asked.why": (
        r"why|how come|where (?:does|did|do)|where'?s|how did you get|how do you get|how so"
    ),
    "own_asked.between": (
        r"the|that|this|your|it|is|it's|now|only|just|such|did|do|does|you|say|said|give|gave"
        r"|choose|chose|take|took|pick|picked|want|set|at|to|go|for|a|an|and|not a"
    ),
    # Between a value and the one that was not chosen.
    "own_asked.not": r"not|instead of|rather than",
    # Asks for what was taken.
    "own_asked.what": r"what|which|how (?:tall|high|far|fast|big|wide|near|close|did)|where|whose",
    # What is asked about that the bot reckons from.
    "own_asked.height": r"(?:how )?tall|(?:how )?high|height|how big|fall",
    "own_asked.distance": r"how far|distance|far away|standing|where (?:i am|i'm|am i)",
    "own_asked.focal": r"lens|focal(?: length)?|mm|length",
    "own_asked.speed": r"(?:water )?speed|how fast|velocity",
    "own_asked.light": r"light|ev|brightness",
    "own_asked.nearest": r"nearest|boulder|rock|foreground",
    "own_asked.format": r"sensor|format|camera|crop",
    "own_asked.all": r"numbers?|figures?|values?|assumptions?|scene|basis",
    # Points at a number that was said.
    "own_asked.pointed": r"that|those|your|this|(?:you|u) (?:said|told me|gave me|wrote)",
    # Of the bot's reckoning, whatever of it: "what did you assume", "working that from".
    "own_asked.reckons": (
        r"(?:did|have|had|d'|ve) (?:you|u|ya)(?: \w+){0,2}? (?:assum\w+|used?|taken?|got|worked?"
        r"|reckon(?:ed)?|calculated?|went (?:by|off|on)|go(?:ne)? (?:by|off|on)|based?|counted?"
        r"|put)"
        r"|(?:(?:are|were|r) (?:you|u)|you|u|you're|youre)(?: are| were| now)? (?:assuming|using"
        r"|taking|working|reckoning|calculating|going (?:by|off|on)|basing|counting|putting)"
        r"|do (?:you|u) (?:assume|calculate with|reckon with|work with|go (?:by|off))"
        r"|do (?:you|u) (?:think|believe|suppose)(?= (?:i am|i'm|im|i stand|it is|it's|this fall"
        r"|the fall|that fall))"
        r"|based on|working that|worked from|assumed (?:here|there|for)"
        r"|(?:numbers?|figures?|values?|that|this|those) (?:come|comes|coming) from"
    ),
}
