"""English words for a filter that is before the lens now, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filters_on.both": r"both(?: of them| filters?| the filters?)?|(?:the |my )?two filters",
    "filters_on.polariser": r"(?:circular )?polari[sz](?:er|or|ing filter)|pola|pol|cpl",
    "filters_on.nd": (
        r"(?:dark |black |clip ?on |strong )*(?:nds?|gr[ea]y)(?: filters?)?"
        r"|(?:dark|black|clip ?on|strong)(?: clip ?on)? (?:filters?|one|thing|glass)|stopper"
    ),
    "filters_on.filter": r"filters?",
    "filters_on.it": r"it|its|that|thats",
    # May be said of anything that is on.
    "filters_on.anything": r"(?:its|it is|it s|thats|that is)(?: now| already| back)* on(?: now)?",
    "filters_on.is_on": (
        r"(?:is |s |are |now |both |already |still |back )*(?:(?:screwed|clipped|put) )?"
        r"(?:on|mounted|fitted|attached|in place)(?: it| the lens| my lens| the phone)?"
    ),
    "filters_on.put": (
        r"put(?:ting)?(?: back)?|screw(?:ed|ing)|clip(?:ped|ping)|mount(?:ed|ing)|fitted|got|have"
        r"|stuck|slid"
    ),
    "filters_on.fitted": (
        r"(?:put(?:ting)?|screw(?:ed|ing)|clip(?:ped|ping)) on|mounted|fitted|added"
    ),
    "filters_on.on": r"(?:back )?on(?: it| now| the lens| my lens| the phone)*|in front(?: now)?",
    "filters_on.all_along": (
        r"since|all along|already|(?:the )?whole time|all the time|from the (?:start|beginning)"
        r"|count it twice|counted"
    ),
    "filters_on.with": r"with|w|using|and with",
    "filters_on.small": (
        r"i|im|ive|ill|we|just|now|ok|okay|so|well|right|yes|yep|done|already|have|the|my|a|an"
        r"|there|this time|again|and|with|n|then|but|got|here|cousins|that"
    ),
}
