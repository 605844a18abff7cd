"""Complaints of a frame that was taken, in the many words that people find for them."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Symptom
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import any_of, exactly

_NEAR_PART: Final = (
    r"(?:foreground|front(?! glass)|near(?:est)? \w+|closest \w+|\w+ (?:at|by) my feet|(?:close|near) (?:stuff|things|bits)|stuff (?:up close|in front)"
    r"|(?:rocks?|stones?|boulders?|logs?|moss) in front(?: of me)?|first (?:rock|stone|boulder)"
    r"|bottom(?: of the (?:frame|picture))?|near end|close by)"
)
_FAR_PART: Final = (
    r"(?:back(?:ground)?|far(?: \w+)?|distance|(?:water)?falls?(?: itself)?|rear|back wall"
    r"|trees behind|corners)"
)
#: The lower corners hold the foreground, all others what lies far.
_LOW_CORNERS: Final = re.compile(r"\b(?:bottom|lower)(?: left| right)? corners?\b")
_ALL_PART: Final = (
    r"(?:everything|all(?: of it)?|it all|whole \w+|entire \w+"
    r"|the (?:picture|frame|photo|image|shot)|pictures?|photos?|shots?|it's|its|it is|overall)"
)
_SOFT_FRAME: Final = (
    r"(?:soft|blurr?y|blurred|out of focus|unsharp|(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp)"
    r"|fuzzy|shaky|shaken)"
)
#: A mushy rock is soft, a mushy frame of water has lost its texture.
_SOFT: Final = rf"(?:{_SOFT_FRAME}|mushy)"
#: "Soft light in the corners" is no complaint.
_SOFT_AT: Final = rf"{_SOFT}(?: (?!light|shadows?|vignett)\w+)? (?:at|in|on|towards)"
#: Between a part and its fault; "the corners are not soft" is no fault.
_FILL: Final = r"(?:\s+(?!(?:and|but|no|not|never|\w+n't)\b)[\w']+){0,4}?\s+"
_LEAF: Final = (
    r"(?:leaves|bush(?:es)?|greenery|leaf|foliage|ferns?|branches|twigs|trees|grass|plants)"
)
_LOOKS: Final = (
    r"(?:looks?|is|are|it's|its|came out|comes out|still|all|water|water's|turned|gone|went)"
)
#: "Everything is way over": without a number of stops, at the end of its clause.
_FAR: Final = r"(?:way|far|well|miles|totally|completely|badly|massively)"
_ENDS: Final = r"(?= ?(?:$|[,.;:!?]|(?:and|but|even|still|again|here|now)\b))"
_BLUE: Final = r"(?:blue|bluish|blueish|purple|purplish|magenta|violet)"
_ROCK: Final = r"(?:dark (?:bits|parts|areas|spots)|pools?|rocks?|shadows?|stones?|walls?|cliffs?|boulders?|corners?)"
_HAZY_SPOT: Final = r"(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|hazy|milky)"
_UPRIGHT: Final = (
    r"(?:walls?|trunks?|trees?|cliffs?|sides?|verticals|lines|rocks?|everything|falls?|waterfall)"
)

_COMPLAINTS: Final = (
    (
        Symptom.NO_TEXTURE,
        any_of(
            r"mush|soup|soupy|candy ?floss|milk|porridge|(?:(?<!y )like|just|all|into|to|of"
            r"|looks?|turned)(?: \w+)? fog|gruel|yoghurt|custard",
            "whipped cream",
            r"(?:shaving|bath) foam|marshmallow|(?:like|into|to|just) (?:steam|smoke|cream)",
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
            r"featureless|no (?:lines|strands|threads|structure|shape)(?: \w+)?(?: in it| left| at all)?",
            r"(?:smooth|white|formless|shapeless|big) (?:blur|mush|smear|goo|paste)|just a blur",
            r"(?:mashed|blancmange|goo|slush|foam bath|paste)(?= |$|[,.;!])|like (?:a )?(?:cloud|wool|paint)",
            r"over-?smooth\w*|(?:way |far |much )too (?:blurred|blurry|soft) (?:in )?the water",
            r"water (?:is |looks |'s )?(?:just |too )?(?:a )?(?:smooth|white) (?:blur|sheet of milk)",
            r"texture(?:'s| is| has)? (?:gone|lost|vanished)",
            r"smeared water|water (?:is |looks )?(?:all )?smeared",
        ),
    ),
    (
        Symptom.JUST_WHITE,
        any_of(
            r"(?:just|only|all|pure|plain|one|simply|completely|totally|too) white(?! (?:smear|blur|mush|fog|soup|balance))",
            r"washed[ -]?out(?! (?:greens?|colou?rs?|leaves|bridge|road|trail|path))",
            r"like an? (?:\w+ )?white (?:wall|curtain|block)",
            r"white (?:sheet|blob|mass|hole|nothing|paper|slab|patch without)|nothing but white|chalk\w* white",
            r"(?:paper|chalk|snow|bright|bleach) white|no (?:detail|drawing|information) (?:\w+ )?in the white",
            r"(?<!highlights )(?<!highlights are )(?<!whites )(?:blown|burnt|burned)[ -]?out",
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
            r"like (?:\w+ (?:of )?)?(?:ice|icicles|glass|plastic|needles|shards|splinters|gravel|salt"
            r"|crystals?|popcorn|beads|hail)",
            r"(?:shattered|broken|chopped|crushed|cracked) (?:glass|ice)|frozen (?:solid|stiff)",
            r"(?:way|much|far|so|all|really|very) (?:hard|harsh|jagged|brittle|spiky|crispy)(?! (?:light|sun|to"
            r"|on|for|rain|climb|walk|path|work))",
            r"(?:each|every) (?:single )?(?:drop|droplet) (?:\w+ )?(?:stands|hangs|stuck|frozen|nailed|stopped)",
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
            r"(?! (?:forest|gorge|canyon|in here))|dark by (?=\d|change)",
            "under-?exposed|too dim|murky",
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
            rf"{_LEAF}\b(?: [\w']+){{0,5}} "
            r"(?:smear\w*|blurr?\w*|fuzzy|smudg\w*|soft|doubled?|streak\w*)",
            rf"{_LEAF}\b[^.;]{{0,25}} a blur",
            rf"(?:smeared|blurr?y|blurred|fuzzy|smudged) (?:\w+ )?{_LEAF}",
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
            rf"(?:picture|photo|frame|image|shot|everything|whole thing)(?:'s)? (?:\w+ ){{0,2}}{_BLUE}"
            r"(?! (?:sky|hour))",
            rf"(?:cold|{_BLUE})[ -](?:cast|tint|tinge|hue|tone)(?:ed)?",
            rf"(?:tinted|tinged|gone|turned) {_BLUE}|(?:looks|came out|picture is|all|way) (?:too )?cold(?! out)"
            r"(?= (?:in colou?r|and blue)|$|[,.;])",
            rf"{_BLUE} (?:all over|everywhere|as)",
            rf"(?:too|so|everything|it|{_LOOKS}) (?:\w+ )?{_BLUE}(?! (?:sky|hour))",
        ),
    ),
    (
        Symptom.LEANING,
        any_of(
            rf"{_UPRIGHT}\b(?: \w+){{0,3}} "
            r"(?:lean\w*|tilt\w*|tip\w*|converg\w*|fall\w* (?:over|back\w*|inwards?))",
            r"(?:leaning|converging|tilting|tilted) "
            r"(?:walls?|trunks?|trees|cliffs?|verticals|lines)",
            r"(?:bend|bending|lean|leaning|tilt) (?:inwards?|in|towards? each other)",
            r"keystone\w*|like a pyramid",
            rf"{_UPRIGHT}\b(?: \w+){{0,3}} (?:bend\w*|bow\w*|slop\w*) (?:in|inwards?|back\w*|together)",
        ),
    ),
    (
        Symptom.TOO_SMALL,
        any_of(
            r"(?:looks?|is|fall|falls|waterfall|so|too|it's|comes out|way) "
            r"(?:(?!an?\b)\w+ )?(?:tiny|small)"
            r"(?! (?:stream|creek|brook|steps?|fall|bit|cascade|waterfall|aperture|f))",
            r"(?:is|it's|its|just|'s) an? (?:tiny|small|little) (?:thing|dot|speck|strip|line|thread)",
            r"tiny (?:water)?fall in|dwarf(?:ed)?|(?:matchstick|toothpick|pinhead|speck|postage stamp)",
            r"(?:barely|hardly|can't) (?:even )?(?:see|find|spot) (?:the |it|my )(?:fall|waterfall|in the)",
            r"(?:much|far|way|all|so) too (?:small|tiny|little)(?= |$|[,.;!])(?! aperture)",
            r"lost in the (?:frame|picture|scene)|(?:water)?falls? (?:\w+ )?(?:got|gets|is) lost",
        ),
    ),
)
_CLAUSE_ENDS: Final = r"(?=\W*$|[,.;!?])"
_SOFTNESS: Final = (
    (
        Symptom.SOFT_NEAR,
        any_of(
            rf"{_NEAR_PART}\b(?:{_FILL}|\s+){_SOFT}",
            rf"(?:{_SOFT_AT}|{_SOFT} near) (?:the )?{_NEAR_PART}",
            rf"{_SOFT} {_NEAR_PART}",
            rf"only (?:the )?{_FAR_PART} (?:is|are|was|were|came out) (?:sharp|crisp|in focus)",
            rf"(?:sharp|crisp)\b[^.;]{{0,12}}[,.;]? (?:but |and )?(?:the |my )?{_NEAR_PART}"
            rf" (?:isn't|is not|not|aren't|are not){_CLAUSE_ENDS}",
        ),
    ),
    (
        Symptom.SOFT_FAR,
        any_of(
            rf"{_FAR_PART}\b(?:{_FILL}|\s+){_SOFT}",
            rf"{_SOFT_AT} (?:(?:the|all|both|top|upper) )*{_FAR_PART}",
            rf"{_SOFT} {_FAR_PART}",
            rf"only (?:the )?{_NEAR_PART} (?:is|are|was|were|came out) (?:sharp|crisp|in focus)",
            rf"(?:sharp|crisp)\b[^.;]{{0,12}}[,.;]? (?:but |and )?(?:the |my )?{_FAR_PART}"
            rf" (?:isn't|is not|not|aren't|are not){_CLAUSE_ENDS}",
        ),
    ),
    (
        Symptom.SOFT_ALL,
        any_of(
            rf"{_ALL_PART}\b(?:{_FILL}|\s+){_SOFT_FRAME}",
            rf"{_SOFT} (?:all over|everywhere|overall)",
            r"(?:camera|see|got|is|some) ?shake|tripod(?:'s| is| was)? (?:\w+ )?(?:shaky|wobbl\w+)",
            r"nothing(?: is|'s)? (?:\w+ )?sharp|sharp nowhere",
            r"(?:not|isn't|aren't) (?:\w+ )?(?:sharp|crisp) (?:anywhere|at all)",
            r"(?:blurr?y|unsharp|out of focus|fuzzy) (?:shots?|pictures?|photos?|frames?|images?)",
        ),
    ),
)
_ALL_SOFT: Final = exactly(
    rf"(?:a bit |bit |all |quite |very |still )*{_SOFT}(?: pictures?| again)?"
)
_DENIED: Final = re.compile(
    r"\b(?:no|not|isn't|aren't|without|doesn't|don't|never|no more|nothing|any|less|avoid|if)"
    r"(?: (?:too|really|look|looks|it|that|so|more|\w+ing))*,? ?$"
)
#: These hold a "no" of their own: "no texture", "no motion".
_OWN_DENIAL: Final = re.compile(r"(?:no|without|any)\b")
#: Words of a complaint that are a wish when somebody asks for them.
_WISHABLE: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})
_WISH: Final = any_of(
    "want|wanted|like to|i'd like|id like|love|prefer|make it|please|go for|going for|aim|after"
    "|get|look for|looking for"
)
_PLAIN_COMPLAINT: Final = any_of("too|mush|soup|cotton wool|lost|looks|came out|like ice")
#: "Dense forest, pretty dark" is the place; these are the frame.
_FRAME_DARK: Final = any_of("too (?:dark|dim)", "under-?exposed")


def _holds(symptom: Symptom, pattern: re.Pattern[str], text: str) -> bool:
    return any(
        (symptom in _WISHABLE and _OWN_DENIAL.match(match.group()))
        or not _DENIED.search(text[: match.start()])
        for match in pattern.finditer(text)
        if symptom not in _WISHABLE or not _is_wished(text, match)
    )


#: "Water frozen solid but i wanted silk": what stands behind the "but" is the wish.
_BUT: Final = re.compile(
    r"\bbut\b|\bthough\b|[,;.] ?(?:and )?i(?:'d| would)? (?:really )?(?:want|wanted|prefer|like|rather)\b"
)


def _is_wished(text: str, match: re.Match[str]) -> bool:
    """Whether words of a complaint are what the person asks for."""
    if _PLAIN_COMPLAINT.search(text):
        return False
    parted = _BUT.search(text, match.end())
    return bool(_WISH.search(text[: parted.start()] if parted else text))


def _softness(text: str) -> list[Symptom]:
    """Where the frame is soft; all of it only when no part is named."""
    text = _LOW_CORNERS.sub("foreground", text)
    parts = [symptom for symptom, pattern in _SOFTNESS if _holds(symptom, pattern, text)]
    if not parts and _ALL_SOFT.match(text):
        return [Symptom.SOFT_ALL]
    if len(parts) > 1 and Symptom.SOFT_ALL in parts:
        parts.remove(Symptom.SOFT_ALL)
    return parts


#: "The sun's a pale disc" is the sky; "is 1/4 too long?" asks; "ferns up close" are the front.
_NO_FAULT: Final = re.compile(
    r"\b(?:sun|moon)(?:'s| is| like)?(?: just| only)? an? (?:\w+ ){0,2}dis[ck]\b"
    r"|(?:^|[.;!,] ?)(?:is|are|would|will|isn't|won't) (?:it |that |this )?(?:\w+ ){0,2}?"
    r"(?:shutter_s|f_number|iso|that|it|this) (?:be )?too \w+(?=[^.;!]*\?)"
)
_MUSHY_LEAVES: Final = re.compile(rf"\b({_LEAF}) (?:(?:are|is|all|just|went|turned|to|look) )*mush\w*\b")
_MOVED: Final = re.compile(r"\b(?:smear\w*|smudg\w*|streak\w*|moved|moving|wind\w*|doubled?)\b")
_FAR_LEAVES: Final = re.compile(
    rf"\b{_LEAF} (?:behind(?: (?:it|the falls?))?|at the back|in the (?:back|background|distance))\b"
)
_CLOSE_LEAVES: Final = re.compile(
    rf"\b{_LEAF} (?:up close|up front|close (?:by|up|to me)|in front|at the front|nearest(?: me)?"
    r"|next to me|in the foreground|at my feet)\b"
)


def read_symptoms(draft: Draft) -> None:
    """Complaints of a frame, each once, in the order of their table."""
    text = _MUSHY_LEAVES.sub(r"\1 smeared", _NO_FAULT.sub("", draft.skeleton()))
    found = [symptom for symptom, pattern in _COMPLAINTS if _holds(symptom, pattern, text)]
    if "light" in draft.values and not _FRAME_DARK.search(text):
        found = [symptom for symptom in found if symptom is not Symptom.TOO_DARK]
    if Symptom.LEAVES_SMEARED in found and _CLOSE_LEAVES.search(text) and not _MOVED.search(text):
        found.remove(Symptom.LEAVES_SMEARED)
        text = _CLOSE_LEAVES.sub("foreground", text)
    if Symptom.LEAVES_SMEARED in found and _FAR_LEAVES.search(text) and not _MOVED.search(text):
        found.remove(Symptom.LEAVES_SMEARED)
        text = _FAR_LEAVES.sub("background", text)
    if not {Symptom.SOFT_SPOTS, Symptom.LEAVES_SMEARED} & set(found):
        found += _softness(text)
    if found:
        draft.note("symptoms", tuple(found))
