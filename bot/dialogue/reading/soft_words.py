"""The many words for softness: which part of a frame is out of focus or blurred."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.phrases import any_of

_NEAR_PART: Final = (
    r"(?:(?:rocks?|stones?|boulders?|pebbles?|ferns?|logs?|moss|stuff|things?|bits?|roots?|plants?"
    r"|grass|ledges?) (?:(?:that's|thats|that is|that are|which are|right|just|very) )?(?:close"
    r"|near"
    r"|nearest|next|beside|by|under|around)(?: to| by)? (?:me|us|my feet|the (?:camera|lens"
    r"|tripod))"
    r"|what(?:'s|s| is) (?:close|near|nearest)|(?:bottom|lower) (?:third|edge|part)"
    r"|foreground|front(?! (?:glass|element|lens))|near(?:est)? \w+|closest \w+|\w+ (?:at"
    r"|by) my feet|(?:close"
    r"|near) (?:stuff|things|bits)|stuff (?:up close|in front)"
    r"|(?:rocks?|stones?|boulders?|logs?|moss) in front(?: of me)?|first (?:rock|stone|boulder)"
    r"|bottom(?: of the (?:frame|picture))?|near end|close by)"
)
_FAR_PART: Final = (
    r"(?:back(?:ground)?|far(?: \w+)?|distance|(?:water)?falls?(?: itself)?|rear|back wall"
    r"|(?:trees?|woods?|cliffs?|rocks?|wall|hills?|stuff|things|ferns|bushes) (?:behind|(?:at"
    r"|in) the"
    r" (?:very |far )?(?:back|rear|distance|background))|distant \w+|top of the (?:water)?fall"
    r"|corners)"
)
#: The lower corners hold the foreground, all others what lies far.
LOW_CORNERS: Final = re.compile(r"\b(?:bottom|lower)(?: left| right)? corners?\b")
_ALL_PART: Final = (
    r"(?:everything|all(?: of it)?|it all|whole \w+|entire \w+"
    r"|the (?:picture|frame|photo|image|shot)|pictures?|photos?|shots?|it's|its|it is|overall)"
)
_SOFT_FRAME: Final = (
    r"(?:soft|blurr?y|blurred|out of focus|unsharp|(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp)"
    r"|fuzzy|shaky|shaken|(?:not|isn't|aren't|is not|are not|never|n't) (?:\w+ )?in focus|unclear"
    r"|smudgy|woolly|defocus\w*|(?:doesn't|don't|does not|do not) (?:look|seem|come out) (?:\w+ )?"
    r"(?:sharp|crisp)|lacks? sharpness|(?:never|don't|doesn't|didn't) (?:come|comes"
    r"|came) out (?:sharp|crisp)|bleary|no sharpness)"
)
#: A mushy rock is soft, a mushy frame of water has lost its texture.
SOFT: Final = rf"(?:{_SOFT_FRAME}|mushy)"
#: "Soft light in the corners" is no complaint.
_SOFT_AT: Final = rf"{SOFT}(?: (?!light|shadows?|vignett)\w+)? (?:at|in|on|towards)"
#: Between a part and its fault; "the corners are not soft" is no fault.
_FILL: Final = r"(?:\s+(?!(?:and|but|no|not|never|\w+n't)\b)[\w']+){0,4}?\s+"
_CLAUSE_ENDS: Final = r"(?=\W*$|[,.;!?])"
SOFTNESS: Final = (
    (
        Symptom.SOFT_NEAR,
        any_of(
            rf"{_NEAR_PART}\b(?:'s)?(?:{_FILL}|\s+){SOFT}",
            rf"(?:{_SOFT_AT}|{SOFT} near) (?:the )?{_NEAR_PART}",
            rf"{SOFT} {_NEAR_PART}",
            rf"only (?:the )?{_FAR_PART} (?:is|are|was|were|came out) (?:sharp|crisp|in focus)",
            rf"(?:sharp|crisp)\b[^.;]{{0,12}}[,.;]? (?:but |and )?(?:the |my )?{_NEAR_PART}"
            rf" (?:isn't|is not|not|aren't|are not){_CLAUSE_ENDS}",
        ),
    ),
    (
        Symptom.SOFT_FAR,
        any_of(
            rf"{_FAR_PART}\b(?:'s)?(?:{_FILL}|\s+){SOFT}",
            rf"{_SOFT_AT} (?:(?:the|all|both|top|upper) )*{_FAR_PART}",
            rf"{SOFT} {_FAR_PART}",
            rf"only (?:the )?{_NEAR_PART} (?:is|are|was|were|came out) (?:sharp|crisp|in focus)",
            rf"(?:sharp|crisp)\b[^.;]{{0,12}}[,.;]? (?:but |and )?(?:the |my )?{_FAR_PART}"
            rf"(?: (?:at the back|behind))? (?:isn't|is not|not|aren't|are not){_CLAUSE_ENDS}",
        ),
    ),
    (
        Symptom.SOFT_ALL,
        any_of(
            rf"{_ALL_PART}\b(?:'s)?(?:{_FILL}|\s+){_SOFT_FRAME}",
            rf"{SOFT} (?:all over|everywhere|overall|everything)",
            rf"(?:the |my |all )*(?:rocks|stones|boulders|banks?|bank and rocks)(?: all| also"
            rf"| both)*"
            rf"(?: look| looks| are| is| came out| come out| seem)(?: all| a bit| a little"
            rf"| quite| so"
            rf"| kinda| kind of| really| too| very)* {SOFT}",
            r"(?:every|each|all (?:my|the|of (?:my|the))) (?:single )?(?:shots?|frames?|pictures?"
            r"|pics?"
            rf"|photos?|images?|one)(?: \w+){{0,3}} {_SOFT_FRAME}",
            r"(?:can't|cannot|couldn't|can not|never) get (?:a |an |any |one |it "
            r"|anything )?(?:\w+ )?sharp",
            r"not (?:a |one )?(?:single )?sharp (?:shot|frame|picture|pic|photo|one)",
            r"motion blur(?! (?:in|of|on) the (?:water|leaves|fall|foam))",
            r"nothing (?:comes|came|looks|is coming) out (?:\w+ )?(?:sharp|crisp|in focus)",
            r"(?:camera|see|got|is|some) ?shake|tripod(?:'s| is| was)? (?:\w+ )?(?:shaky|wobbl\w+)",
            r"nothing(?: in (?:it|there|the (?:frame|picture|shot)))?(?: is|'s)? (?:\w+ )?sharp"
            r"|sharp nowhere|(?:double|doubled|ghost) (?:edges|outlines)(?: everywhere| all over)?",
            r"(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp) (?:anywhere|at all)",
            r"(?:blurr?y|unsharp|out of focus|fuzzy) (?:shots?|pictures?|photos?|frames?|images?)",
        ),
    ),
)
