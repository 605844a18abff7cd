"""What is seen: light, what blinks, what is wrong in the frame that was taken."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Blink, Symptom
from bot.dialogue.reading.draft import Draft

#: Light words, the most enclosed first: "overcast, under the trees" is the light under trees.
_LIGHTS: Final = tuple(
    (key, re.compile(pattern))
    for key, pattern in (
        (
            "after sunset",
            r"\b(?:after|past) sunset\b|\bsun(?:'s| has| is)? (?:just )?(?:set|gone down)\b",
        ),
        ("dusk", r"\bdusk\b|\btwilight\b|\bblue hour\b|\b(?:getting|nearly|almost) (?:dark|night)\b"),
        (
            "deep slot",
            r"\bslot(?: canyon)?\b(?!s)|\b(?:deep|narrow|dark) (?:canyon|gorge|ravine|slot|cleft)\b",
        ),
        (
            "dense canopy",
            r"\b(?:dense|thick|deep|dark) (?:\w+ )?(?:forest|canopy|woods?|trees|jungle)\b",
        ),
        (
            "wooded gorge",
            r"\b(?:wooded|forested|leafy) (?:gorge|canyon|ravine|valley)\b"
            r"|\bgorge (?:with|full of|under) trees\b",
        ),
        (
            "light canopy",
            r"\b(?:under|beneath|below|through) (?:\w+ )?(?:\w+ )?(?:trees|canopy|leaves|branches|beech(?:es)?|oaks?|pines?|firs?|spruces?|birch(?:es)?|maples?)\b"
            r"|\b(?:light|thin|open) (?:canopy|woods?|forest)\b|\bin the (?:woods|forest|trees)\b",
        ),
        (
            "open gorge",
            r"\b(?:open|wide|treeless) (?:gorge|canyon|ravine)\b"
            r"|\b(?:in|inside) (?:a|the) (?:gorge|canyon|ravine)\b|\b(?:gorge|canyon|ravine)\b(?! (?:wall|side|rim))",
        ),
        (
            "before sunset",
            r"\bgolden (?:hour|light)\b|\b(?:evening|low|late) sun\b|\bbefore sunset\b",
        ),
        ("sunset", r"\bat sunset\b(?! ?\d)|\blast sun\b|\bsun (?:is )?(?:just )?setting\b"),
        (
            "hazy sun",
            r"\bsun(?:'s| is)? (?:behind|through|under) (?:\w+ )?(?:clouds?|haze|veil)\b|\bhaz[ey]\w*\b|\bsun through (?:thin )?cloud|\bveiled sun\b|\bweak sun\b",
        ),
        (
            "bright cloud",
            r"\b(?:thin|bright|high|light|white) (?:\w+ )?(?:clouds?|overcast)\b|\bbright(?:ly)? overcast\b"
            r"|\bcloudy(?:,)? (?:but )?bright\b|\bno shadows\b",
        ),
        (
            "open shade",
            r"\b(?:open|in|full|all in|deep) (?:the )?(?:shade|shadow)\b|\bshaded\b|\bshady\b",
        ),
        (
            "overcast",
            r"\bovercast\b|\bcloudy\b|\bgr[ea]y (?:sky|skies|day)\b|\bclouds? cover\w*\b|\bheavy cloud\w*\b"
            r"|\b(?:light|steady|soft|bit of) rain\b|\blow clouds?\b|\bdrizzl\w+\b|\brain(?:y|ing)\b",
        ),
        (
            "full sun",
            r"\b(?:full|bright|direct|hard|harsh|blazing|strong|midday|noon) (?:sun\w*|light)\b|\bsunny\b"
            r"|\bsunshine\b|\bin (?:the )?sun\b(?!set)|\bsun(?:light)?(?: is|'s)? (?:right |directly |straight |shining |falling )?(?:on|hits|hitting) (?:it|the|this)\b|\bno clouds?\b",
        ),
    )
)
#: "White balance cloudy" is a setting of colour.
_WHITE_BALANCE: Final = re.compile(r"\bwhite balance\b|\bwb\b|\bkelvin\b|\bpreset\b")
#: A clear sky is sun only where nothing says shade.
_CLEAR_SKY: Final = re.compile(r"\b(?:clear|blue) sk(?:y|ies)\b|\bcloudless\b")
_SUNLIT: Final = frozenset({"full sun", "hazy sun", "before sunset", "sunset"})
_SHADED: Final = frozenset(
    {"open shade", "light canopy", "open gorge", "wooded gorge", "deep slot", "dense canopy"}
)
_NO_LIGHT: Final = re.compile(
    r"\b(?:no|not|isn't|without|until|wait for|forecast|tomorrow|yesterday)(?: \w+)? ?$"
)


def read_light(draft: Draft) -> None:
    """The light by its words; sun and shade together are no single light and stay unsaid."""
    found: list[str] = []
    lights = () if _WHITE_BALANCE.search(draft.text) else _LIGHTS
    for key, pattern in lights:
        match = pattern.search(draft.text)
        if match and not _NO_LIGHT.search(draft.text[: match.start()]):
            found.append(key)
    if not found and lights and _CLEAR_SKY.search(draft.text):
        found = ["full sun"]
    if found and not (set(found) & _SUNLIT and set(found) & _SHADED):
        draft.note("light", found[0])


_BLINK: Final = (
    r"(?:blink\w*|flash(?:es|ing)|(?<=water )flash|zebras?|clipp\w*(?! (?:on|to))"
    r"|(?:highlights?|whites?|foam|water|falls?|it|it's|sky) (?:\w+ )?blown|blown[ -](?:out|highlights?"
    r"|whites?|water)|highlight warnings?|warnings? (?:off|gone|shows?|light)|(?<=no )warnings?)"
)
_BLINKS: Final = re.compile(rf"\b{_BLINK}\b")
_HISTOGRAM: Final = re.compile(r"\b(?:histograms?|histos?|hist|graphs?|curve)\b")
_BLINK_NOTHING: Final = re.compile(
    rf"\b(?:nothing|none|no|not|isn't|doesn't|stopped|without|never|zero)\b[^,;.]{{0,22}}\b{_BLINK}"
    rf"|\b{_BLINK} (?:is |are |all |now )*(?:gone|off|stopped|none|away)\b"
    r"|\b(?:no|zero) (?:warnings?|blinkies|zebras?)\b|\bwarnings? (?:is |are )?(?:off|gone)\b"
)
_SKY: Final = re.compile(r"\bsky\b|\bgap (?:at|in) the top\b|\bskylight\b")
_DOTS: Final = re.compile(
    r"\b(?:dots?|specks?|sparkles?|points?|pixels?|pinpricks?|spots?|glints?|tiny bits?|speckles?)\b"
)
_SHEET: Final = re.compile(
    r"\b(?:whole|all(?: of)?|entire|everything|complete\w*|everywhere|full) ?(?:the |it\b)?"
)
_PATCHES: Final = re.compile(r"\b(?:patch\w*|blobs?|parts?|areas?|bits of|some of|half)\b")
_BARE_BLINK: Final = (
    (Blink.NOTHING, re.compile(r"^(?:no|none|nothing|nope|not any ?more|nothing at all)$")),
    (
        Blink.DOTS,
        re.compile(r"^(?:only |just |a few |some )*(?:dots?|specks?|sparkles?|points?)(?: only)?$"),
    ),
    (
        Blink.PATCHES,
        re.compile(
            r"^(?:some |a few |big |only |just )*(?:patch|patches|areas?)(?: in the water)?$"
        ),
    ),
    (Blink.SHEET, re.compile(r"^(?:everything|all of it|all|the whole (?:thing|fall)|the lot)$")),
    (Blink.SKY, re.compile(r"^(?:only |just )*(?:the )?sky(?: only)?$")),
)
_KINDS: Final = (
    (Blink.SKY, _SKY),
    (Blink.DOTS, _DOTS),
    (Blink.PATCHES, _PATCHES),
    (Blink.SHEET, _SHEET),
)


def read_blink(draft: Draft) -> None:
    """What the camera's warning shows; a warning without a size is taken as patches."""
    text = draft.text
    bare = next((kind for kind, pattern in _BARE_BLINK if pattern.match(text)), None)
    if bare and ("blink" in draft.expecting or bare is Blink.DOTS):
        draft.note("blink", bare)
        return
    if re.match(r"^(?:just|only|a few) (?:dots|sparkles|specks)\b", text):
        draft.note("blink", Blink.DOTS)
        return
    if not _BLINKS.search(text) or _HISTOGRAM.search(text):
        return
    nothing = _BLINK_NOTHING.search(text)
    kinds = (kind for kind, pattern in _KINDS if pattern.search(text))
    draft.note("blink", Blink.NOTHING if nothing else next(kinds, Blink.PATCHES))


