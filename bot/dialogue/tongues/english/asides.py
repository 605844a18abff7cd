"""English words of goodbyes, pauses, praise, assent and thanks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WE_ARE: Final = r"(?:i'?m|i am|we're|we are|that'?s me|that is me|us)"
_CAR: Final = r"(?:car|van|bus|hotel|hut|camp|tent|parking|car ?park|trailhead|hostel|lodge|truck)"
_DAY: Final = r"(?:for (?:today|the day|tonight|now)|here|then|with it)"
_WE_WILL: Final = r"(?:i'?ll|i will|we'll|we will|i'?m|i am|we're|we are|let'?s)"
_MEAL: Final = (
    r"(?:sandwich|lunch|snack|tea|coffee|break|bite|picnic|breakfast|drink|brew|rest|beer|nap"
    r"|breather|soup)"
)
_GOOD: Final = (
    r"(?:good|great|lovely|nice|beautiful|perfect|wonderful|gorgeous|amazing|fine|spot on|super"
    r"|brilliant|stunning|fantastic|awesome|smooth enough|just right|much nicer)"
)
_FINE_WATER: Final = r"(?:threads?|lines?|strands?|texture|structure|veins|ribbons)"

WORDS: Final[Mapping[str, str]] = {
    "asides.bye": (
        r"(?:good ?)?bye(?:[ -]?bye)?|farewell|cheerio|ciao|good ?night|night night|^(?:nite"
        r"|night)\W*$|take care"
        r"|so long|see (?:you|ya)(?: later| tomorrow| soon| then)?|(?:un)?till? (?:tomorrow"
        r"|next time)|have a (?:good|nice|lovely) (?:day|evening|night|one)"
        rf"|{_WE_ARE} (?:all )?(?:done|finished|through) {_DAY}|(?:done|enough) for (?:today|the"
        rf" day)"
        r"|call(?:ed|ing)? it (?:a day|quits)|off to bed|(?:going|time) (?:to|for) bed"
        rf"|(?:back|off|down|over) to (?:the|my|our) {_CAR}(?! to\b)"
        r"|(?:heading|going|driving|walking|off|on (?:my|our) way) (?:back )?home"
        rf"|{_WE_ARE} (?:leaving|off now|packing up|heading (?:out|back|home|down)|going now)"
        rf"|{_WE_ARE} on (?:my|our) way (?:home|back|down|out)"
        r"|(?:packing|all packed) (?:it )?(?:all )?(?:up|in)(?: now)?|(?:gotta|got to|have to|must"
        r"|time to|better) (?:go|leave|run|head (?:back|home|out))(?: now| home|$)|(?:that'?s"
        r"|that is|this is) (?:all|it|everything)(?: (?:for (?:today|now|tonight)|from me|then)|\W"
        r"|$)"
    ),
    "asides.wait": (
        rf"{_WE_WILL}(?: (?:just|going to|gonna|then|still|here))* wait(?:ing)?"
        r"|^wait(?:ing)? (?:for|till|until)\b"
        r"|(?:one|just a|give me a|gimme a|wait a|a) (?:sec|second|moment|minute|min|mo|tick)$"
        r"|(?:be )?right back|brb|back in (?:a|an|\d+|five|ten|twenty|half)"
        rf"|(?:have|having|eat|eating|grab|take|taking|make|drink) (?:a |an |my |some |our |the )?"
        rf"(?:quick |short |little )?{_MEAL}"
        r"|(?:sit|rest)(?:ting|ing)?(?: down| here)?(?: for)? a (?:bit|while)"
    ),
    "asides.no_wait": r"(?:don't|do not|can't|cannot|won't|no time to|not) (?:\w+ )*wait",
    "asides.praise": (
        r"(?:better|nicer)(?: now| already)?(?! than| on| if| to)"
        rf"|looks? (?:\w+ ){{0,2}}{_GOOD}|looking {_GOOD}"
        rf"|(?:that|it|this|water|picture|shot|frame|one)(?:'s| is| was| came out)? (?:\w+ ){{0,2}}"
        rf"{_GOOD}(?= now|\W|$)"
        r"|lovely|gorgeous|beautiful|wonderful|brilliant|perfect|wow|stunning|fantastic|bingo|yay"
        r"|hurray|hooray|nailed it|spot on|woohoo|excellent|superb|(?:that |it |this )?(?:worked"
        r"|works|did it(?! (?:again|now|once|and|but)\b)|did the trick|helped)(?: well| now)?"
        r"(?=\W|$)|i (?:really |do )?(?:love"
        r"|like) (?:it|this|that|how|the (?:water|look|way))"
        rf"|(?:can|could) (?:now |really )?(?:see|make out) (?:the |some |single )*{_FINE_WATER}"
        rf"|(?:has|have|having|are|shows?|got|get) (?:now |the |some |real |fine |its"
        rf" )*{_FINE_WATER}"
        r"(?: now| in it| at last)"
        rf"|{_FINE_WATER} (?:are |is |really )*(?:there|visible|back)(?: now)?"
        r"|cleared up|(?:all |it's |is )clear(?: again| now)|dry again"
        r"|(?:happy|pleased|satisfied) with (?:it|that|this)|just what i (?:wanted|was after)"
        r"|(?:doesn't|does not|don't|no longer|stopped) (?:shin|glar|glint)\w*(?: any ?more)?"
    ),
    # What takes praise back, or wants something else beside it.
    "asides.not_good": (
        r"not|isn't|aren't|wasn't|doesn't look|don't (?:like|look)|no|nothing|never"
        r"|but|too|still|worse|except|however|only|although|though|would|could be|should be|if"
        r"|wish|want|need|than"
    ),
    "asides.ok": (
        r"ok(?:ay)?|k|alright|all right|fine|good|right|sure|understood|got it|gotcha|will do"
        r"|makes sense|i see|i get it|i understand|fair enough|good idea|good plan|great|cool|nice"
        r"|good to know|that figures|roger|copy that|on it|ah|aha|oh|so|then|well|yes|yeah|thanks"
        r"|linn|(?:the )?ladder(?:'s| is)? (?:done|shot|taken|complete)|(?:did|shot"
        r"|took) the ladder|(?:i |i'?ve |just )*(?:took|taken|shot|made) (?:it|one|that|(?:the"
        r"|a) (?:frame|shot|picture))|taken|done|i did(?: it| that)?|i'?ll (?:do|try) (?:that|it"
        r"|so)|doing (?:that|it)(?: now)?|trying (?:that|it)(?: now)?"
    ),
    "asides.stays": (
        r"(?:ok(?:ay)?|fine|alright|all right|good|right)\W+(?:then )?(?:i|we|i'?ll|we'll|i will"
        r"|we will) (?:then )?(?:stay|keep|do|try|leave|listen|stop|go with|use|take)"
    ),
    "asides.thanks": r"thank\w*|thx|cheers",
    # The filter, without its name.
    "asides.took_off": (
        r"(?:took|taken|take|taking|screwed) (?:it|that|the filter|mine) off"
        r"|(?:took|taken|taking|screwed) off (?:it|that|the filter)"
        r"|^(?:\W*(?:ok(?:ay)?|so|well|now|yes)\W+)*(?:it|that|the filter)(?:'s| is) (?:now )?off"
        r"(?: now)?$"
    ),
}
