"""The many words for water that went wrong in a frame: mush, bare white, ice."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.phrases import any_of

LOOKS: Final = (
    r"(?:looks?|is|are|it's|its|came out|comes out|still|all|water|water's|turned|gone|went)"
)
FAR: Final = r"(?:way|far|well|miles|totally|completely|badly|massively)"
ENDS: Final = r"(?= ?(?:$|[,.;:!?]|(?:and|but|even|still|again|here|now)\b))"
_MUSH: Final = (
    r"(?:fog|mist|cloud|clouds|wool|fleece|smoke|steam|vapou?r|cotton|yogh?urt|pudding|rice"
    r" pudding|toothpaste|glue|smoothie|ice ?cream|mayo\w*|marshmallow|slime|dishwater|sludge|jelly"
    r"|batter|cream|foam|haze|smudge|smear|felt|sugar ?floss)"
)

WATER_COMPLAINTS: Final = (
    (
        Symptom.NO_TEXTURE,
        any_of(
            r"mush|soup|soupy|candy ?floss|milk|porridge|gloopy?|goopy|gooey|treacle"
            r"|(?:(?<!y )like|just|all|into|to|of"
            r"|looks?|turned)(?: \w+)? fog|gruel|yoghurt|custard",
            "whipped cream",
            r"(?:looks?|look|went|gone|turned|turns|it's|its|becomes?|became|more|comes out"
            r"|came out)"
            rf" (?:\w+ )?(?:like|into|to|as) (?:an? |some |one |thick )*(?:\w+ )?{_MUSH}",
            r"(?:water|fall|drop)(?:'s| is| looks| went| goes| came out)?"
            r"(?: (?:way|far|much|so|just|all|a bit|very|really|quite))* (?:too|over|overly|so)"
            r" (?:blurr\w+|smooth|smeared|creamy|silky|soft)",
            r"(?:gone|went|turned) (?:all |so |too |a bit )?(?:foggy|misty|milky|soupy"
            r"|creamy)(?! (?:up|over|lens|glass))",
            r"(?:can't|cannot|can not|don't|couldn't) see (?:any|the|a single) (?:strands?|threads?"
            r"|lines?|structure|texture)",
            r"(?:no|lost|without|zero|lacks?|losing|any|little) (?:any |all |its )?(?:definition"
            r"|character|shape)(?: (?:in|to) (?:the water|the fall|it)| left)?",
            r"(?:shaving|bath) foam|marshmallow|(?:like|into|to|just|all|went) (?:steam|smoke"
            r"|cream)",
            r"(?:it|it's|its|looks?|all|everything|water|just|so) (?:\w+ )?mushy",
            r"shutter_s (?:is |was |it's )?(?:\w+ ){0,2}too long",
            r"(?:exposure|time|shutter)(?: is| was|'s)? (?:\w+ )?too long",
            r"cotton(?: wool| candy|$|(?=[,.!;]))",
            "like cotton",
            r"(?:no|lost|without|zero|lacks?|losing|any|little) (?:any |all |its )?"
            r"(?:texture|structure|strands|(?:lines|detail) in the (?:water|fall))",
            r"too (?:silky|smooth|misty|soft and white|milky|creamy)",
            r"(?:looks|is|it's|so|all|just) (?:\w+ )?milky(?! white)",
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
            r"(?:everything|all of (?:it|them)|it all|(?:pictures?|photos?|frames?|shots?|images?"
            r"|pics?|screen))(?:'s| is| was| came out| comes out| turned out| looks)"
            r"(?: (?:nearly|almost|mostly|practically|basically|just|so|very|all))* white"
            r"(?! (?:sky|balance|water))",
            r"(?:burn(?:ed|t)|blown|milky) (?:to )?white",
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
            r"(?:foam|whites?|highlights?|water|falls?)(?:'s| has| have| is| are)?(?: all|"
            r" totally)*"
            r" (?:lost|without|losing) (?:all|any|every|its|their|the)(?: \w+)? (?:detail|drawing"
            r"|tone)",
            "whited out|bleached|blank white|white and (?:flat|empty|blank)",
            r"(?:burn(?:ed|t)|nuked|fried|cooked|torched|bleached) (?:in|on) the (?:water|fall"
            r"|white)s?",
            r"(?:water|fall|drop|waterfall|whites?|foam|highlights?)(?:'s| is| are| has| have"
            r"| got)?"
            r" (?:all |just |completely |totally )*(?:burn(?:ed|t)|nuked|fried|white out|torched)",
            r"white(?:,| and)? (?:no|without(?: any)?|zero) (?:texture|structure|detail)s?",
            r"white as (?:a |the )?(?:sheets?|snow|paper|chalk|bone|milk|wall)",
            r"(?:all|only thing) i (?:get|see) is white",
            r"like (?:a |an )?(?:blank|white|sheet of|piece of|printer|copy)(?: (?:of|white))?"
            r" ?(?:sheets?|paper|towel|wall)",
            rf"{FAR} over{ENDS}",
        ),
    ),
    (
        Symptom.TOO_FROZEN,
        any_of(
            r"too (?:frozen|crunchy|hard|crisp|sharp|static|spiky|stiff|choppy|jagged|defined)",
            r"like (?:an? )?(?:\w+ )?(?:statues?|sculptures?|stone|concrete|marble|freeze[ -]frame"
            r"|icicles?|plastic|wax)(?! (?:steps?|wall|bridge))",
            r"(?:drops?|droplets|splashes|water|it)(?:'s| is| are| look| looks| hang| hangs)?"
            r" (?:\w+ )?(?:stopped|stuck|hanging|suspended|pinned|glued|caught|frozen|nailed) "
            r"(?:in (?:the )?(?:mid ?-?)?air|dead|solid|in place)",
            r"no (?:sense|feeling|feel|impression) of (?:motion|movement|flow)",
            r"doesn't (?:look like it(?:'s| is)? )?(?:flow|mov|run)(?:e|s|ing)?(?: at all)?",
            rf"{LOOKS} (?:\w+ )?frozen|waters? (?:\w+ )?frozen(?: ?-?ish)?(?=\W*$|[,.;])",
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
            r"(?:water )?(?:isn't|is not|not|wasn't|doesn't look|didn't (?:go|get|turn|come out))"
            r" (?:really |very |so |that |all |any )*(?:foggy|misty|silky|smooth|milky|dreamy"
            r"|creamy"
            r"|blurred|like (?:silk|fog|mist))(?: (?:at all|enough|yet))?",
            r"(?:drops?|water|it|everything|droplets)(?: \w+){0,2} stands? still",
            r"no (?:motion|movement|flow)",
        ),
    ),
)
