"""The words beside a length that say what it measures."""

from __future__ import annotations

import re
from typing import Final

NEAR: Final = (
    r"(?:min(?:imum)?|nearest|closest) distance|(?:nearest|closest)(?! (?:i|we|you"
    r"|one)\b)(?: (?:thing|object|point|bit))?"
    r"|near thing|foreground|front"
    # What water runs over is no near thing.
    r"|(?<!over )(?<!over the )(?:rocks?|boulders?|stones?|pebbles?|slabs?|ledge)|logs?|ferns?"
    r"|moss|bush(?:es)?|flowers?|plants?|roots?|stumps?|branch|driftwood|anchor"
    r"|trunks?|snag|fallen (?:tree|pine|spruce|fir|birch|oak|beech)|railing|reeds|tuft|heather"
    r"|lichens?|sapling|mushrooms?|twig|puddle"
    r"|clump|in front of (?:me|us|the (?:lens|camera)|my (?:lens|camera))|at my feet"
)
FAR: Final = (
    r"(?<!on the )(?<!from the )(?<!at the )opposite (?:bank|side|wall|shore|cliff)"
    r"|(?:back|rear|rock|canyon|gorge|grotto|cave) (?:wall|side|bank)s?|farthest|furthest"
    r"|most distant"
    r"|(?<!on the )(?<!from the )(?<!at the )far (?:wall|side|bank|shore|edge|cliff|trees?|rocks?"
    r"|ridge|hill|bushes|pines|slope|ferns?)s?"
    r"|(?<!falls )(?<!fall )(?<!drop )(?<!cascade )behind (?:it|that|them|the (?:(?:water)?falls?"
    r"|curtain|cascade|water))\b"
    r"|(?!i'm|im\b|me\b|(?:water)?falls?\b|drop\b|cascade\b|it\b)\w+ (?:behind"
    r"|at the (?:far )?back|in the background"
    r"|beyond(?!\W*$))"
    r"|(?<!\w )wall(?=(?:[:=]| is| at)* *$)|(?<!\w )back(?= ?[:=] ?$)"
    r"|background"
    r"|horizon|skyline"
)
#: "Near 1.2 m, far 18 m": the two ends of the depth, each right before its number.
END: Final = r"(?: (?:end|point|limit|thing))?(?=(?:\W|\b(?:is|at|about)\b)*$)"
FALL: Final = r"(?:water)?falls?|drop|plunge|cascade|chute|curtain|(?:water ?)?slide"
FILLER: Final = (
    r"(?:\W*(?:or so|ish|maybe|max|about|roughly|approx|approximately|now|i guess|i think)\b)*\W*"
)

ONLY_FILLER: Final = re.compile(FILLER)

NOUN: Final = re.compile(
    r"^ (?!(?:to|for|from|away|but|not|maybe|perhaps|probably|please|give|the|nearest|closest"
    r"|foreground|front)\b)(?:of\b|[a-z]{3,})"
)
#: "From the lip to the pool" is the whole height.
FROM_LIP: Final = (
    r"(?:the )?(?:top|lip|crest|edge|rim|brink)(?: down)? to (?:the )?(?:\w+ )?"
    r"(?:bottom|base|foot|pool|water|ground|splash|rocks)"
)
#: "The wide zoom" is as wide as it is.
_OF_A_LENS: Final = r"(?!(?: |-)(?:zoom|angle|lens|one|end|glass|prime)\b)"
#: What a clause before a number speaks of; the last one named counts.
SUBJECT: Final = re.compile(
    rf"\b(?:(?P<camera>shooting height|eyes?(?= (?:height|level))|camera|cam|(?:sensor"
    rf"|lens)(?= height| level)|tripod"
    rf"|lens(?= (?:is )?(?:above"
    rf"|over)\b))"
    rf"|(?P<lens>lens(?=(?:'s| is| sits| up| now| only| just| about| at)*\s*$))|(?P<far>{FAR})"
    rf"|(?P<near>{NEAR}|nothing (?:is )?(?:nearer|closer) than)"
    rf"|(?P<distance>distance(?: (?:to|from|of) (?:the )?(?:{FALL}|water|foot|base))?"
    r"|(?:i'm|im|i am|we're|we are|stood|standing|stand|sat|sitting|set up)(?: (?:right|way|about"
    r"|well))?"
    r" (?:back|off|away|out)|i'm|im|i am|we're|we are|standing|stand|i stay"
    r"|(?<!call )(?<!text )(?<!ring )(?<!meet )(?<!tell )(?<!told )(?<!show )(?<!wake )(?<!gave )me"
    r"|away|(?<!nothing )(?<!nothing is )(?:closer(?: than)?|nearer than)"
    r"|(?:closest|nearest) (?:i|we|you|one)(?: can| could|'m able to|'ll)? (?:get|stand|be|go"
    r"|come)(?: to it)?"
    r"|(?:stepped|step|moved|move|go|went|gone|walked|walk|backed|crept|crawled|edged|shuffled)"
    r"(?: back| up| in| closer| nearer| forwards?| further| farther| out| off| away)? to"
    r"|(?:falls?|waterfall|water|stream|creek|brook|river|cascade|curtain|veil|drop|chute)"
    r" (?:is )?at|(?:falls?|waterfall|drop|cascade) (?:right |just )?behind (?:it|that|them"
    r"|him|her))"
    rf"|(?P<width>width|wide{_OF_A_LENS})|(?P<depth>depth|deep)"
    r"|(?P<climb>climb\w*|ascent|gain(?:s|ing)?|elevation change)"
    r"|(?P<walk>walk\w*|hike|hiking|trail|approach|(?<!\w )way (?:out|back|in|home)"
    r"|(?:the|our|my) way (?:out|back|in|home))|(?P<section>show|section|part|piece|slice)"
    rf"|(?P<height>height|tall|high|drops|falling(?=(?:\W|\b(?:about|some|maybe|for|over"
    r"|is)\b)*$)|(?:comes|falls|plunges|tumbles|crashes|pours|thunders|leaps) down|plunges"
    r"|tumbles|dives"
    rf"|the (?:whole )?thing is|{FROM_LIP}|{FALL}))\b"
    rf"|\b(?<!how )(?<!so )(?<!too )(?P<far_end>far{END})|\b(?<!too )(?P<near_end>near{END})"
)

