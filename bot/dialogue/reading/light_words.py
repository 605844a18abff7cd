"""The many words for light, the most enclosed first: keys of the light table."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import any_of

_GORGE: Final = r"(?:canyon|gorge|ravine|chasm|gully|glen|hollow|dell|dingle)"
_KINDS: Final = r"beech(?:es)?|oaks?|pines?|firs?|spruces?|birch(?:es)?|maples?|alders?|hemlocks?"
_TREES: Final = rf"(?:trees|canopy|leaves|branches|{_KINDS})"
_WOODS: Final = rf"(?:{_TREES}|woods?|forest|woodland)"
_GLOOM: Final = r"(?:gloomy|dark|dim|murky|shadowy)"
_BRIGHT_SUN: Final = (
    r"(?:sun(?:light|shine)?|sunny|blazing|bright)(?: is|'s)?(?: \w+)? (?:on|with|and|over)"
)
_SUN: Final = r"sun(?:light)?(?: is|'s| shines)?"

#: "Wind through the gorge": where it blows, not where the light falls.
WINDS_WAY: Final = any_of(
    r"(?:wind|breeze|gusts?|draught|draft|air)(?:'s)?\b[^.;,]{0,30}?\b(?:through|up|down|along|out"
    r" of|from|off)"
    r" (?:the |this |our )?(?:\w+ )?(?:canyon|gorge|ravine|chasm|gully|glen|slot|woods?|forest"
    r"|trees)"
)
#: The most enclosed first: "overcast, under the trees" is the light under trees.
LIGHTS: Final = (
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
            r"sun(?:'s| has) been (?:gone|down|under|set)",
            r"(?:after|past|since) (?:sunset|sundown)|afterglow|sunset (?:is over|was|has been)",
            r"sun (?:(?:just|has|already) )*(?:went down|went under|gone under"
            r"|dropped|sank|dipped|slipped)"
            r"(?! (?:at|by|around) \d)",
            r"sun(?:'s| has| is)? (?:just |already |been )*(?:set|gone down(?! behind)"
            r"|down(?! (?:at|by|around|behind|\d|half|quarter|five|ten|twenty)))",
        ),
    ),
    (
        "dusk",
        any_of(
            r"(?<!by )(?<!at )(?<!after )dusk|(?:now|already|it's|its|here) at dusk|twilight"
            r"|blue hour|gloaming|(?<!by )(?<!before )(?<!till )(?<!until )nightfall|last light",
            r"(?<!shadows )(?<!screen )(?<!corners )(?<!picture )(?<!rocks )"
            r"(?:getting|nearly|almost|half|going) (?:\w+ )?(?:dark|night)(?! (?:rock|red|green"
            r"|wood))"
            r"|(?:light|daylight)(?:'s| is)? (?:very |so |quite |really )?(?:less|poor|fading"
            r"|going|failing|bad)"
            r"(?=\W*$|[,.;]| now| fast| here| and)|(?:hardly|barely|scarcely) (?:any"
            r"|much) light (?:left|now)"
            r"|dark(?:ness)? (?:is )?(?:falling|coming)",
            r"light(?:'s| is) (?:almost|nearly|all but) gone",
        ),
    ),
    (
        "deep slot",
        any_of(
            r"slot canyon",
            r"in (?:a|the) slot",
            r"(?:deep|narrow|dark|tight) (?:\w+ )?(?:slot|cleft|crack|crevice"
            rf"|{_GORGE})(?![^.;]{{0,16}}\btrees\b)",
            r"(?:crack|strip|sliver|slit|ribbon|thread) of (?:the )?sky(?! (?:\w+ )?(?:clip|blink"
            r"|flash|blow|white|bright)\w*)|hardly any sky",
            r"walls(?: \w+){0,3} (?:almost|nearly) touch\w*",
        ),
    ),
    (
        "dense canopy",
        any_of(
            r"(?:dense|thick|dark|heavy) (?:beech(?:es)?|oaks?|pines?|firs?|spruces?|maples?"
            r"|alders?|hemlocks?)",
            r"(?:dense|thick|deep|dark|closed|heavy|solid) (?:\w+ )?(?:forest|canopy|woods?|trees"
            r"|treetops|foliage|leaves|tree cover)",
            r"(?:canopy|trees|forest|woods|leaves)(?: is| are|'s)? (?:\w+ )?(?:dense|thick|closed)",
            r"canopy(?: is|'s)? (?:\w+ )?shut",
            r"(?:canopy|treetops|branches) (?:shut|closed|closing|meet\w*) (?:over|above|overhead)",
            r"(?:hardly|barely|scarcely|can't|cannot) (?:ever )?(?:see|any|make out)"
            r" (?:any |the |much )?sky (?:for|through|because of|between|past)"
            rf" (?:all )?(?:the |these )?{_TREES}",
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
            rf"(?<!no ){_WOODS} (?:all )?(?:a?round|over|above|everywhere"
            rf"|both sides)\b[^.;]{{0,24}}{_GORGE}",
            rf"{_GORGE}\b[^.;]{{0,24}}(?<!no )(?<!without )(?<!bare of )\b{_WOODS}"
            r" (?:all )?(?:a?round|over|above"
            r"|everywhere|on both sides|overhead)",
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
            rf"(?:shade|shady)\b[^.;,]{{0,12}}\b{_WOODS}(?! (?:on|at|in) the)",
            rf"{_WOODS}\b[^.;,]{{0,16}}\b(?:so |and )(?:it's |its |all |quite |a bit )*shady",
            r"in (?:the |a )?(?:woods?|forest|trees|woodland)",
            rf"(?:lots of|many|some|a few) {_TREES} (?:above|over|around) (?:us|me)",
            rf"(?:some|a few|a couple of|scattered|thin|odd|sparse) {_TREES}(?: \w+)? (?:above"
            r"|over|overhead)",
            rf"{_TREES} overhead|(?:trees|canopy|{_KINDS}) (?:all |right )?(?:over|above) (?:us"
            rf"|me)\b",
            rf"(?:cloud\w*|overcast|gr[ea]y)\b[^.;]{{0,24}}\b{_TREES} (?:above|over|overhead)(?: us"
            r"| me)?(?=\W*$|[,.;])",
            rf"(?:cloud\w*|overcast|gr[ea]y)\b[^.;]{{0,12}}\b(?:lots of|many) {_TREES}",
        ),
    ),
    (
        "open gorge",
        any_of(
            rf"(?:open|wide|treeless|bare|broad) {_GORGE}",
            r"(?<!cancelled the )(?<!skipped the )(?<!skip the )(?<!closed the )(?<!avoid the )"
            r"(?<!out of the )(?<!above the )(?<!over the )(?<!left the )(?<!past the )"
            r"(?<!across the )"
            r"(?<!off in the )(?<!off in a )(?<!about the )"
            rf"{_GORGE}(?![^.;!?]{{0,30}}\b(?:nothing off|nothing abbrechen|rompe nothing"
            r"|not break|never break)\b)"
            r"(?![^.;!]{0,60}\b(?:dangerous|safe|risky|gef[aä]hrlich|peligros[oa])\b[^.;!]*\?)"
            r"(?!'s (?:closed|shut|off)| (?:walls?|side|rim|walk|trail|path|tour|hike"
            r"|is (?:closed|shut"
            r"|off)|closed|shut|gets|got|photos?|pictures?|pics))",
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
            rf"{_SUN} (?:behind|through|under) (?:\w+ ){{0,2}}(?:haze|veil|mist)",
            rf"{_SUN} (?:through (?:\w+ ){{0,2}}|(?:behind|under) (?:a |the |some )?(?:thin"
            rf"|light|high"
            r"|wispy|broken) )clouds?",
            r"haz(?:e|y|ey|iness)\b(?! (?:blob|spot|disc|circle|ring))",
            r"(?:veiled|weak|milky|watery|pale|filtered|diffuse|soft) sun(?:light|shine)?",
            rf"{_SUN} (?:\w+ )?(?:veiled|weak|milky|watery|filtered|diffused?|a pale dis[ck]|pale)",
            r"(?:clouds?|cloud cover|veil)\b[^.;]{0,40}\b(?:see|make out|guess|spot) (?:the |where"
            r" the )?"
            r"sun\b",
            r"sun (?:peeks?|glows?|shows|comes|shines|shimmers?|glimmers?|visible)(?: \w+)? through"
            r" (?:\w+ ){0,2}clouds?",
        ),
    ),
    (
        "bright cloud",
        any_of(
            r"(?:thin|bright|high|light|white) (?:\w+ )?(?:clouds?|overcast)",
            r"bright(?:ly)? overcast",
            rf"{_SUN} (?:behind|under) (?:\w+ ){{0,2}}clouds?",
            r"overcast,? (?:but |and |yet )?(?:still )?(?:bright|light|luminous)",
            r"cloudy,? (?:but |and )?bright|bright,? (?:but |and )?cloudy",
            "no shadows|(?:thin|light|high) cloud cover|white sky|sky is white",
        ),
    ),
    (
        "open shade",
        any_of(
            r"(?:open|in|full|all in|deep|all) (?:the )?(?:shade|shadow)",
            r"(?:shade|shadow)(?: is|'s)? (?:everywhere|all over|all round|all around)",
            r"(?:only|just|nothing but|plenty of|lots of) shade",
            r"shaded|(?:^|(?<=[.,;] ))(?:all )?(?:in )?(?:shade|shadow)(?=[.,;]|$| but\b| and\b"
            r"| with\b)",
            "shady",
            r"(?:moved|went|gone|walked|stepped|back|now|are|we're|i'm|standing|set up)"
            r"(?: \w+){0,2} (?:in|into|under) (?:the |some |a bit of )?(?:shade|shadow)(?! of)",
            r"(?:in|under) (?:the )?(?:shade|shadow) of|no direct sun|out of the sun",
            r"(?:it's|its|fall's|fall is|everything|all|everything's|it is) (?:all "
            r"|now )?in (?:the )?sha(?:de|dow)",
            r"sun (?:hasn't|has not|doesn't|never|won't|didn't|can't"
            r"|does not) (?:yet )?(?:reach|get|come|hit)"
            r"\w*",
            r"sun(?:'s| is| has)? (?:just |now |already |all |well )*(?:(?:gone(?! down)|left"
            r"|off)(?! (?:by|at"
            r"|around|in|down|under|behind (?:a |the |some |thick )*cloud\w*)\b)|(?:went |slipped "
            r"|(?:gone|went) down |dropped |moved |disappeared |gone )?behind"
            r" (?:the |a |that |this )(?:\w+ )?(?:wall|hill|ridge|cliff|mountain|trees|rim"
            r"|shoulder|spur|crag))"
            r"(?! (?:at|by|around|in) )",
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
            r"|dreich|dreary|dull and (?:flat|gr[ea]y|damp|wet|rainy|cold)",
            r"(?:heavy|low|thick|dark) clouds?",
            r"clouds (?:is|are|'s)? ?(?:everywhere|all over|all around)",
            r"gr[ea]y (?:as|like) \w+|(?:all |so |very |quite |just |really )gr[ea]y up (?:there"
            r"|above)",
            r"(?:it's|its|it is|been|still) (?:\w+ )?(?:pouring|bucketing|chucking|tipping"
            r"|hammering|lashing)"
            r"(?: (?:down|it down|with rain))?(?=\W*$|[,.;]| (?:now|here|and|so|but))",
            r"(?:snow(?:ing|s)|sleet(?:ing)?)(?! (?:melt|field|patch))",
            r"(?:no|without) sun(?: at all)?,? (?:just|only|all) (?:cloud|gr[ea]y)\w*",
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
            "sunny(?! side)",
            r"(?<!too )(?<!is )(?<!are )bright (?:today|outside|out(?: here| there)?|here)"
            r"(?=\W*$|[,.;!]| and\b| but\b| so\b| now\b)",
            r"sun(?:'s| is| has)? (?:just |now )?(?:come|came) out",
            r"sun (?:\w+ ){0,2}(?:blast|beat|pound|glar|blaz|burn|scorch|bak)\w* (?:on|down|onto"
            r"|it|the)\b",
            r"(?:much|lots of|loads of|plenty of|too much|a lot of) sun(?:light|shine)? (?:in|on"
            r"|over) (?:the|it|this)",
            r"sun(?:light|shine)?(?:'s| is)? (?:\w+ ){0,2}(?:on|all over|hitting"
            r"|lighting)(?: up)? (?:the )?"
            r"(?:water|fall|falls|waterfall|rock|rocks|whole)",
            "sunshine",
            r"not a (?:single )?cloud|cloud-?free|no cloud (?:in (?:the )?sky|anywhere|to be seen)",
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
