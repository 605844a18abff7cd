"""The light by its words: keys of the light table."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.phrases import any_of, exactly

_GORGE: Final = r"(?:canyon|gorge|ravine|chasm|gully|glen)"
_TREES: Final = (
    r"(?:trees|canopy|leaves|branches|beech(?:es)?|oaks?|pines?|firs?|spruces?|birch(?:es)?"
    r"|maples?|alders?|hemlocks?)"
)
_WOODS: Final = rf"(?:{_TREES}|woods?|forest|woodland)"
_GLOOM: Final = r"(?:gloomy|dark|dim|murky|shadowy)"
_BRIGHT_SUN: Final = (
    r"(?:sun(?:light|shine)?|sunny|blazing|bright)(?: is|'s)?(?: \w+)? (?:on|with|and|over)"
)
_SUN: Final = r"sun(?:light)?(?: is|'s| shines)?"

#: The most enclosed first: "overcast, under the trees" is the light under trees.
_LIGHTS: Final = (
    (
        "full moonlight",
        any_of(
            r"(?<!like )moon ?light|(?<!like )moonlit|full moon|by the moon|moon(?:'s"
            r"| is) (?:up and )?(?:full|bright)"
        ),
    ),
    (
        "snow in sun",
        any_of(
            rf"{_BRIGHT_SUN}\b[^.;]{{0,24}}\b(?:snow|snowfield)",
            r"snow\b[^.;]{0,24}\b(?:in (?:the |full )*sun\w*|sunlit|sunny|blinding|dazzling"
            r"|glar\w+)",
            r"sunlit (?:\w+ )?snow|snow\b[^.;]{0,24}\b(?:and|with|plus) (?:bright |full "
            r"|the )?sun\b",
        ),
    ),
    (
        "dusk",
        any_of(
            r"sun(?:'s| has| is)? (?:just |already |been )*(?:set|gone down|down)\b[^.;]{0,30}"
            r"(?:dim|dark|blue|gloomy|trees|woods|gorge)"
        ),
    ),
    (
        "after sunset",
        any_of(
            r"(?:after|past|since) (?:sunset|sundown)|afterglow|sunset (?:is over|was|has been)",
            r"sun (?:(?:just|has|already) )*(?:went down|went under|gone under"
            r"|dropped|sank|dipped|slipped)"
            r"(?! (?:at|by|around) \d)",
            r"sun(?:'s| has| is)? (?:just |already |been )*(?:set|gone down"
            r"|down(?! (?:at|by|around|behind|\d|half|quarter|five|ten|twenty)))",
        ),
    ),
    (
        "dusk",
        any_of(
            r"(?<!by )(?<!at )(?<!after )dusk|(?:now|already|it's|its|here) at dusk|twilight"
            r"|blue hour|gloaming|nightfall|last light",
            r"(?:getting|nearly|almost|half|going) (?:dark|night)"
            r"|dark(?:ness)? (?:is )?(?:falling|coming)",
            r"light(?:'s| is) (?:almost|nearly|all but) gone",
        ),
    ),
    (
        "deep slot",
        any_of(
            r"slot canyon",
            r"in (?:a|the) slot",
            rf"(?:deep|narrow|dark|tight) (?:\w+ )?(?:slot|cleft|crack|crevice|{_GORGE})",
            r"(?:crack|strip|sliver|slit|ribbon|thread) of (?:the )?sky|hardly any sky",
            r"walls(?: \w+){0,3} (?:almost|nearly) touch\w*",
        ),
    ),
    (
        "dense canopy",
        any_of(
            r"(?:dense|thick|deep|dark|closed|heavy|solid) (?:\w+ )?(?:forest|canopy|woods?|trees"
            r"|treetops|foliage|leaves|tree cover)",
            r"(?:canopy|trees|forest|woods|leaves)(?: is| are|'s)? (?:\w+ )?(?:dense|thick|closed)",
            r"jungle|rain ?forest|no sky (?:\w+ ){0,2}through (?:the )?(?:trees|leaves|canopy)",
        ),
    ),
    (
        "wooded gorge",
        any_of(
            rf"(?:wooded|forested|leafy|tree-?lined) (?:valley|{_GORGE})",
            rf"{_GORGE} (?:with|full of|under) (?:\w+ )?trees",
            rf"{_GORGE},? (?:\w+ )?trees (?:on|along|all|over|above|both)",
            rf"trees (?:over|above) the {_GORGE}",
            rf"(?:deep|right|far|well) (?:in|among|between|under|inside) (?:the )?{_WOODS}",
            rf"(?:lots of|many|full of) {_TREES}\b[^.;]{{0,20}}\b{_GLOOM}",
            rf"{_GLOOM} (?:\w+ ){{0,2}}(?:among|between|under|in) (?:the |these )?{_WOODS}",
        ),
    ),
    (
        "light canopy",
        any_of(
            rf"(?:under|beneath|below|through) (?:(?!and\b)\w+ ){{0,2}}{_TREES}",
            r"(?:light|thin|open|sparse|broken|patchy|loose) (?:canopy|woods?|forest|woodland"
            r"|tree cover)",
            r"dappled (?:shade|light)",
            r"in (?:the |a )?(?:woods?|forest|trees|woodland)",
            rf"(?:lots of|many|some|a few) {_TREES} (?:above|over|around) (?:us|me)",
            rf"{_TREES} overhead",
            rf"(?:cloud\w*|overcast|gr[ea]y)\b[^.;]{{0,24}}\b{_TREES} (?:above|over|overhead)(?: us"
            r"| me)?(?=\W*$|[,.;])",
            rf"(?:cloud\w*|overcast|gr[ea]y)\b[^.;]{{0,12}}\b(?:lots of|many) {_TREES}",
        ),
    ),
    (
        "open gorge",
        any_of(
            rf"(?:open|wide|treeless|bare|broad) {_GORGE}", rf"{_GORGE}(?! (?:walls?|side|rim))"
        ),
    ),
    (
        "before sunset",
        any_of(
            r"golden (?:hour|light)|(?:evening|low|late|warm evening) (?:sun|light)|before sunset",
            r"sun(?:'s| is)? (?:getting |quite |very |really |pretty |already )*low",
            r"(?:hour|minutes|min|bit|while) (?:or so )?(?:to|till|until|before) sunset",
        ),
    ),
    (
        "sunset",
        any_of(
            r"(?:at|during) sunset(?! ?\d)|last (?:of the )?sun|sunset (?:right )?now"
            r"|sunset (?:light|glow)",
            r"(?:it's|its|it is|now|proper|full) (?:just |right |now )*sunset(?! (?:at|in|time"
            r"|is)|,? \d)",
            r"sun(?:'s| is)? (?:just |now |right now )*(?:setting|going down)(?! (?:at|in"
            r"|around|by)|,? \d)",
            r"sun(?:'s| is| sits)? (?:\w+ )?(?:on|touching|at) the horizon",
        ),
    ),
    (
        "hazy sun",
        any_of(
            rf"{_SUN} (?:behind|through|under) (?:\w+ ){{0,2}}(?:clouds?|haze|veil|mist)",
            r"haz[ey]\w*(?! (?:blob|spot|disc|circle|ring))",
            r"(?:veiled|weak|milky|watery|pale|filtered|diffuse|soft) sun(?:light|shine)?",
            rf"{_SUN} (?:\w+ )?(?:veiled|weak|milky|watery|filtered|diffused?|a pale dis[ck])",
        ),
    ),
    (
        "bright cloud",
        any_of(
            r"(?:thin|bright|high|light|white) (?:\w+ )?(?:clouds?|overcast)",
            r"bright(?:ly)? overcast",
            r"overcast,? (?:but |and |yet )?(?:still )?(?:bright|light|luminous)",
            r"cloudy,? (?:but |and )?bright|bright,? (?:but |and )?cloudy",
            "no shadows|(?:thin|light|high) cloud cover|white sky|sky is white",
        ),
    ),
    (
        "open shade",
        any_of(
            r"(?:open|in|full|all in|deep|all) (?:the )?(?:shade|shadow)",
            r"shaded|(?:^|(?<=[.,;] ))(?:all )?(?:in )?(?:shade|shadow)(?=[.,;]|$| but\b| and\b"
            r"| with\b)",
            "shady",
            r"(?:in|under) (?:the )?(?:shade|shadow) of|no direct sun|out of the sun",
            r"(?:it's|its|fall's|fall is|everything|all|everything's|it is) (?:all "
            r"|now )?in (?:the )?sha(?:de|dow)",
            r"sun (?:hasn't|has not|doesn't|never|won't|didn't|can't"
            r"|does not) (?:yet )?(?:reach|get|come|hit)"
            r"\w*",
            r"sun(?:'s| is| has)? (?:just |now |already |all )*(?:(?:gone|left|off)(?! (?:by|at"
            r"|around|in|down|under)\b)|behind the (?:wall|hill|ridge|cliff))",
        ),
    ),
    (
        "overcast",
        any_of(
            "overcast",
            "cloudy",
            "clouded",
            r"gr[ea]y (?:sky|skies|day|clouds?)",
            r"sk(?:y|ies)(?:'s| is| are)? (?:\w+ )?gr[ea]y",
            r"clouds? cover\w*|clouding over|clouds over(?=$|[,.;?!])",
            r"cloud(?:s|ed)? (?:all over|everywhere|overhead|hanging|hang)",
            r"(?:solid|total|full|complete|unbroken|dull|dark|flat) (?:cloud\w*|gr[ea]y|sky)",
            r"(?:all|flat|plain|just|totally|completely|uniform\w*) gr[ea]y(?: (?:up there"
            r"|overhead|above))?",
            r"gr[ea]y (?:all over|overhead|up there|above|everywhere|and (?:flat|dull|wet))|leaden",
            r"(?:^|(?<=[,;.] ))gr[ea]y(?=$|[,.;])",
            r"(?:blanket|lid|ceiling) of (?:gr[ea]y )?clouds?|dull (?:day|light|weather)"
            r"|dreich|dreary|dull and (?:flat|gr[ea]y|damp)",
            r"(?:heavy|low|thick|dark) clouds?",
            r"covered sky|sky(?:'s| is) (?:\w+ )?covered|sky(?:'s| is)? full (?:of|with) clouds?",
            r"(?:light|steady|soft|bit of) rain",
            r"drizzl\w+",
            r"rain(?:y|ing)",
        ),
    ),
    (
        "full sun",
        any_of(
            r"(?:full|bright|direct|hard|harsh|blazing|strong|midday|noon) (?:sun\w*|light)",
            "sunny",
            "sunshine",
            r"not a cloud|cloud-?free",
            r"sun(?:'s| is) (?:\w+ )?(?:out(?! of)|blazing|blasting|beating|pounding|glaring"
            r"|full on|straight on|high|up high)",
            r"(?:blinding|glaring|brilliant|scorching|baking|fierce) (?:sun\w*|light)",
            r"in (?:the )?sun",
            r"(?:^|(?<=[.,;] ))(?:sun|noon|midday|blazing)(?=[.,;]|$)",
            rf"{_SUN} (?:straight |right |directly )?(?:beating|beats|blazing|blasting|burning"
            r"|overhead)",
            rf"{_SUN} (?:right |directly |straight |shining |falling )?(?:on|hits|hitting)"
            r" (?:it|the|this)",
            rf"{_SUN} (?:comes|falls|goes|shines) (?:direct(?:ly)?|straight"
            rf"|full)(?: \w+)? (?:the|it)",
            r"no clouds?",
        ),
    ),
)
#: "White balance cloudy" is a setting of colour.
_WHITE_BALANCE: Final = any_of("white balance", "wb", "kelvin", "preset")
#: Sun and cloud by turns are no single light.
_PARTLY: Final = any_of(
    "sunny spells|sunny intervals|sun and clouds?",
    r"sun (?:comes|coming|in) and (?:goes|going|out)|mixed light|sun patches",
    r"(?:half|partly|partially) (?:sun\w*|cloud\w*|overcast)",
)
#: A clear sky is sun only where nothing says shade.
_CLEAR_SKY: Final = any_of(r"(?:clear|blue) sk(?:y|ies)", "cloudless")
#: Where the light was asked for, one word is enough.
_ALONE: Final = (
    ("full sun", exactly("(?:full |bright |in )?sun(?: is out|'s out)?")),
    ("open shade", exactly("(?:in |the |all )*(?:shade|shadow)")),
    ("overcast", exactly("clouds?")),
)
_SHADE: Final = any_of("shade|shadow|shady")
_SUNLIT: Final = frozenset({"full sun", "hazy sun", "before sunset", "sunset"})
_SHADED: Final = frozenset(
    {"open shade", "light canopy", "open gorge", "wooded gorge", "deep slot", "dense canopy"}
)
_NOT_NOW: Final = frozenset(
    {"no", "not", "isn't", "without", "until", "till", "wait", "waiting", "forecast"}
    | {"tomorrow", "yesterday", "later", "if", "when", "does", "will", "before"}
)


_CLAUSE_ENDS: Final = re.compile(r"[,.;!?:](?!\d)")
#: "Was overcast, now the sun is out": of two lights the one that is past.
_WAS: Final = re.compile(
    r"\b(?:was|were|earlier|at first|this morning|had|before|when (?:i|we) (?:came|parked|arrived"
    r"|started))\b(?:(?!\bnow\b)[^,;.])*$"
)


def _is_now(before: str) -> bool:
    """Whether the words before do not deny the light or put it into another hour."""
    clause = _CLAUSE_ENDS.split(before)[-1]
    return not _NOT_NOW & set(clause.split()[-2:])


def read_light(draft: Draft) -> None:
    """The light by its words; sun and shade together are no single light and stay unsaid."""
    text = draft.text
    if _WHITE_BALANCE.search(text) or _PARTLY.search(text):
        return
    seen = [
        (key, text[: match.start()])
        for key, pattern in _LIGHTS
        if (match := pattern.search(text)) and _is_now(text[: match.start()])
    ]
    present = [key for key, before in seen if not _WAS.search(before)]
    found = present or [key for key, _ in seen]
    if not found and "light" in draft.expecting:
        found = [key for key, pattern in _ALONE if pattern.match(text)]
    if not found and _CLEAR_SKY.search(text) and not _SHADE.search(text):
        found = ["full sun"]
    if found and not (_SUNLIT & set(found) and _SHADED & set(found)):
        draft.note("light", found[0])
