"""Turns of speech about things beside the fall: what a sign says, where the car is, old gear."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.spoken_numbers import WORD_NUMBER

_NUMBER: Final = rf"(?:\d[\d.]*|(?:{WORD_NUMBER})\b)"
_STRONG: Final = r"(?:four|five|six|seven|eight|nine|ten|twelve|thirteen|sixteen|\d+)"
_HEDGE: Final = r"(?:(?:about|maybe|like|some|roughly|around|approximately|only|just|a good) )*"
_UNIT: Final = r"(m|met(?:er|re)s?|ft|foot|feet|yds?|yards?)"
_BODY: Final = r"(?:ankle|shin|knee|thigh|hip|waist|belly|chest|shoulder|eye|head)"

PLAIN_TURNS: Final = (
    #: "The sign says 13 m": signs at falls tell their height.
    (
        (
            rf"\b(?:sign|board|plaque|info panel) (?:says|reads|shows|gives|claims)"
            rf"(?: it's| it is)? {_HEDGE}({_NUMBER}) ?(m|met(?:er|re)s?|ft|foot|feet)\b"
            r"(?! ?(?:away|to|deep|wide|across|back|up|down|walk|above|tall|high|from|of|in|long"
            r"|further|on|and|but)\b)(?=[^.;]*\d[^.;]* (?:away|back|from it|off)\b)"
        ),
        r"height is \1 \2",
    ),
    #: "The car park is 900 m back".
    (
        (
            rf"\b(?:car ?park|parking(?: lot)?|car|trail ?head)(?:'s| is| was)? {_HEDGE}({_NUMBER})"
            r" ?(m|km|k|miles?|mi|met(?:er|re)s|yards|yds?|ft|feet)"
            r" (?:back(?! and)|behind (?:us|me)|down the (?:path|trail|road))\b"
        ),
        r"\1 \2 walk out",
    ),
    #: "The bit I want is about 3 m tall".
    (
        (
            r"\b(?:bit|part|piece|section|portion|chunk|slice|stretch)(?: of (?:it|the fall))?"
            r" (?:that |which )?(?:i|we)(?:'m| am|'d| would)? (?:want|like|need|frame|show|after)"
            rf"(?: to (?:show|frame|have|get))?(?: is| would be|'s)? {_HEDGE}({_NUMBER}) ?{_UNIT}"
            r" (?:tall|high)\b"
        ),
        r"a \1 \2 tall section",
    ),
    #: "Camera on the tripod, waist height roughly 1 metre".
    (
        (
            rf"\b((?:camera|cam|tripod)\b[^.;\d]{{0,30}}?)\b{_BODY}[ -](?:height|level|high),?"
            rf" (?:so |that's |which is |say )*{_HEDGE}(?={_NUMBER} ?(?:m|cm|met|ft|feet|inch))"
        ),
        r"\1camera height ",
    ),
    #: "Took it off because it got too dark": why, not what is wrong with a frame.
    (
        (
            r"\b(off|removed),? (?:because|cause|cos|coz|cuz|since)\b[^.;,\d]{0,20}?"
            r"\b(?:too|so|very) (?:dark|bright)\b"
        ),
        r"\1",
    ),
    #: "31 m high and 44 m from the railing": where one stands.
    (
        (
            r"\b(\d\d[\d.]* ?(?:m|met(?:er|re)s|ft|feet|yards)) (?:away )?from (?:the |our |a )?"
            r"(?:railing|viewpoint|platform|lookout|bridge|fence)(?: away)?\b"
        ),
        r"\1 away",
    ),
    #: "Set to 0.4 and f9".
    (r"(?<![\d.f/+-])(0\.\d+)(?=,? (?:and |with |at )?f ?/?\d)", r"\1 s"),
    (r"\b(?:slightly|a (?:bit|touch|tad|little)|somewhat) bright(?=$|[.,;])", "a bit too bright"),
    #: "Water up to mid calf, 25 cm".
    (
        (
            r"\b(?:up )?to (?:my |the )?(?:mid[- ]?|middle )?(?:ankles?|shins?|calf|calves|knees?"
            rf"|thighs?|waist),? (?:so |that's )*{_HEDGE}({_NUMBER}) ?(cm|m|in|inches|ft|feet)\b"
        ),
        r"is \1 \2 deep",
    ),
    (
        (r"\b(polari[sz]er|cpl|tripod)(?:'s| is) in (?:my|the) (?:other )?\w+ at home\b"),
        r"\1 left at home",
    ),
    #: "Four of us and my mum who is 78".
    (
        (
            r"\b(of us|we (?:two|three|four|five|six)) and (?:my |our |mi )?\w+(?:'s)?,? "
            r"(?:(?:who|he|she)(?:'s| is)? |of )?(?:6[5-9]|[7-9]\d)\b(?: years old)?"
        ),
        r"\1 and my grandmother comes along",
    ),
    (r"\b(whole (?:fall|waterfall|thing)(?: in)?),? (?:from )?top to bottom", r"\1"),
    #: "ISO 400 is as high as I want to go": a bound.
    (r"\biso \d+ is (?:as high as|the most|the highest|my (?:limit|max))\b[^.;,]*", ""),
    #: "The pool edge is 4 m away and the actual fall 14".
    (
        (
            r"\b((?:away|from (?:me|us|the camera|here)|off),? (?:and|but|while)?) ?(?:then )?"
            r"(?:the )?(?:actual |real )?(?:water)?fall(?:s)?(?: itself| proper| selber|"
            r" selbst| at yes)?"
            rf"(?: is| at| a)* {_HEDGE}({_NUMBER})(?: ?{_UNIT})?(?=$|[.,;!])"
        ),
        r"\1 fall \2 \3 away",
    ),
    (
        rf"\b(?:pool|bank|shore|water)(?:'s)? edge (?:is )?{_HEDGE}{_NUMBER} ?{_UNIT} (?:away|off)",
        "",
    ),
    #: "I paced it, 22 m", "22 paces, call it 18 m".
    (
        (
            rf"(?<!\w )(?<!leaf )\b(?:i |we )?paced (?:it|that|the distance)(?: out| off)?[ ,:;.-]*"
            rf"{_HEDGE}({_NUMBER}) ?{_UNIT}\b(?! (?:to|tall|high|wide|deep|away))"
        ),
        r"\1 \2 away",
    ),
    (
        (
            rf"{_NUMBER} (?:paces|steps) (?:from|to) (?:it|the (?:water)?falls?),? (?:so "
            rf"|that's |call it "
            rf"|say )*{_HEDGE}(?={_NUMBER} ?(?:m|met|ft|feet|y)[a-z]*)"
        ),
        "distance ",
    ),
    (rf"\bhow far(?: away)?\?[^\d?]{{0,24}}(?={_NUMBER} ?(?:m|met|ft|feet|y))", "distance: "),
    #: "It's a skinny one, 25 feet": what is narrow here is the fall.
    (
        (
            r"\b(?:it's|its|is|it is|looks like|just|only)(?: a| an| quite| really)*"
            r" (?:skinny|narrow|slim|thin|small|tiny|little|big|huge|tall|high|low|short|wee"
            r"|modest)"
            rf" (?:one|fall|waterfall|thing|drop),? {_HEDGE}({_NUMBER}) ?{_UNIT}\b(?! (?:tall"
            rf"|high|away"
            r"|wide|from|to))"
        ),
        r"height \1 \2",
    ),
    (
        (
            rf"\b(?:can|could) (?:only )?(?:get|go|come) (?:to )?within {_HEDGE}({_NUMBER})(?:"
            rf" ?{_UNIT})?"
            r"(?=$|[.,;!])"
        ),
        r"distance \1 \2",
    ),
    #: "A mossy rock roughly an arm's length away, 70 cm".
    (
        (
            rf"\b(?:roughly |about )?(?:an |one )?arm'?s (?:length|reach)(?: away)?,? (?:so "
            rf"|say |like )*"
            rf"{_HEDGE}(?={_NUMBER} ?(?:m|cm|ft|inch|feet))"
        ),
        "",
    ),
    (
        (
            r"\b(?:the )?white (?:bits?|parts?|area|water|patch)\b[^.;,\d]{0,30}\b(?:no"
            r"|lost(?: all)?|zero)"
            r" (?:\w+ )?(?:detail|texture|structure)s?(?: left| at all| in it)?"
        ),
        "white without texture",
    ),
    (
        (
            r"\b(?:spots|specks|blotches|dots) (?:all over|everywhere)(?: the (?:frame|picture"
            r"|photo|shot))?"
            r" (?:\w+ )?from (?:the )?(?:spray|mist|drops?)"
        ),
        "spray spots on the lens",
    ),
    (
        (
            r"\b(?:everything|all of it|the lot) in(?:side)?,? from (?:the )?(?:lip|top|edge"
            r"|rim|crest)"
            r"(?: right| all the way| down)* to (?:the )?(?:pool|bottom|foot|base)"
        ),
        "the whole fall in",
    ),
    (r"\bnative(?:'s| is)(?: iso)? (?=\d)", "base iso "),
    (
        (
            r"\bno filters?,? (?:except|but|apart from|besides|other than)(?: for)?(?: an?| my"
            r"| the)*"
            r" (?:circular )?(?:polari[sz]er|cpl|pol)\b(?: filter)?"
        ),
        "no nd, have a polariser",
    ),
    #: "Birches are going mad", "nothing's moving".
    (
        (
            r"\b(?:birches|beeches|trees|branches|ferns|leaves|bushes|grass|reeds)(?:'s| is| are)?"
            r" (?:all )?(?:going (?:mad|crazy|wild|nuts)|all over the place|dancing|thrashing"
            r"|whipping"
            r"|flapping|nodding)(?! so\b)"
        ),
        "leaves moving in the wind",
    ),
    (
        (
            r"\bcalm(?: now)?,? (?:and )?nothing(?:'s| is)? moving|\bnothing(?:'s| is)?"
            r" (?:moving|stirring)"
            r"(?: at all)?(?=$|[.,;])"
        ),
        "no wind",
    ),
    (
        (
            r"\bsun (?:comes and goes|in and out|on and off|peeks?)(?: (?:behind|through|between))?"
            r" (?:the )?(?:thin |high )?clouds?"
        ),
        "sun behind thin clouds",
    ),
    (
        r"\b(?:make|want|like) (?:it|the water|that) (?:\w+ )?(?:creamy|velvety|buttery|flowing)",
        "want silky water",
    ),
    (
        r"\b(?:is|are|just|like) an? (?:green )?(?:smear|blur|smudge)(?=,|\.|$| otherwise)",
        "are smeared",
    ),
    (
        (
            r"(?:^|(?<=[,.;] )|\bit's |\bit is |\blooks )(?:tiny|minute|dwarfed|lost) in"
            r" (?:the |my )?"
            r"(?:frame|picture|photo|shot)"
        ),
        "the fall is tiny in the frame",
    ),
    (
        (
            rf"(\bnd\b|stop)(\b[^.;]{{0,40}}?\b)(?:so|that's|makes) ({_STRONG})(?: stops)?"
            r" (?:all ?together|in total|combined|all in)\b"
        ),
        r"\1\2 \3 stop nd on",
    ),
    (
        (
            r"\bswapped (?:the |my )?(?:polari[sz]er|cpl|pol) (?:for|with|to) (?:the |an? |my )?nd"
            r" ?(\d+)"
        ),
        r"polariser off, nd\1 on",
    ),
    (
        (
            r"\b(?:leave|keep) (?:the )?iso (?:alone|where it is|as it is)(?: please)?,?"
            r" (?:it's|its|it is)"
            r"(?: at| on)? (\d+)"
        ),
        r"keep iso, iso \1",
    ),
    (
        r"\bwhat would you (?:do|use|set|try|shoot)(?: \w+)? (?:at|with|for) [\d/.]+",
        "what would you do",
    ),
    (
        (
            r"\b(?:my|our|the) (?:mum|mom|dad|mother|father|gran|nan|grandma|grandpa) who(?:'s| is)"
            r" (?=[67-9]\d)"
        ),
        "my mum is coming along, she is ",
    ),
    (
        r"\btripod(?: (?:up|set|standing))*(?: in the \w+),? (?=\d[\d.]* ?(?:cm|m|ft|inches) high)",
        "on the tripod, camera height ",
    ),
    (
        r"\b(?:keep|keeping|leave|leaving) (?:it|the camera) (?:sideways|horizontal|flat)",
        "landscape format",
    ),
    (r"\bsays (?:0|zero) on the (?:light )?(?:meter|scale)", "meter at 0"),
)
