"""English words: light that has changed, and not the picture of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "light_changed.place": (
        r"it|everything|(?:the )?(?:light|sky|place|scene|gorge|valley|whole place)|here|things|all"
    ),
    "light_changed.becomes": (
        r"(?:s|re|is|are|has|have|got|gets|get|looks?|went|became|keeps|feels|all|been|getting"
        r"|gotten"
        r"|become|becoming|gone|going|turned|turning|growing|now|really|much|a|good|great|deal"
        r"|bit|lot"
        r"|little|tad|way|by|about|roughly|maybe|just|suddenly|out|in|even|quite|noticeably|stops?"
        r"|half|one|two|three|four|five|six|thirds?|quarters?|and|of|again|meanwhile|\d[\d/.]*)"
    ),
    "light_changed.darker": (r"darker|dimmer|gloomier|duller|murkier|less bright"),
    "light_changed.brighter": (r"brighter|lighter|less gloomy|less dark"),
    "light_changed.less": (
        r"(?:the )?lights? (?:has |is |just )*(?:dropp\w+|drops?|fell|fall\w*|fad\w+|gone down"
        r"|going down"
        r"|went down|dying|dimm\w+)|less light (?:now|than)|lost (?:\w+ ){0,4}?light"
    ),
    "light_changed.more": (
        r"(?:the )?light (?:has |is |just )*(?:come up|came up|coming up|picked up|risen|rose"
        r"|gone up)"
        r"|more light now"
    ),
    "light_changed.since": (
        r"now|meanwhile|since|got|gets|getting|gotten|became|become|becoming|gone|going|went|turned"
        r"|turning|growing|than (?:before|earlier)|suddenly|clouds?|outside|out here|in here"
        r"|light|sky"
        r"|everything|here|again"
    ),
    "light_changed.picture": (
        r"frames?|pictures?|photos?|shots?|images?|screen|display|files?|exposures?|histogram"
        r"|edges?"
        r"|corners?|left|right|sides?|top|bottom|rocks?|water|too|next|make|want|should|could|if"
        r"|would"
    ),
    # Through these it is darker, whatever the light.
    "light_changed.filter": r"filters?|nds?|polari\w+|cpl|lens",
}
