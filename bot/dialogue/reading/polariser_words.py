"""The words for a polariser: missing, put away, off, on, or only asked about."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.inventory import GONE, ND, NOT_HERE, POLARISER
from bot.dialogue.reading.phrases import any_of

SAID: Final = any_of(POLARISER)
#: "It's not in the pocket, so no polariser": what the message comes to.
NONE_HERE: Final = any_of(
    rf"(?:so|then|hence|means|meaning|nope|nobody has|call it) (?:a )?no {POLARISER}\b(?! on\b)",
    rf"no {POLARISER} (?:with me|with us|here|today|at all|in the bag|any ?more|of mine|then"
    rf"|sadly)",
)
#: "Chucked it back in the bag": put away, so owned.
PUT_AWAY: Final = any_of(
    rf"(?:put|stuck|chucked|popped|stashed|slipped|tucked|threw|dropped|stowed|shoved|stuffed)\b"
    rf"[^,;.]{{0,12}}\b{POLARISER}\b[^,;.]{{0,12}}\b(?:away|back(?= in|\W*$|,)"
    r"|in(?:to)? (?:the|my|its|a) (?!front)\w+)",
)
LACKS: Final = any_of(
    rf"{GONE}\b[^,;.]{{0,12}}\b{POLARISER}",
    rf"{POLARISER}\b[^,;.]{{0,15}}\b{GONE}",
    rf"{POLARISER} (?:doesn't|does not|won't|didn't) fit",
    rf"{POLARISER}(?:'s| is| has)? (?:gone|missing|vanished|cracked|lost)(?! (?:from|dark|black"
    r"|off|in))",
    rf"(?:can't|cannot|couldn't) find\b[^,;.]{{0,12}}\b{POLARISER}",
    rf"(?:left|forgot|forgotten)\b[^,;.]{{0,20}}\b{POLARISER}",
    rf"lost (?:my|the|our|a|that) (?:\w+ )?{POLARISER}",
    rf"{POLARISER}\b[^,;.]{{0,15}}\b{NOT_HERE}",
)
OFF: Final = any_of(
    rf"{POLARISER}(?:'s)? (?:is |now |comes? |came |has come )?(?:off|removed|out)",
    rf"(?:no|without) {POLARISER} on",
    rf"without (?:the|my) {POLARISER}",
    rf"{POLARISER},? (?:is |it's |its |but )*not on",
    rf"{POLARISER},? (?:but )?(?:it )?(?:isn't|ain't|wasn't) on",
    r"(?:took|take|taken|taking|pulled|removed|unscrew\w*|undid|detached|ditched|slid"
    rf"|slipped off)\b[^,;.]{{0,12}}\b{POLARISER}",
    rf"dropped (?:the|my) {POLARISER}(?=\W*$|[,;.!])",
    rf"{POLARISER}\b[^,;.]{{0,12}}\bin (?:the|my|its) (?:\w+ )?(?:bag|pocket|case|pouch|box|sack)",
    rf"{POLARISER}\b[^.;?]{{0,30}}\b(?:took|taken|take|pulled) it off",
    rf"{POLARISER}\b[^.]{{0,25}}\b(?:haven't|not|didn't) (?:put|screw\w*) it on",
    rf"(?:haven't|not|didn't|hasn't|never) (?:yet )?(?:put|screwed|fitted|mounted|used|turned)"
    rf" (?:the|my|a) {POLARISER}(?: on| yet)",
    rf"{POLARISER}(?:'s|s)? (?:back )?in (?:its|the|my) (?:\w+ )?(?:bag|pocket|case|pouch|box"
    r"|sack|rucksack)",
)
#: "No polariser on this one" leaves open whether there is one.
NONE_ON: Final = any_of(rf"no {POLARISER} on")
ON: Final = any_of(
    rf"{POLARISER}(?:'s)? (?:(?:is|are|has been|'s been|been|both|still|now|filter|already"
    rf"|always|stuck|stays?|staying"
    r"|remains?|goes|back|was left|left) )*"
    r"(?:on(?! wide| (?:the|my|an)? ?other\b)|mounted|turned|rotated|(?:screwed|clipped|twisted"
    r"|fitted|put) on|fitted|attached|in place|at (?:full"
    r"|max|half))",
    rf"\bon\b[^;.]{{0,20}},? (?:only|just) (?:the |my )?{POLARISER}(?=$|[,.;!])",
    rf"{POLARISER}\?+ (?:\w+ ){{0,3}}(?:it's|its|is) on(?! (?:or|the|my)\b)",
    rf"{POLARISER} and (?:the |my )?{ND} (?:are |is )?(?:both )?on(?! (?:or|the|my)\b)",
    rf"(?:with|using|through|turned|have) (?:the|my) {POLARISER}\b(?! (?:off|in the))",
    rf"(?:put|screwed|mounted|added|using|stacked|stacking)\b[^,;.]{{0,10}}\b{POLARISER}",
    rf"\bon\b[^;.]{{0,30}}, (?:but )?(?:the |my )?{POLARISER} is(?=$|[,;.!])",
    rf"{POLARISER},? (?:(?:yes|yep|yeah|ok|okay|and|i|i've|have|already|also),? )*"
    r"(?:turned|rotated|mounted|fitted|put) (?:it|that)(?! (?:off|away|back|down|in)\b)",
    rf"{POLARISER} (?:and|plus|with|\+) (?:the |my |an? )?[\w.]+(?:[ -]stops?)?(?: nd| filter)?"
    r" (?:are |is )?(?:both |now |still )+on\b",
)
ASKS_FOR_IT: Final = any_of(rf"(?:need|buy|get|worth|is|what's)(?: a| the)? {POLARISER}")
#: "…, polariser?", "polariser first or nd first?": asked, not told.
ASKED_ALONE: Final = re.compile(
    rf"(?:^|[,.;!?] ?)(?:an? |the |with (?:a |the )?)?{POLARISER}(?! (?:\w+ )*(?:on|off|is|stays"
    r"|turned|mounted|first))(?: \w+){0,4}\?\W*$"
)
#: Beside settings "with a polariser", or "w/ CPL", says that it was on.
WITH: Final = re.compile(rf"(?:\b(?:with|w/?|and|plus)|\+) ?(?:a |the |my )?\b{POLARISER}\b")