_RIGHT: Final = re.compile(r"\bright(?:[ -]?hand)?(?: (?:edge|side|border|end|wall))?\b")
_NOT_RIGHT: Final = re.compile(
    r"\b(?:doesn't|does not|not|isn't|no longer|stops|stop|short|before|well|gap|room|space|away|free|clear)\b"
)


def read_histogram(draft: Draft) -> None:
    """Whether the histogram reaches its right-hand edge."""
    if _HISTOGRAM.search(draft.text) and _RIGHT.search(draft.text):
        draft.note("histogram_at_right", value=_NOT_RIGHT.search(draft.text) is None)


_NEAR_PART: Final = (
    r"(?:foreground|front(?! glass)|near(?:est)? (?:\w+)|closest (?:\w+)|first (?:rock|stone|boulder)"
    r"|bottom(?: of the (?:frame|picture))?|near end)"
)
_FAR_PART: Final = r"(?:back(?:ground)?|far(?: \w+)?|distance|(?:water)?falls?(?: itself)?|rear|back wall|trees behind)"
_ALL_PART: Final = (
    r"(?:everything|all(?: of it)?|it all|whole (?:\w+)|entire (?:\w+)|the (?:picture|frame|photo|image|shot)"
    r"|pictures?|it's|its|it is|overall)"
)
_SOFT: Final = r"(?:soft|blurr?y|blurred|out of focus|unsharp|not (?:quite |really )?sharp|isn't (?:quite )?sharp|fuzzy|mushy sharp|shaky|shaken)"
_FILL: Final = r"(?:\s+(?!and\b|but\b)[\w']+){0,4}?\s+"
_LEAF: Final = (
    r"(?:leaves|bush(?:es)?|greenery|leaf|foliage|ferns?|branches|twigs|trees|grass|plants)"
)

