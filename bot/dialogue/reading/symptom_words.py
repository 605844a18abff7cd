"""The many words that people find for what is wrong in a frame."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.phrases import any_of

_NEAR_PART: Final = (
    r"(?:foreground|front(?! glass)|near(?:est)? \w+|closest \w+|\w+ (?:at|by) my feet|(?:close"
    r"|near) (?:stuff|things|bits)|stuff (?:up close|in front)"
    r"|(?:rocks?|stones?|boulders?|logs?|moss) in front(?: of me)?|first (?:rock|stone|boulder)"
    r"|bottom(?: of the (?:frame|picture))?|near end|close by)"
)
_FAR_PART: Final = (
    r"(?:back(?:ground)?|far(?: \w+)?|distance|(?:water)?falls?(?: itself)?|rear|back wall"
    r"|trees behind|corners)"
)
#: The lower corners hold the foreground, all others what lies far.
LOW_CORNERS: Final = re.compile(r"\b(?:bottom|lower)(?: left| right)? corners?\b")
_ALL_PART: Final = (
    r"(?:everything|all(?: of it)?|it all|whole \w+|entire \w+"
    r"|the (?:picture|frame|photo|image|shot)|pictures?|photos?|shots?|it's|its|it is|overall)"
)
_SOFT_FRAME: Final = (
    r"(?:soft|blurr?y|blurred|out of focus|unsharp|(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp)"
    r"|fuzzy|shaky|shaken)"
)
#: A mushy rock is soft, a mushy frame of water has lost its texture.
SOFT: Final = rf"(?:{_SOFT_FRAME}|mushy)"
#: "Soft light in the corners" is no complaint.
_SOFT_AT: Final = rf"{SOFT}(?: (?!light|shadows?|vignett)\w+)? (?:at|in|on|towards)"
#: Between a part and its fault; "the corners are not soft" is no fault.
_FILL: Final = r"(?:\s+(?!(?:and|but|no|not|never|\w+n't)\b)[\w']+){0,4}?\s+"
LEAF: Final = (
    r"(?:leaves|leafs|bush(?:es)?|greenery|leaf|foliage|ferns?|branches|twigs|trees|grass|plants)"
)
_LOOKS: Final = (
    r"(?:looks?|is|are|it's|its|came out|comes out|still|all|water|water's|turned|gone|went)"
)
#: "Everything is way over": without a number of stops, at the end of its clause.
_FAR: Final = r"(?:way|far|well|miles|totally|completely|badly|massively)"
_ENDS: Final = r"(?= ?(?:$|[,.;:!?]|(?:and|but|even|still|again|here|now)\b))"
_BLUE: Final = r"(?:blue|bluish|blueish|purple|purplish|magenta|violet)"
_ROCK: Final = (
    r"(?:dark (?:bits|parts|areas|spots)|pools?|rocks?|shadows?|stones?|walls?|cliffs?"
    r"|boulders?|corners?)"
)
_HAZY_SPOT: Final = r"(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|hazy|milky|foggy)"
_UPRIGHT: Final = (
    r"(?:walls?|trunks?|trees?|cliffs?|sides?|verticals|lines|rocks?|everything|falls?|waterfall)"
)

COMPLAINTS: Final = (
    (
        Symptom.NO_TEXTURE,
        any_of(
            r"mush|soup|soupy|candy ?floss|milk|porridge|gloopy?|goopy|gooey|treacle"
            r"|(?:(?<!y )like|just|all|into|to|of"
            r"|looks?|turned)(?: \w+)? fog|gruel|yoghurt|custard",
            "whipped cream",
            r"(?:shaving|bath) foam|marshmallow|(?:like|into|to|just|all|went) (?:steam|smoke"
            r"|cream)",
            r"(?:it|it's|its|looks?|all|everything|water|just|so) (?:\w+ )?mushy",
            r"shutter_s (?:is |was |it's )?(?:\w+ ){0,2}too long",
            r"(?:exposure|time|shutter)(?: is| was|'s)? (?:\w+ )?too long",
            r"cotton(?: wool| candy|$|(?=[,.!;]))",
            "like cotton",
            r"(?:no|lost|without|zero|lacks?|losing|any|little) (?:any |all |its )?"
            r"(?:texture|structure|strands|(?:lines|detail) in the (?:water|fall))",
            r"too (?:silky|smooth|misty|soft and white|milky|creamy|streaky)",
            r"(?:looks|is|it's|so|all|just) (?:\w+ )?milky",
            r"water (?:\w+ )?(?:mushy|mush)",
            r"featureless|no (?:lines|strands|threads|structure|shape)(?: \w+)?(?: in it| left"
            r"| at all)?",
            r"(?:smooth|white|formless|shapeless|big) (?:blur|mush|smear|goo|paste)|just a blur",
            r"(?:mashed|blancmange|goo|slush|foam bath|paste)(?= |$|[,.;!])"
            r"|like (?:a )?(?:cloud|wool|paint)",
            r"over-?smooth\w*|(?:way |far |much )too (?:blurred|blurry|soft) (?:in )?the water",
            r"water (?:is |looks |'s )?(?:just |too )?(?:a )?(?:smooth|white) (?:blur"
            r"|sheet of milk)",
            r"texture(?:'s| is| has)? (?:gone|lost|vanished)",
            r"smeared water|water (?:is |looks )?(?:all )?smeared",
            r"(?:cream|milk|paint|wax) (?:poured|spilt|spilled) over|poured (?:cream|milk|paint)",
            r"(?:water|flow|fall|it)(?:'s| has| is)? (?:all )?(?:melted|run|blended)"
            r" (?:together|into one)",
            r"(?:texture|structure|detail) (?:in|of) the (?:water|fall|flow)(?:'s| is| has| got)*"
            r" (?:all )?(?:gone|lost|vanished|missing)",
        ),
    ),
    (
        Symptom.JUST_WHITE,
        any_of(
            r"(?:just|only|all|pure|plain|one|simply|completely|totally|too) white(?! (?:smear"
            r"|blur|mush|fog|soup|cotton|wool|milk|balance))",
            r"washed[ -]?out(?! (?:greens?|colou?rs?|leaves|bridge|road|trail|path))",
            r"like an? (?:\w+ )?white (?:wall|curtain|block)",
            r"white (?:sheet|blob|mass|hole|nothing|paper|slab|patch without)|nothing but white"
            r"|chalk\w* white",
            r"(?:paper|chalk|snow|bright|bleach) white(?! (?:clouds?|sky|skies|overcast|light))",
            r"no (?:detail|drawing"
            r"|information) (?:\w+ )?in the white",
            r"(?<!highlights )(?<!highlights are )(?<!whites )(?:blown|burnt|burned)[ -]?out",
            r"(?:just|only|nothing but|simply) (?:an? )?(?:big |blank )?white"
            r" (?:rectangle|patch|block|shape|strip|area|stripe|column)",
            r"white (?:\w+ )?(?:without|with no) (?:any )?(?:detail|drawing|information)",
            "whited out|bleached|blank white|white and (?:flat|empty|blank)",
            rf"{_FAR} over{_ENDS}",
        ),
    ),
    (
        Symptom.TOO_FROZEN,
        any_of(
            r"too (?:frozen|crunchy|hard|crisp|sharp|static|spiky|stiff)",
            rf"{_LOOKS} (?:\w+ )?frozen",
            r"looks? (?:stuck|static|stiff|hard)",
            r"like (?:\w+ (?:of )?)?(?:ice|icicles|glass|plastic|needles|shards|splinters"
            r"|gravel|salt"
            r"|crystals?|popcorn|beads|hail)",
            r"(?:shattered|broken|chopped|crushed|cracked) (?:glass|ice)|frozen (?:solid|stiff)",
            r"(?<!laughed )(?<!laughing )(?<!try )(?<!trying )(?<!tried )(?<!raining )(?<!blowing )"
            r"(?<!pouring )(?<!working )(?<!rains )(?<!blows )(?<!that )"
            r"(?:way|much|far|so|all|really|very) (?:hard|harsh|jagged|brittle|spiky"
            r"|crispy)(?! (?:light|sun|to"
            r"|on|for|rain|climb|walk|path|work))",
            r"(?:each|every) (?:single )?(?:drop|droplet) (?:\w+ )?(?:stands|hangs|stuck|frozen"
            r"|nailed|stopped)",
            "crunchy|spiky",
            r"(?:drops?|water|it|everything|droplets)(?: \w+){0,2} stands? still",
            r"no (?:motion|movement|flow)",
        ),
    ),
    (
        Symptom.TOO_BRIGHT,
        any_of(
            r"(?<!sky )(?<!sky is )(?<!sky's )"
            r"(?:too|way|bit|smidge|tad|touch|little|rather) bright",
            "over-?exposed|too light|bright by (?=\\d|change)",
        ),
    ),
    (
        Symptom.TOO_DARK,
        any_of(
            r"(?:too|way|bit|smidge|tad|touch|little|rather|pretty|really|very|so) dark"
            r"(?! (?:forest|gorge|canyon|in here|down here|here|already|woods|place|valley"
            r"|i\b(?! (?:guess|think|reckon|suppose))))|dark by (?=\d|change)",
            "under-?exposed|too dim|murky(?! (?:in|here|down|day|water))",
            r"(?:shot|picture|frame|photo|image)(?:'s)? (?:(?:is|came out|comes out|looks"
            r"|turned out|all|rather|quite|pretty|a bit) )*"
            r"(?:gloomy|dim|(?:(?:nearly|almost|all|totally|completely"
            r"|pitch) )?black(?! and white))"
            r"|(?:nearly|almost) black (?:picture|photo|frame|image|shot|pic)",
            rf"{_FAR} under{_ENDS}",
        ),
    ),
    (
        Symptom.BLACK_ROCK,
        any_of(
            rf"black (?:\w+ )?(?:holes?|areas?|bits|lumps?|blobs?|{_ROCK})",
            rf"{_ROCK}(?:'s)? (?:[\w']+ ){{0,3}}(?:like coal|coal|ink|inky|pitch|tar)",
            rf"{_ROCK} (?:\w+ ){{0,3}}(?:black|blocked)",
            r"no detail in the (?:shadows?|rocks?|darks?|blacks?)",
            r"(?:can't|cannot|couldn't|hardly) (?:see|make out) (?:anything|any detail|much)"
            r" in the (?:shadows?|rocks?|darks?|dark (?:bits|parts))",
            "blocked(?: up)? shadows",
            rf"{_ROCK} (?:has|have|with|without) (?:no |any )?detail",
        ),
    ),
    (
        Symptom.SOFT_SPOTS,
        any_of(
            rf"{_HAZY_SPOT} (?:\w+ )?spots?",
            rf"(?:bright|white|light|{_HAZY_SPOT}) (?:\w+ )?"
            r"(?:discs?|disks?|circles?|blobs|rings?|blotches)",
            r"(?:drops?|droplets?|water|spray|spots?) (?:are |is )?(?:all over|on) (?:the |my )?"
            r"(?:front|lens|glass|filter)",
            r"(?:spray|water|rain|drop) (?:spots?|drops?|droplets?|marks?) (?:on|in|over)",
            r"wet (?:lens|glass|front)",
            r"(?:lens|glass|filter) (?:is|was|got) wet",
        ),
    ),
    (
        Symptom.LEAVES_SMEARED,
        any_of(
            rf"{LEAF}\b(?: [\w']+){{0,5}} "
            r"(?:smear\w*|blurr?\w*|fuzzy|smudg\w*|soft|doubled?|streak\w*)",
            rf"{LEAF}\b[^.;]{{0,16}} (?:not|aren't|never) sharp\b[^.;]{{0,20}}\bwind",
            rf"{LEAF}\b[^.;]{{0,25}} a (?:blur|smear|smudge)",
            rf"{LEAF}'s (?:just |all )?an? (?:blur|smear|smudge)",
            rf"(?:smeared|blurr?y|blurred|fuzzy|smudged) (?:\w+ )?{LEAF}",
        ),
    ),
    (
        Symptom.GLARE,
        any_of(
            "glare|glaring|glary|glossy|shiny|sheen|gleam\\w*|glitter\\w*|varnish\\w*|lacquer\\w*",
            r"shin(?:e|es|ing)(?! sun)(?= (?:on|like|off|from|too|so|at)|$|[,.;!?])",
            r"reflections? (?:on|off|from)",
            r"reflect(?:s|ing)? (?:the )?(?:sky|light)",
            r"glisten\w*",
            r"(?:like|as) (?:a )?mirrors?",
            r"mirror-?like",
            r"glint\w* (?:on|off) (?:the )?(?:rock|wet|leav)\w*",
        ),
    ),
    (
        Symptom.BLUE_CAST,
        any_of(
            rf"{_BLUE} (?:colou?rs?|picture|photo|frame|image|shot)(?! hour)",
            rf"(?:picture|photo|frame|image|shot|everything"
            rf"|whole thing)(?:'s)? (?:\w+ ){{0,2}}{_BLUE}"
            r"(?! (?:sky|hour))",
            r"cold colou?rs?",
            rf"(?:cold|{_BLUE})[ -](?:cast|tint|tinge|hue|tone)(?:ed)?",
            rf"(?:tinted|tinged|gone|turned) {_BLUE}|(?:looks|came out|picture is|all"
            rf"|way) (?:too )?cold(?! out)"
            r"(?= (?:in colou?r|and blue)|$|[,.;])",
            rf"{_BLUE} (?:all over|everywhere|as)",
            rf"colou?rs? (?:are |is |look |looks |came out |too |very |rather |a bit |all )*"
            rf"(?:cold|cool|{_BLUE})(?! hour)",
            rf"(?:too|so|everything|it|{_LOOKS}) (?:\w+ )?{_BLUE}(?! (?:sky|hour))",
        ),
    ),
    (
        Symptom.LEANING,
        any_of(
            rf"{_UPRIGHT}\b(?: \w+){{0,3}} "
            r"(?:lean\w*|tilt\w*|tip\w*|converg\w*"
            r"|fall(?:s|ing)? (?:over|back\w*|inwards?|in(?=$|[,.;])))",
            r"(?:leaning|converging|tilting|tilted) "
            r"(?:walls?|trunks?|trees|cliffs?|verticals|lines)",
            r"(?:bend|bending|lean|leaning|tilt) (?:inwards?|in|towards? each other)",
            r"keystone\w*|like a pyramid",
            rf"{_UPRIGHT}\b(?: \w+){{0,3}} (?:bend\w*|bow\w*|slop\w*) (?:in|inwards?|back\w*"
            rf"|together)",
        ),
    ),
    (
        Symptom.TOO_SMALL,
        any_of(
            r"(?:looks?|is|falls?(?:'s)?|waterfall(?:'s)?|so|too|it's|comes out|way) "
            r"(?:(?!an?\b)\w+ )?(?:tiny|small)"
            r"(?! (?:stream|creek|brook|steps?|fall|bit|cascade|waterfall|aperture|f))",
            r"(?:is|it's|its|just|'s) an? (?:tiny|small|little) (?:thing|dot|speck|strip|line"
            r"|thread)",
            r"tiny (?:water)?fall in|dwarf(?:ed)?|(?:matchstick|toothpick|pinhead|speck"
            r"|postage stamp)",
            r"(?:barely|hardly|can't) (?:even )?(?:see|find|spot) (?:the |it|my )(?:fall"
            r"|waterfall|in the)",
            r"(?:much|far|way|all|so) too (?:small|tiny|little)(?= |$|[,.;!])(?! aperture)",
            r"lost in the (?:frame|picture|scene)|(?:water)?falls? (?:\w+ )?(?:got|gets|is) lost",
        ),
    ),
)
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
            rf" (?:isn't|is not|not|aren't|are not){_CLAUSE_ENDS}",
        ),
    ),
    (
        Symptom.SOFT_ALL,
        any_of(
            rf"{_ALL_PART}\b(?:'s)?(?:{_FILL}|\s+){_SOFT_FRAME}",
            rf"{SOFT} (?:all over|everywhere|overall)",
            r"(?:camera|see|got|is|some) ?shake|tripod(?:'s| is| was)? (?:\w+ )?(?:shaky|wobbl\w+)",
            r"nothing(?: in (?:it|there|the (?:frame|picture|shot)))?(?: is|'s)? (?:\w+ )?sharp"
            r"|sharp nowhere|(?:double|doubled|ghost) (?:edges|outlines)(?: everywhere| all over)?",
            r"(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp) (?:anywhere|at all)",
            r"(?:blurr?y|unsharp|out of focus|fuzzy) (?:shots?|pictures?|photos?|frames?|images?)",
        ),
    ),
)