THE: Final = r"(?:the |my |our |a |that |this )?"
#: "12 is the distance".
IS_THE: Final = r"(?:is|was|for) (?:actually |really )?(?:the|its|my)"
#: What stands right behind a number.
BEHIND: Final = re.compile(
    rf"^{FILLER}(?:"
    rf"(?P<camera>{IS_THE} height of {THE}(?:camera|lens|tripod|eyes?)\b|(?:off|above|over) {THE}"
    r"(?:ground|water|floor|stream|creek|(?:river|stream)?bed|rocks?|stones?|pool|deck|dirt|mud"
    r"|sand"
    r"|grass|gravel|surface|moss|snow|path|platform|boardwalk|earth|pebbles|ledge|puddle|planks?"
    r"|boards|duckboards|decking))"
    r"|(?P<up_to_lip>up to (?:the )?(?:lip|top|crest|rim|brink))"
    r"|(?P<section>(?:slice|section|stretch)\b|of (?:it|that|the (?:fall|falls|water|curtain"
    r"|veil|drop"
    r"|waterfall|cascade)))"
    r"|(?P<climb>(?:of )?(?:(?:high|height|altitude|elevation)[ -](?:difference|met(?:er|re)s)"
    r"|difference (?:in|of) (?:height|altitude|elevation)|climb\w*|ascent|gain|elevation"
    r"|vertical|uphill|(?<=of )up))"
    r"|(?P<walk>(?:of )?(?:walk|hike|hiking|trail|path|track)\b|one way|each way|round trip|in from"
    rf"|(?:from|(?:back )?to) {THE}(?:car|road|trail ?head|parking|lot)\b)"
    rf"|(?P<whole>(?:from )?{FROM_LIP})"
    r"|(?P<broad>(?:from )?(?:side to side|edge to edge|bank to bank|left to right"
    r"|one (?:side|bank|edge) to (?:the other|another)))"
    r"|(?P<between>between (?:me|us|the camera|where i stand))"
    r"|(?P<object>(?:away from|back from|across from|off from|from|to|before|in front of|short of"
    r"|shy of"
    r"|this side of|off(?= (?:my|the) (?:lens|camera|glass)))"
    rf" (?!(?:go|do|be|get|walk|climb|see|come)\b){THE}(?P<thing>[a-z' ]{{1,30}}))"
    r"|(?P<height>tall|high|of (?:falling water|water (?:falling|dropping|tumbling|crashing"
    r"|plunging"
    r"|(?:coming|pouring|going) (?:straight |right )?(?:down|over)))"
    rf"|is how (?:tall|high)|{IS_THE} (?:whole |total |full )?height|in height|of height|in total"
    rf"|altogether|(?:of (?:a |free )?)?(?:{FALL})"
    r"|for (?:the )?(?:drop|(?:water)?falls?|whole thing))"
    rf"|(?P<width>wide|broad|across|is how wide|(?:in|of) width|{IS_THE} width)|(?P<depth>deep"
    r"|of water(?! (?:falling|dropping|coming|pouring|tumbling|crashing|plunging|going))"
    rf"|{IS_THE} depth)"
    rf"|(?P<distance>{IS_THE} distance|is how far (?:away |off |back )?(?:i|we)|away|off|back"
    r"|out(?! of\b)|distant|distance"
    r"|far(?=\s*(?:$|[,.;!?)]|from\b|away\b|and\b|but\b)))"
    r"|(?P<beyond>behind)"
    r"|(?P<near>in front)"
    r"|(?P<up>up)"
    r")\b"
)
NEAR_BEHIND: Final = re.compile(rf"^\W*(?:to |for )?{THE}(?:{NEAR})(?: \w+)?\W*$")
WATER_THING: Final = re.compile(rf"(?:{FALL}|water|foot|base|lip|crest)\b")
NEAR_THING: Final = re.compile(rf"\b(?:{NEAR})\b")
FAR_THING: Final = re.compile(rf"\b(?:{FAR})\b")
GROUND: Final = re.compile(r"(?:ground|floor|water|stream|rocks?|bed|path)\b")
MYSELF: Final = re.compile(
    r"(?:my |our )?(?:me|us|camera|lens|front|knees?|feet|boots|toes|tripod|glass)\b"
)
#: Words that say what is measured, also for a number in the next clause.
MEASURED: Final = re.compile(
    r"\b(?:(?P<height>tall|high|height"
    r"|(?:big|huge|massive|giant|small|tiny|little|wee|baby) (?:one|fall|waterfall|drop"
    r"|beast)(?=\W*$))"
    r"|(?P<depth>depth|deep|(?:up to|over|above|past|below|under)"
    r" (?:my |the |your )?(?:toes|ankles?|shins?|cal(?:f|ves)|knees?|thighs?|waist|boots?))"
    r"|(?P<distance>distance|far away|away"
    r"|(?:i|we)(?:'ve| have|'d)? (?:moved|changed (?:my |our )?(?:spot|place|position)s?)(?=\W*$)"
    r"|(?:new|other|another) (?:spot|place|position)(?=\W*$)"
    r"|(?:moved|stepped|went|got|gone|backed|walked) (?:\w+ )?"
    r"(?:closer|nearer|back|away|off|in|out|farther|further|up to it|forwards?|up|towards (?:it"
    r"|the \w+)))"
    r"|(?P<far>farthest|furthest|background)|(?P<near>nearest|closest|foreground"
    rf"|first (?:{NEAR})|(?:{NEAR})(?: (?:is|are|at|within|about|just|only))* (?:an "
    r"|one )?arm'?s (?:length|reach)"
    rf"|(?:{NEAR})(?: (?:is|right|just|directly|standing|sits))* in front(?: of (?:me|us"
    rf"|the camera))?)"
    r"|(?P<camera>(?:knee|thigh|hip|waist|belly|chest|shoulder|head|eye|belt|navel|pocket|chin|nose"
    r"|elbow|neck|belly button|crotch|face|rib)[ -](?:high|height|level)"
    r"|(?:tripod|camera|lens)(?:'s)?(?: (?:is|at|set|quite|very|really|about|up|knee"
    r"|chest"
    r"|waist|hip|eye|head|shoulder|thigh|ankle|shin|belly|down|pretty|squashed|splayed|flat|now"
    r"|then|still|fully|full|maximum|max|its|on|half"
    r"|all the way|right|extended)|,)*"
    r"[ -](?:low|high|level|height|flat|up|down)"
    r"|(?:tripod|camera|lens)\b[^,;.]{0,20}\b(?:lowest|highest|(?:ground|water|floor"
    r"|river) level|(?:above|off|over) the \w+))"
    rf"|(?P<width>width|wide{_OF_A_LENS}))\b"
)
WALKING: Final = re.compile(
    r"\b(?:walk\w*|hik\w+|trail|approach|miles?|climb\w*|way (?:back|out|in))\b|km\b"
)
#: A bare number belongs to the word before it only when nothing but these stands between.
TIGHT: Final = re.compile(
    r"(?:\W|\b(?:is|at|are|about|maybe|around|roughly|say|approx|of|some|be|there|was|should|to"
    r"|only|it|it's"
    r"|its|s|i|i'd|guess|think|probably|ca|circa|just|like|call|so|as|g'day|well|hi|hello|hey"
    r"|reckon|a good)\b)*$"
)
#: "I'm crouched behind a boulder": where somebody is, not what is measured.
PLACED_AT: Final = re.compile(
    r"\b(i'm|im|i am|we're|we are|standing|stood|stand|sitting|sat|sit|crouch\w*|kneel\w*|perched"
    r"|balanced|set up|camera|tripod)\b(?: (?!focus|at\b|is\b)\w+){0,2} (?:behind|on|beside"
    r"|next to|by"
    r"|from|against|under|onto|atop|between|in|among)(?: (?:an?|the|some|my|this|that|two|2))?"
    rf"(?: \w+)?? (?:{NEAR})\b"
)
#: "The bridge is 30 m away": neither the fall nor the person.
OTHER_THING: Final = re.compile(
    r"^\W*(?:(?:and|but|so|then) )*(?:the|an?|that|this|my|some|another|those|these)"
    r" (?!is\b|was\b|must\b|would\b|looks\b|thing\b|whole\b|about\b|spot\b|place\b|position\b"
    r"|view|platform\b|distance\b|best\b)[a-z]+"
)
#: "The tree is 20 m tall", "a 2 m tall guy": not the fall's height.
_MAY_BE_FALL: Final = (
    # "The Millfall": a fall's own name ends in what it is.
    rf"(?:{FALL}|[a-z]{{3,}}falls?|water\w*|stream|thing|whole|height|lip|top|rim|crest|one|total|jump|drops?|spot"
    r"|place|section|part|step|tier|main|first|second|third|upper|lower|highest|lot|view|picture"
    r"|frame|camera|tripod|lens|beauty|monster|giant|curtains?|veil|bit|sign|map|board|guide"
    r"|plaque|rest|ding|selber|selbst)"
)
OTHER_TALL: Final = re.compile(
    r"^\W*(?:(?:and|but|so|then|with|well|ok) )*"
    r"(?:the|an?|that|this|my|our|some|those|these|his|her|mein\w*|de[rnm]|mi|el|la)"
    rf" (?!(?:[\w'-]+ ){{0,3}}?{_MAY_BE_FALL}\b)(?:[\w'-]+ ){{1,4}}?"
    r"(?:is|are|was|were|looks|must be|should be|mide|hat)\b"
)
_TALL_THING: Final = (
    r"(?:trees?|pines?|firs?|spruces?|oaks?|rocks?|boulders?|cliffs?"
    r"|walls?|towers?|bridges?|statues?|cross|houses?|buildings?|poles?|ladders?|steps|guy|man"
    r"|woman|person|people|kid|fence|railing|slope|hill|dune)"
)
#: "A 4 m tall section".
TALL_PART: Final = re.compile(
    r"^ ?-?(?:tall|high) (?:section|slice|part|piece|strip|bit|stretch)\b"
)
TALL_OTHER: Final = re.compile(rf"^ ?-?(?:tall|high)(?: \w+)? {_TALL_THING}\b")
#: "A tree about 10 m tall".
TALL_NAMED: Final = re.compile(
    rf"\b{_TALL_THING}(?:,| (?:is|are|about|of|maybe|some|roughly|almost|around|like))* ?$"
)
#: "People standing 4 m in front of me".
OTHER_PEOPLE: Final = re.compile(
    r"\b(?:people|guys?|some(?:one|body)|tourists?|kids?|they|he|she|man|woman|couple|dogs?|family"
    r"|crowd|heron|dipper|bird)\b"
)
#: Where people come from and go to; none of it is in the picture.
ELSEWHERE: Final = (
    r"(?:parking|car ?park|cars?|bus|shuttle|tram|ferry|gate|entrance|lay-?by|pier|church"
    r"|villages?|huts?|caf[eé]s?|toilets?|loo|road|bus stop|stop"
    r"|trail ?head|camp\w*|tents?|town|hotel|shelter|bench|kiosk|station|restaurant|pub|shop"
    r"|border|summit|peak|next \w+)"
)
FAR_LAND: Final = re.compile(
    r"\b(?:hills?|ridge|mountains?|peak|cliffs?|skyline|end of the|forest|tree ?line|slope"
    r"|valley side)\b"
)
GOING: Final = re.compile(rf"{ELSEWHERE}\b")
#: "The bus is the 42", "the third fall of 5".
NAMES: Final = re.compile(
    rf"\bthe $|\b(?:{FALL}|one|number) of $|\bat (?:the )?(?:falls?|waterfall|cascade|step|tier) $"
)


KNOWN_THING: Final = re.compile(
    rf"(?:\w+ )?(?:{FALL}|water|foot|base|bottom|lip|pool|edge|it|{NEAR}|{FAR}|{MYSELF.pattern}"
    rf"|{GROUND.pattern})"
)
#: "What if I shot it from 30 m": where the camera would stand.
SHOT_FROM: Final = re.compile(
    r"\b(?:shoot|shot|shooting|take|took|taken|stand|stood|work|photograph\w*)(?: \w+){0,2} from ?$"
)
