"""The many words that people find for what is wrong in a frame."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.phrases import any_of
from bot.dialogue.reading.water_words import ENDS, FAR, LOOKS, WATER_COMPLAINTS

LEAF: Final = (
    r"(?:leaves|leafs|bush(?:es)?|greenery|leaf|foliage|ferns?|branches|twigs|trees|grass|plants)"
)
_BLUE: Final = r"(?:blue|bluish|blueish|purple|purplish|magenta|violet)"
_ROCK: Final = (
    r"(?:dark (?:bits|parts|areas|spots)|pools?|rocks?|shadows?|stones?|walls?|cliffs?"
    r"|boulders?|corners?)"
)
_HAZY_SPOT: Final = r"(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|hazy|milky|foggy)"
_PIC: Final = (
    r"(?:pictures?|photos?|frames?|shots?|images?|pics?|photographs?|results?|exposures?|previews?"
    r"|screen|everything|all of (?:it|them)|it all)"
)
_BE: Final = (
    r"(?:'s|'re| is| are| was| were| look| looks| came out| come out| comes out| turned out"
    r"| turns out| ends? up| ended up| seems?| gets?| got)"
)
_QUITE: Final = (
    r"(?: (?:a|an|bit|lot|little|touch|tad|way|far|much|too|very|really|so|rather|quite|pretty"
    r"|super"
    r"|awfully|terribly|horribly|kinda|kind of|sort of|fairly|extremely|incredibly|somewhat"
    r"|slightly"
    r"|overly|all|just|still|again|always|also|bloody|dead|well|totally|completely|almost|nearly"
    r"|that|out))*"
)
_CAME_OUT: Final = r"(?:came|come|comes|coming|turned|turns|turning) out"
_UPRIGHT: Final = (
    r"(?:walls?|trunks?|trees?|cliffs?|sides?|verticals|lines|rocks?|everything|falls?|waterfall"
    r"|pines?|firs?|spruces?|birch(?:es)?|beech(?:es)?)"
)

COMPLAINTS: Final = (
    *WATER_COMPLAINTS,
    (
        Symptom.TOO_BRIGHT,
        any_of(
            r"(?<!sky )(?<!sky is )(?<!sky's )"
            r"(?:too|way|bit|smidge|tad|touch|little|rather) bright",
            r"(?<!nothing is )(?<!nothing's )(?<!nothing )(?<!none of it is )(?<!part is )"
            r"over[ -]?expos(?:ed|ure)|too light(?! (?:tripod|a|to|for))|bright by (?=\\d|change)",
            rf"{_PIC}{_BE}{_QUITE} bright(?! (?:enough|blue|green|red))",
            rf"{_CAME_OUT}{_QUITE} bright",
            r"(?:too|way|bit|smidge|tad|touch|little|rather) (?:pale|whitish)",
            rf"{_PIC}{_BE}{_QUITE} (?:pale|whitish|faded)(?! (?:blue|green|grey|gray))",
            rf"{_CAME_OUT}{_QUITE} (?:pale|whitish)",
            r"(?:much|far|way|lot) paler|paler than",
            rf"{_PIC}(?: has| have)?(?: all)? (?:went|gone|turned)(?: \w+)? pale",
        ),
    ),
    (
        Symptom.TOO_DARK,
        any_of(
            r"(?:too|way|bit|smidge|tad|touch|little|rather|pretty|really|very|so) dark"
            r"(?! (?:forest|gorge|canyon|in here|down here|here|already|woods|place|valley"
            r"|i\b(?!'d|'ve)(?! (?:guess|think|reckon|suppose))))|dark by (?=\d|change)",
            r"(?:super|awfully|terribly|horribly|kinda|extremely|incredibly|overly) dark"
            r"(?! (?:forest|gorge|canyon|in here|down here|here|already|woods|place|valley|under"
            r"|among|between|beneath|below))",
            rf"{_PIC}{_BE}{_QUITE} (?:dark|dim|murky)(?! (?:in here|down here|here|already|under"
            r"|now|stone|rock|spot|patch|corner|bit))",
            rf"{_CAME_OUT}{_QUITE} (?:dark|gloomy|dim|murky)",
            r"dark (?:pictures?|photos?|pics|shots?|images?)(?! room)",
            "under[ -]?expos(?:ed|ure)|too dim|murky(?! (?:in|here|down|day|water))",
            r"(?:shot|picture|frame|photo|image)(?:'s)? (?:(?:is|came out|comes out|looks"
            r"|turned out|all|rather|quite|pretty|a bit) )*"
            r"(?:gloomy|dim|(?:(?:nearly|almost|all|totally|completely"
            r"|pitch) )?black(?! and white))"
            r"|(?:nearly|almost) black (?:picture|photo|frame|image|shot|pic)",
            rf"{FAR} under{ENDS}",
        ),
    ),
    (
        Symptom.BLACK_ROCK,
        any_of(
            rf"black (?:\w+ )?(?:holes?|areas?|bits|lumps?|blobs?|{_ROCK})",
            rf"{_ROCK}(?:'s)? (?:[\w']+ ){{0,3}}(?:like coal|coal|ink|inky|pitch|tar)",
            rf"{_ROCK} (?:\w+ ){{0,3}}(?:black|blocked)",
            r"no detail in the (?:shadows?|rocks?|darks?|blacks?)",
            r"(?:can't|cannot|couldn't|hardly) (?:see|make out) (?:anything|a thing|nothing"
            r"|any detail|any texture|much)"
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
            r"(?:spray|water|rain|drop) (?:spots?|drops?|droplets?|marks?) (?:on|in|over)"
            r"(?! (?:the |a |my )?(?:pool|rocks?|puddle|water|stream|leaves|leaf|pond|jacket"
            r"|roof))",
            r"wet (?:lens|glass|front)",
            r"(?:lens|glass|filter|front element)(?:'s)? (?:is|was|got|gets"
            r"|keeps getting)? ?(?:\w+ )?"
            r"(?:wet|splashed|speckled|spattered|sprayed|covered in (?:drops|droplets|water"
            r"|spray))",
            r"(?:drops?|droplets?|mist|spray|rain|moisture|water)(?: \w+){0,3} (?:on|over"
            r"|onto) (?:the |my )?"
            r"(?:lens|front|glass|filter|front element|front lens)\b",
            r"(?:spots|blobs|orbs|circles|discs|disks|rings|bubbles|blotches)(?: \w+)? (?:all over"
            r"|over|in"
            r"|on|across) (?:the|my|every|each|all) (?:\w+ )?(?:pictures?|photos?|frames?|shots?"
            r"|images?|pics?)",
            r"(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|milky|grey|gray|light|white)(?: \w+)?"
            r" (?:orbs|bubbles|balls|halos|blotches|marks)",
        ),
    ),
    (
        Symptom.LEAVES_SMEARED,
        any_of(
            rf"{LEAF}\b(?: [\w']+){{0,5}} "
            r"(?:smear\w*|blurr?\w*|fuzzy|smudg\w*|soft|doubled?|streak\w*)",
            rf"{LEAF}\b[^.;]{{0,16}} (?:not|aren't|never) sharp\b[^.;]{{0,20}}\bwind",
            rf"{LEAF}\b[^.;]{{0,25}} a (?:blur|smear|smudge|mess)",
            rf"{LEAF}\b[^.;,]{{0,24}} (?:moved|ghosted|ghosts|ghosting|ghostly|jittery|shaky"
            r"|wobbly)"
            r"(?: (?:in|on) (?:the|my|every|all) \w+)?(?=\W*$|[,.;!?]| (?:and|but)\b)",
            rf"(?:motion )?blur (?:in|on) the {LEAF}",
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
            r"reflect(?:s|ing)? (?:the |all the )?(?:sky|light|sun)",
            r"(?:rocks?|stones?|slabs?|leaves|boulders?)(?: (?!stop\w*|not?\b|\w+n't|never|less"
            r"|until|till)[\w']+){0,3}"
            r" (?:shin(?:e|es|ing|y)|gloss\w*|mirrors?)",
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
            r"(?:kinda|kind of|sort of|a bit|bit|rather|very|quite|weirdly|strangely"
            rf"|horribly) {_BLUE}"
            r"(?! (?:sky|skies|hour|jacket|light))",
            r"smurf\w*|blue-?ish|bluey",
            rf"colou?rs? (?:are |is |look |looks |came out |too |very |rather |a bit |all )*"
            rf"(?:cold|cool|{_BLUE})(?! hour)",
            rf"(?:too|so|everything|it|{LOOKS}) (?:\w+ )?{_BLUE}(?! (?:sky|hour))",
        ),
    ),
    (
        Symptom.LEANING,
        any_of(
            rf"{_UPRIGHT}\b(?: \w+){{0,3}} "
            r"(?:lean\w*|tilt\w*|tip\w*|converg\w*"
            r"|fall(?:s|ing)? (?:over|back\w*|inwards?|in(?=$|[,.;])))",
            rf"{_UPRIGHT}\b[^.;,!?]{{0,24}} (?:lean(?:s|ing)?|inclin\w*|slant\w*|tip(?:s|ping)?"
            r"|converg\w*)",
            rf"{_UPRIGHT}\b[^.;,!?]{{0,24}} (?:bent|bend|bending|fall|falling|go|going|point"
            r"|pointing)"
            r" (?:all |in )?(?:to|towards?) (?:the )?(?:inside|middle|cent(?:er|re)|each other)",
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
            r"(?! (?:stream|creek|brook|steps?|fall|bit|cascade|waterfall|aperture|f))"
            r"(?=\W*$|[,.;!?]| (?:in|on|for|compared|and|but|to see|now|here|at|from|with|even"
            r"|there|again)\b)",
            r"(?:is|it's|its|just|'s) an? (?:tiny|small|little) (?:thing|dot|speck|strip|line"
            r"|thread)",
            r"(?:falls?|waterfall|it)(?:'s)?(?: is| looks?| comes out| came out| ends up| seems)?"
            r"(?: (?:too|so|very|really|much too|way too|far too|rather|quite|just|only))*"
            r" (?:puny|titchy|teeny\w*|minute(?=$|[,.;!]| in)|insignificant|too little(?! water)"
            r"|weeny)",
            r"(?:only|just|like|merely|no more than) an? (?:tiny |little |small )?(?:speck|dot"
            r"|matchstick|thread)"
            r" in (?:the|my|it)",
            r"tiny (?:water)?fall in|dwarf(?:ed)?|(?:matchstick|toothpick|pinhead|speck"
            r"|postage stamp)",
            r"(?:barely|hardly|can't) (?:even )?(?:see|find|spot) (?:the |it|my )(?:fall"
            r"|waterfall|in the)",
            r"(?:much|far|way|all|so) too (?:small|tiny|little)(?= |$|[,.;!])(?! aperture)",
            r"lost in the (?:frame|picture|scene)|(?:water)?falls? (?:\w+ )?(?:got|gets|is) lost",
        ),
    ),
)
