"""English words: parts of a reply after a fright that tell of nobody's trouble."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_WE: Final = r"(?:(?:we|i)(?:ve|d)?(?: (?:have|had|all|both|already|just|then))* )?"
_AT_ONCE: Final = (
    r"(?: (?:straight|right) away| at once| immediately| straight up| already| right then"
    r"| when you said(?: so)?| as you said| quickly| in time| now)*"
)

_NAME: Final = (
    r"(?!(?:it|its|that|this|these|those|there|here|nobody|noone|none|nothing|everything"
    r"|anything|something|all|both|some|most|much|stuff|things?|gear|kit|tripods?|cameras?|bags?"
    r"|phones?|hats?|caps?|gloves?|shoes?|boots?|socks?|filters?|lens|lenses|lunch|food|tea|time"
    r"|sight|signal|reception|track|count|balance|footing|contact|interest|way|path|patience"
    r"|water|and|or|quickly|already|right|straight|now|early|together|home|ones?|who|we|i)\b)\w+"
)

WORDS: Final[Mapping[str, str]] = {
    "aftermath.lead": r"and|so|but|ok|yes|yeah|phew|well|also|then|1|2",
    "aftermath.left": (
        rf"{_WE}(?:left|packed up|packed up and left|got out|got out of there|climbed up|walked up"
        rf"|went up|ran up|headed up|cleared out|drove off|turned back){_AT_ONCE}"
    ),
    "aftermath.view": (
        r"(?:from (?:up )?here )?(?:we|you|i|one) (?:can )?(?:still )?see the"
        r" (?:falls?|waterfall|water|creek|stream|river|gorge|valley)"
        r"(?: (?:from (?:up )?here|through the (?:trees|beeches|branches|leaves)|below|down there"
        r"|far below))*"
    ),
    # Somebody only would have liked to.
    "aftermath.keen": (
        r"(?:(?:she|he|they)(?:s|re)?(?: (?:is|are|was|were))? )?(?:just|only) (?:feels? like it"
        r"|felt like it|tempted|curious|keen|wants? to|wanted to)"
    ),
    "aftermath.wonders": (
        r"(?:(?:i am|im|we are|were|i|we) )?(?:just|only) (?:asking|ask|wonder(?:ing)?|curious)"
        r" (?:if|whether)"
    ),
    "aftermath.sun": (
        r"(?:now )?(?:the )?sun(?:s| is)? (?:now )?(?:coming|comes|came|breaking|breaks)"
        r" (?:out|through|in)(?: now)?"
        r"(?: and (?:it )?(?:is |s |stands |sits |shines )*(?:right |straight )?on the"
        r" (?:water|falls?|waterfall))?"
    ),
    "aftermath.next": r"(?:for |and )?(?:the )?next (?:time|trip|visit)",
    # Whether something is safe, asked behind a "no" to whether anybody is in danger.
    "aftermath.is_it_safe": (
        r"(?:is|isnt|would|could)(?: (?:it|that|this|be|there))+ (?:\w+ )?(?:dangerous|safe|risky)"
        r"|(?:can|could|may) (?:we|she|he|i|they)(?: (?:do it|do that|cross|go|try))?(?=$| [.,])"
    ),
    # Somebody who is not with them: by kin, or by a name, which is no thing and no how.
    "aftermath.without_somebody": (
        r"(?:(?:left|lost|leaving|losing)(?: behind)?"
        r" (?:(?:him|her|them)(?= (?:behind|there|down|up|in|at|on|by|out"
        r"|alone|and|but|for)\b| [.,]|$)|(?:my|our|the|his|her|a|one)"
        r" (?:\w+ )?(?:sons?|daughters?|kids?|child|children|boys?|girls?|wife|husband|partner|mum"
        r"|mom|dad|father|mother|brothers?|sisters?|friends?|mates?|nephews?|nieces?|uncle|aunt"
        r"|grand\w+|guide|baby|others?|man|woman|dog))\b(?!s? (?:tripod|camera|bag|gear|hat|phone))"
        r"|(?<!no )one (?:of us|person) (?:\w+ )?(?:left|lost)(?= behind| there| [.,]|$)"
        rf"|left {_NAME} (?:behind|(?:down |up |back |out )?there|in the (?:gorge|water"
        rf"|creek|river))"
        rf"|left behind {_NAME}(?= [.,]|$)|lost {_NAME}(?= [.,]|$)"
        rf"|{_NAME} (?:is|was|got|has been)(?: still)? (?:left behind|left there|lost))"
        r"(?! (?:at|in) (?:(?:the|our|my) )?(?:car|van|bus|hotel|home|house|hut|cafe)\b)"
        r"(?!.*(?<!not )(?<!nt )(?<!never )\b(?:found (?:him|her|them)|back with us)\b)"
    ),
    "aftermath.nothing_more": (
        r"for (?:the )?(?:\w+ )?(?:us|me|him|her|them|kids?|children|everybody|dog|son|daughter)"
        r"|there|here|now|then|though|tho|really|or not|to (?:do|try) (?:it|that|this)|to go|go"
    ),
    "aftermath.wet": (
        r"water|creek|stream|river|pool|ford|cross(?:ing)?|wad(?:e|ing)|stones?|rocks?|slabs?|logs?"
        r"|(?:other|far) side|get over|go over|paddl(?:e|ing)|swim\w*|jump\w*"
    ),
    "aftermath.shaken": (
        r"(?:just )?(?:my|our|her|his|the) (?:legs?|knees?)(?: (?:are|is))?(?: (?:still|just|a bit"
        r"|all))*"
        r" (?:shak(?:ing|y|e)|trembl(?:ing|e)|wobbl(?:y|ing|e)|weak|like jelly|jelly)"
        r"(?: (?:though|still|a bit|a little|only|now|thats all))*"
        r"|(?:(?:i am|im|we are|were) )?(?:just |only |a bit |a little |still )*(?:shaky|shaken)"
        r"(?: (?:though|still|a bit|a little|only|now|thats all))*"
    ),
    # What is asked of another day, or of a shop: no picture of now.
    "aftermath.later": (
        r"next (?:time|trip|visit|weekend|year)|another (?:day|time)|(?:should|shall|must|can|do)"
        r" (?:i|we) (?:\w+ )?(?:buy|get|order|purchase)|to buy|(?:if )?i (?:buy|can afford)"
    ),
    # Where people stand who are away from the water.
    "aftermath.from_here": r"from (?:up )?(?:here|there)|up here",
}
