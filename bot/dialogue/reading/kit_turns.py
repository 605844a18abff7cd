"""Turns of speech about kit that is along, put back or left, and about steps to and fro."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.unit_words import LENGTH

_STRENGTH: Final = r"(?:\d{1,2}|two|three|four|five|six|eight|ten)"
_PRIME: Final = r"(14|20|21|24|28|35|40|50|55|56|85|90|100|105|135)"
_LENGTH_SAID: Final = rf"(?:about |another |maybe )?\d+(?:\.\d+)? ?{LENGTH}"

#: A wording, and what stands for it.
KIT_TURNS: Final = (
    #: "Only brought the 50 today".
    (
        (
            rf"\b((?:only|just) (?:brought|have|got|packed|carrying|took|carry)|brought (?:only"
            rf"|just))"
            rf" (?:the |my |a )?{_PRIME}(?= ?(?:$|[,.;]|today|with me|this time|along\b))"
        ),
        r"\1 a \2 mm prime",
    ),
    #: "ND kit is 2, 4 and 8 stops", "one nd only, its a 64".
    (
        r"\bnds? (?:kit|set|case|wallet|pouch)(?:'s| is| has| holds| with| of|:)*(?= ?\d)",
        "own nds: ",
    ),
    (r"(?<=\bown nds: )( ?\d{1,2}) (?=\d{1,2} and \d)", r"\1, "),
    (
        (
            r"\b(?:one|1|only|single|just one) nd(?: only| filter)*,? (?:and )?(?:it's|its|that's"
            r"|thats)"
            r" (?:an? |the )?(2|4|8|16|32|64|400|500|1000)\b(?! ?-?(?:stop|mm))"
        ),
        r"own nd\1",
    ),
    #: "The filter is on, 6 stops".
    (
        (
            r"\b(?:filter|nd|it)(?:'s| is)? (?:now )?on(?: now)?[,;:] "
            r"(?:it's |its |it is |an? |the )*"
            r"(\d{1,2})[ -]stops?\b"
        ),
        r"\1 stop nd on",
    ),
    #: "Six stopper's back in the pouch".
    (
        (
            rf"\b{_STRENGTH}[ -]?stop(?:per)?(?: nd| filter)?(?:'s| is| goes| went)? back in"
            r" (?:the|its|my) \w+"
        ),
        "nd off",
    ),
    #: "Between me and the fall it's maybe 35 m of pool".
    (
        (
            r"\bbetween (?:me|us) and (?:the )?(?:water)?falls?"
            r"(?:,? (?:it's|its|it is|there's|there is|is))?"
        ),
        "distance to the fall",
    ),
    #: "80 yards across the valley".
    (
        (
            rf"(\d ?{LENGTH}) across (?:the|this|a|that) (?:\w+ )?"
            r"(?:valley|gorge|canyon|ravine|pool|lake|river)(?= (?:to|from)\b|\W*$|[,.;])"
        ),
        r"\1 away",
    ),
    #: "I've backed up 5 m so 17 m now".
    (
        (
            r"\b(?:backed (?:up|off)|moved (?:up|back|closer|in)|stepped back|(?:went|walked|gone)"
            r" (?:back"
            rf"|closer|up)) (?:by )?{_LENGTH_SAID},? (?:so |and |that's |thats |now |it's |i'm"
            rf" )*(?=\d)"
        ),
        "moved closer, ",
    ),
    #: "Car's 800 m away".
    (
        (
            r"\b(?:car|van|truck|bus|trailhead)(?:'s| is)?"
            rf" ((?:about |only |just |maybe )*\d+(?:\.\d+)? ?(?:km|miles?|mi|{LENGTH})) (?:away"
            rf"|off|from here)\b"
        ),
        r"\1 walk out",
    ),
    (r"\b(mile|km|kilomet(?:er|re)) n (?=an? (?:half|quarter)\b)", r"\1 and "),
)