#: Complaints in their many wordings. `mess`: holds also with a "no" in front of it.
_SYMPTOMS: Final = tuple(
    (symptom, re.compile(pattern))
    for symptom, pattern in (
        (
            Symptom.NO_TEXTURE,
            r"\b(?:mush|soup|soupy|cotton(?: wool| candy|$|(?=[,.!;]))|like cotton|candy ?floss|milk|porridge|fog)\b"
            r"|\b(?:no|lost|without|zero|lacks?|losing|any|little) (?:any )?(?:texture|structure|strands|lines in the (?:water|fall)|detail in the (?:water|fall))\b"
            r"|\btoo (?:silky|smooth|misty|soft and white|milky|blurr?y water|creamy)\b|\b(?:looks|is|it's|so|all|just) (?:\w+ )?milky\b"
            r"|\bwater (?:\w+ )?(?:mushy|featureless|mush)\b|\bfeatureless\b|\btexture (?:is |has )?(?:gone|lost)\b",
        ),
        (
            Symptom.JUST_WHITE,
            r"\b(?:just|only|all|pure|plain|one|simply|completely|totally|too) white\b|\bwashed[ -]?out\b(?! (?:bridge|road|trail|path))|\bwhite (?:sheet|blob|mass|patch of nothing|hole)\b"
            r"|\bwhited out\b|\bbleached\b",
        ),
        (
            Symptom.TOO_FROZEN,
            r"\btoo (?:frozen|crunchy|hard|crisp|sharp|static|spiky)\b|\b(?:looks?|is|came out|it's|comes out|still|all|water) (?:\w+ )?frozen\b"
            r"|\blooks? (?:stuck|static|stiff)\b|\blike (?:ice|glass|plastic)\b|\bcrunchy\b|\b(?:drops?|water|it|everything|droplets)(?: \w+){0,2} stands? still\b|\bno (?:motion|movement|flow)\b|\bspiky\b",
        ),
        (
            Symptom.TOO_BRIGHT,
            r"(?<!sky )(?<!sky is )(?<!sky's )\b(?:too|way|much too|bit too|bit|little|rather) (?:bright|light and)\b|\boverexposed\b|\btoo light\b",
        ),
        (
            Symptom.TOO_DARK,
            r"\b(?:too|way|bit|smidge|tad|touch|little|rather|pretty|really|very|so) dark\b(?! (?:forest|gorge|canyon|in here))|\bunderexposed\b|\btoo dim\b|\bmurky\b",
        ),
        (
            Symptom.BLACK_ROCK,
            r"\bblack (?:\w+ )?(?:pools?|rocks?|shadows?|holes?|areas?|stones?|corners?|walls?|bits)\b|\b(?:rocks?|pools?|shadows?|stones?|walls?) (?:\w+ ){0,2}(?:black|blocked)\b"
            r"|\bno detail in the (?:shadows?|rocks?|darks?|blacks?)\b|\bblocked(?: up)? shadows\b|\b(?:pools?|rocks?|shadows?) (?:has|have|with|without) (?:no |any )?detail\b",
        ),
        (
            Symptom.SOFT_SPOTS,
            r"\b(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|hazy) (?:\w+ )?spots?\b|\b(?:soft|round|pale|blurr?y|fuzzy|faint|ghostly|hazy|bright|white|light) (?:\w+ )?(?:discs?|disks?|circles?|blobs?|rings?|blotches)\b"
            r"|\b(?:drops?|droplets?|water|spray|spots?) (?:are |is )?on (?:the |my )?(?:front|lens|glass|filter|front (?:glass|element))\b|\bwet (?:lens|glass)\b",
        ),
        (
            Symptom.LEAVES_SMEARED,
            rf"\b{_LEAF}\b(?: \w+){{0,5}} (?:smear\w*|blurr?\w*|fuzzy|smudg\w*|soft|double|doubled|streak\w*)\b|\b(?:smeared|blurr?y|blurred|fuzzy|smudged) (?:\w+ )?{_LEAF}\b",
        ),
        (
            Symptom.GLARE,
            r"\bglare\b|\bshin(?:e|y|es|ing)\b(?! sun)|\breflections? (?:on|off|from)\b|\breflect(?:s|ing)? (?:the )?(?:sky|light)\b|\bglossy\b|\bglisten\w*\b|\b(?:like|as) (?:a )?mirrors?\b|\bmirror-?like\b|\bglint\w* (?:on|off) (?:the )?(?:rock|wet|leav)\w*",
        ),
        (
            Symptom.BLUE_CAST,
            r"\b(?:blue|bluish|purple) colou?rs?\b|\b(?:blue|purple|magenta|bluish|blueish|cold) (?:cast|tint|tinge|hue|tone)\b|\b(?:looks?|is|still|too|came out|all|so|gone|went|turned|everything|water's|it's) (?:\w+ )?(?:blue|bluish|blueish|purple|magenta)\b(?! (?:sky|hour))",
        ),
        (
            Symptom.LEANING,
            r"\b(?:walls?|trunks?|trees?|cliffs?|sides?|verticals|lines|rocks?|everything|fall)\b(?: \w+){0,3} (?:lean\w*|tilt\w*|tip\w*|converg\w*|fall\w* (?:over|back\w*|inwards?))\b|\b(?:leaning|converging|tilting|tilted) (?:walls?|trunks?|trees|cliffs?|verticals|lines)\b|\b(?:bend|bending|lean|leaning|tilt) (?:inwards?|in|towards? each other)\b|\bkeystone\w*\b",
        ),
        (
            Symptom.TOO_SMALL,
            r"\b(?:looks?|is|fall|falls|waterfall|so|too|it's|comes out|way) (?:\w+ )?(?:tiny|small)\b(?! (?:stream|creek|steps?|fall|bit|cascade|waterfall))|\btiny (?:water)?fall in\b|\blost in the (?:frame|picture|scene)\b",
        ),
    )
)
_SOFTNESS: Final = (
    (
        Symptom.SOFT_NEAR,
        re.compile(
            rf"\b{_NEAR_PART}\b(?:{_FILL}|\s+){_SOFT}\b|\b{_SOFT}(?: \w+)? (?:at|in|on|near|towards) (?:the )?{_NEAR_PART}\b|\b{_SOFT} {_NEAR_PART}\b"
        ),
    ),
    (
        Symptom.SOFT_FAR,
        re.compile(
            rf"\b{_FAR_PART}\b(?:{_FILL}|\s+){_SOFT}\b|\b{_SOFT}(?: \w+)? (?:at|in|on|towards) (?:the )?{_FAR_PART}\b|\b{_SOFT} {_FAR_PART}\b"
        ),
    ),
    (
        Symptom.SOFT_ALL,
        re.compile(
            rf"\b{_ALL_PART}\b(?:{_FILL}|\s+){_SOFT}\b|\b{_SOFT} (?:all over|everywhere|overall)\b|^(?:a bit |bit |all |quite |very |still )*{_SOFT}(?: pictures?| again)?$|\bcamera ?shake\b|\bnothing(?: is|'s)? (?:\w+ )?sharp\b"
        ),
    ),
)
_NEGATED: Final = re.compile(
    r"\b(?:no|not|isn't|aren't|without|doesn't|don't|never|no more|nothing|any|less|avoid|if)(?: (?:too|really|look|looks|it|that|so|more|\w+ing))*,? ?$"
)
_OWN_NEGATION: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})
_WISH: Final = re.compile(
    r"\b(?:want|wanted|like to|i'd like|id like|love|prefer|make it|please|go for|going for|aim|after|get|look for|looking for)\b"
)
#: Words of a complaint that are a wish when somebody asks for them.
_WISHABLE: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})
_STRONG: Final = re.compile(r"\b(?:too|mush|soup|cotton|lost|looks|came out|like ice)\b")


