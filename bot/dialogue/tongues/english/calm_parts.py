"""English words: parts of a message that sound of the danger that they deny."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_IT: Final = (
    r"(?:(?:the |this |that |a )?(?:water|stream|creek|river|beck|brook|level|it)s? (?:level )?)"
)
_WATER: Final = (
    r"(?:(?:the |this |that )?(?:water|stream|creek|river|beck|brook|level)s? (?:level )?)"
)
_NOT: Final = r"(?:is not|isnt|aint|not|has not|hasnt|does not|doesnt|did not|didnt|never)"
_ADVERB: Final = r"(?:(?:really|even|at all|actually|been|any) )*"
_RISING: Final = r"(?:rising|risen|swelling)"
# Said of the water alone: who fell in and is "not coming up" is in it.
_UP: Final = (
    r"(?:rising|risen|rise|getting (?:any )?higher|higher|gone up|going up|come up|coming up)"
)
_THAN: Final = r"(?: (?:at all|here|one bit|a bit|either|than (?:before|earlier)|lol|haha))*"
_RAIL: Final = r"(?:(?:rail|railing|edge|fence|barrier|water|lip|rope|side|drop))"

_SOME: Final = r"(?:(?:it|its|only|just|still|a bit|a little|some|there|is|are|theres) )*"
_LITTLE: Final = r"(?: (?:a|bit|little|still|though|there|tho|slightly|some|dots|patches))*"
_LANDS: Final = (
    r"(?:it|the (?:water|fall|falls|stream|cascade)) (?:hits|lands|comes down|falls|splashes"
    r"|strikes|drops)(?: (?:in|into|on))?(?: the (?:pool|rocks?|water|stones?|bottom))?"
)
_BLINKS: Final = r"(?:blink(?:s|ing|ies)?|flash(?:es|ing)?|clips?|clipping|clipped|blown(?: out)?)"

WORDS: Final[Mapping[str, str]] = {
    # At the end of a message, where it changes nothing.
    "calm_parts.last": r"though|tho|however|actually",
    "calm_parts.joined": r"and|n|but|so|also|because|cuz|plus",
    "calm_parts.lead": r"and|n|but|so|also|no|nope|nah|oh|well|plus|what|ok|then|1|2",
    # "It ain't rising", which a word like "yet" or "any more" would take back.
    "calm_parts.not_rising": (
        rf"{_IT}?{_NOT} {_ADVERB}{_RISING}{_THAN}|{_WATER}{_NOT} {_ADVERB}{_UP}{_THAN}"
    ),
    # Somebody was held back in time: no back was pulled.
    "calm_parts.pulled_back": (
        r"(?:i|we|my (?:wife|husband|partner|mum|mom|dad|friend))(?: have| ve| just|ve)*"
        r" (?:pulled|called|dragged|hauled|took|got|brought|lifted|grabbed)"
        r" (?:her|him|them|(?:my|the|our) (?:\w+ )?(?:kids?|child|children|son|daughter|dog|boys?"
        rf"|girls?|friend|wife|husband))(?: right| straight)* (?:back|down|away)"
        rf"(?: (?:from|off|behind) (?:the |that )?{_RAIL}| right away| at once| now| again)*"
    ),
    # What tells that nothing is the matter, where danger only is likely by other words.
    "calm_parts.idle": (
        r"(?:(?:the|my|our|both|all) )*(?!(?:i|blood|water)\b)\w+(?:s|re)?"
        r"(?: (?:is|are|s|already|getting|get|gets|so|now|a bit|really|starting to get|be))*"
        r"(?: (?:moaning|whining|complaining|nagging|grumbling))?(?: (?:already|that))*"
        r"(?: (?:he|she|they)(?:s|re| is| are)?)?(?: (?:so|already|really))*"
        r" (?:hungry|bored|thirsty|peckish|starving|needs? (?:a|the|to) (?:pee|loo|toilet|snack"
        r"|wee))"
        r"(?: (?:already|now|again|lol|haha|too))*"
    ),
    # A thing that is put under the camera: nobody stands under anything.
    "calm_parts.put_under": (
        r"(?:(?:can|could|should|may) i )?(?:put|stuff|shove|use|lay|push) (?:my|a|the|some)"
        r" (?:\w+ )?(?:hoodie|jacket|coat|bag|backpack|rucksack|sweater|jumper|scarf|bean ?bag"
        r"|towel"
        r"|gloves?|cloth|hat|shirt|book|wallet|fleece|stones?|stick)"
        r" (?:under|beneath|below|on top of|over|around|behind|on) (?:it|the (?:phone|camera"
        r"|lens|tripod))"
    ),
    # What a camera or phone shows, that nobody finds: no way is lost.
    "calm_parts.where_shown": (
        r"(?:(?:i|have|really|just|still) )*(?:no (?:idea|clue)|dont know|do not know|idk|dunno"
        r"|not sure|cant see|cant find|dont see|unsure)(?: about)?"
        r" where(?: (?:to|i|you|can|could|do|would|should|id))*"
        r" (?:(?:see|check|set|turn on|switch on|read|look up|look for|change|enable)"
        r" (?:that|this|it|those|these|the"
        r" (?:blink\w*|warning|setting|menu|histogram|number|option|iso|value|zebras?))"
        r"|find (?:that|this|the (?:blink\w*|warning|setting|menu|histogram|number|option|iso"
        r"|value))|(?:that|this)(?: (?:is|would be))? (?:shown|displayed|set|written|in the menu"
        r"|stands)|it(?: is|s)? (?:shown|shows|shows up|displayed|says|written)"
        r"|(?:that|this|it) (?:says|shows)(?: (?:that|this))?)"
        r"(?: (?:on|in) (?:the|my|this) (?:camera|phone|screen|display|menu))?"
    ),
    # Where the water lands, in a picture that blinks: nobody stands there.
    "calm_parts.blinks": (
        rf"{_SOME}(?:(?:(?:down |right )?(?:at|in|near) the (?:bottom|foot|base)"
        rf"|(?:down )?where {_LANDS}) )+(?:there )?{_SOME}{_BLINKS}{_LITTLE}"
        rf"|{_SOME}(?:it |there )?{_SOME}{_BLINKS}{_LITTLE}"
        rf" (?:down )?(?:at the (?:bottom|foot|base)|where {_LANDS}){_LITTLE}"
    ),
    # Under trees is shade.
    "calm_parts.trees": (
        r"(?:(?:i|we|im|were|ive|weve|am|are|have|now|just|then) )*"
        r"(?:moved|went|walked|standing|stood|sitting|back|gone|are|set up)(?: (?:in|on|back))*"
        r" (?:under|beneath|below) (?:the |some )?(?:trees|canopy|leaves|branches|beeches|firs)"
        r"(?: (?:a|bit|little|now|further|farther|up|down|along|on|the|path|trail|bank))*"
    ),
    # Water that looks as a short time makes it.
    "calm_parts.looks_crisp": (
        r"(?:the |my |all )*(?:water|fall|falls|it|picture|drops|everything)"
        r" (?:looks?|comes out|came out|turned out|is looking) (?:(?:all|so|a|bit|too|kinda|still"
        r"|really|very) )*(?:frozen|spiky|crisp|icy|hard)"
        r"(?: (?:and|n) (?:(?:all|too) )?(?:spiky|crisp|sharp|hard|frozen|ugly))+"
    ),
    # A deck that moves the tripod.
    "calm_parts.wobbles": (
        r"(?:the )?(?:bridge|deck|boardwalk|platform|footbridge|planks?) (?:(?:also|even) )?"
        r"(?:shakes?|wobbles?|moves?|bounces?|vibrates?)(?: (?:a|bit|little|too))*"
        r" (?:when|if|as) (?:\w+ ){1,3}(?:jumps?|hops?|walks?|runs?|steps?|moves?|passes?"
        r"|bounces?)"
        r"(?: (?:on it|past|by|around))*"
    ),
    # The bot's own word: a ladder of times.
    "calm_parts.own_words": (
        r"(?:what (?:is|are|s)|whats) (?:a|the|your) ladders?"
        r"|(?:surely )?(?:you|u) (?:dont|do not|didnt) mean (?:that )?(?:i|we)"
        r" (?:should |have to |must |need to )?climb \w+"
        r"|(?:(?:i|we) )?(?:dont|do not|cant|didnt)(?: (?:quite|really))* (?:follow|get"
        r"|understand)"
        r" (?:the|your|this|that) ladder"
    ),
    # Dry ground some metres from the fall.
    "calm_parts.dry_ground": (
        r"(?:(?:i|we|im|were|am|are|now|just) )*(?:stand(?:ing)?|stood|set up)(?: up)? (?:on|at)"
        r" (?:a |the |some )?(?:(?:flat|dry|wide|firm|level|big|nice) )*"
        r"(?:gravel|grass|path|meadow|bank|sand|beach)(?: (?:bit|patch|beach|bank|bench))?"
        r"(?: (?:about|maybe|some|around|roughly))* \d{1,3}(?:[.,]\d)? ?"
        r"(?:m|met(?:re|er)s?|ft|feet|yards?)(?: (?:away|off|back))?"
        r"(?: from (?:it|the (?:falls?|waterfall|water|cascade)))?"
        r"|(?:the )?(?:water|stream|creek|fall|river)(?: is|s)? (?:on|to) (?:my|the|our)"
        r" (?:left|right)(?: (?:hand )?side)?"
    ),
    # Who is bored by the water: what is thrown goes in, not over an edge.
    "calm_parts.stones": (
        r"(?:(?:the|my|our|both|two) )*\w+(?: (?:is|are|was|were|keeps?|just|now|still|only))*"
        r" (?:throw(?:s|ing)?|chuck(?:s|ing)?|toss(?:es|ing)?|skip(?:s|ping)?|skim(?:s|ming)?)"
        r"(?: (?:some|little|small|flat|more))* (?:stones?|rocks?|pebbles?|sticks?|twigs?|gravel)"
        r" (?:in|into)(?: (?:it|there|the (?:water|pool|creek|stream|river)))?"
    ),
    # Who walks along, and for which meal they are back.
    "calm_parts.planned": (
        r"(?:its |it is )?(?:just|only) me (?:walking|going|hiking|tomorrow|this time)(?: alone)?"
        r"|(?:i|we) ?(?:will|ll|shall|should)? be (?:back|home|out)(?: again)? (?:for|by|before)"
        r" (?:lunch|noon|dinner|tea|supper|coffee|breakfast)"
    ),
    # How long somebody has been there.
    "calm_parts.waited": (
        r"(?:(?:i|we)(?:ve| have)? )?been (?:here|there|at it|out here) (?:for )?"
        r"(?:(?:almost|nearly|about|around|over|only|just|maybe|like|already) )*"
        r"(?:an?|one|two|three|\d+|half an) ?(?:hours?|minutes?|mins?|h)"
        r"(?: (?:now|already|i think|or so|so far|i guess))*"
    ),
    # Nobody has looked up when the sun sets.
    "calm_parts.sunset": (
        r"(?:(?:i|have|ve|got|really) )*(?:no (?:idea|clue)|dont know|do not know|dunno|not sure)"
        r" (?:about|of|when)(?: (?:the|is|time))*"
        r" (?:sunset|sundown|sunrise|the sun (?:sets|goes down|rises))(?: (?:is|time|today))*"
    ),
    # Beside a storm, or a way over ice, none of what is seen is harmless.
    "calm_parts.unsafe": (
        r"thunder\w*|lightning|storm\w*|rumbl\w*|growl\w*|grumbles|bang(?:s|ed|ing)?|boom\w*"
        r"|(?:dark|black|big) clouds?|clouds? (?:\w+ )?(?:dark|black)|(?:walk\w*|cross\w*"
        r"|step\w*|stand\w*|go) (?:on|over"
        r"|across) (?:it|the ice)"
    ),
}