#: "dense forest, pretty dark" is the place; these are the frame.
_FRAME_DARK: Final = re.compile(r"\btoo (?:dark|dim)\b|\bunderexposed\b")


def _holds(symptom: Symptom, pattern: re.Pattern[str], text: str) -> bool:
    for match in pattern.finditer(text):
        before = text[: match.start()]
        if symptom in _WISHABLE and _WISH.search(text) and not _STRONG.search(text):
            continue
        own = symptom in _OWN_NEGATION and re.match(r"(?:no|without|any)\b", match.group())
        if own or not _NEGATED.search(before):
            return True
    return False


def read_symptoms(draft: Draft) -> None:
    """Complaints of a frame, each once, in the order of their table."""
    text = draft.text
    found = [symptom for symptom, pattern in _SYMPTOMS if _holds(symptom, pattern, text)]
    if "light" in draft.values and not _FRAME_DARK.search(text):
        found = [symptom for symptom in found if symptom is not Symptom.TOO_DARK]
    special = {Symptom.SOFT_SPOTS, Symptom.LEAVES_SMEARED} & set(found)
    soft = [symptom for symptom, pattern in _SOFTNESS if _holds(symptom, pattern, text)]
    if len(soft) > 1:
        soft = [symptom for symptom in soft if symptom is not Symptom.SOFT_ALL]
    if not special:
        found += soft
    if found:
        draft.note("symptoms", tuple(found))
