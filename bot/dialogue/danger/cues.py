"""Danger told in pieces: two cues in one sentence, in any order, and no word of the picture."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import PERSON, Cues, Rules

#: Words of somebody who talks about the picture and not about people.
_PICTURE: Final = (
    r"frame|picture|photo|image|crop\w*|histogram|corners?|composition|foreground"
    r"|background|screen"
    r"|highlights?|shadows?|texture|white balance|balance|colou?rs?|contrast|midtones"
    r"|meter\w*|zoom\w*"
    r"|exposure|blinks?|blinking|clipp\w+|stops? (?:over|under)"
)
_KIT: Final = (
    r"tripod|lens|filter|camera|polari[sz]er|battery|remote|strap|cap|hood|ball|screw|thread"
)
_LIMB: Final = (
    r"ankles?|knees?|wrists?|elbows?|shoulders?|shins?|thighs?|ribs?|fingers?|hands?"
    r"|arms?|legs?"
    r"|foot|feet|toes?|throat|neck|nose|ears?|eyes?|mouth|skull|chest|hips?|calf|skin"
    r"|face|head|back"
)
_INJURY: Final = (
    r"swollen|swelling|swells|broken|fractured|sprained|twisted|dislocated|bleeding"
    r"|bleeds|gash\w*"
    r"|popped|crushed|snapped|torn|stung|stings?|bitten|burnt|burned|out of joint|agony"
    r"|in pain"
    r"|painful|pain|puncture\w*|stabbed|bruised|limping|bent the wrong way"
)
_EXTREMITY: Final = r"fingers?|hands?|toes?|feet|thumbs?|ears|nose|lips|face|fingertips"
_STIFF: Final = (
    r"white|blue|numb|no feeling|stiff|waxy|frozen|not work\w*|without feeling|feel "
    r"nothing|dead"
    r"|like (?:ice|wood|stones)|useless|cannot (?:move|bend|use|close|button|hold)"
)
_BODY_OF_WATER: Final = (
    r"water|river|creek|stream|brook|torrent|pool|beck|burn|waterfall|level|current|it"
)
#: What water looks like, not what is drunk: "turned to coffee", not "the coffee is gone".
_LIKE_A_DRINK: Final = (
    r"(?:like|to|into|of|as|turned|turning|turns|gone|going|went|goes|now|is|are|looks?|looking"
    r"|pure|almost|all|becoming|became) (?:a |the |cold |strong |milky |real )?"
    r"(?:chocolate(?: milk)?|coffee|cocoa|gravy)"
    r"|(?:coffee|chocolate|cocoa|gravy)[ -]?(?:colou?r\w*|brown|milk|soup)"
)
_TURBID: Final = (
    rf"{_LIKE_A_DRINK}|muddy|mud|murky|silty|turbid|brownish|browner|brown"
    r"|dirty|milky brown|full of (?:mud|dirt|leaves|sticks|debris|sediment)"
)
_TURNING: Final = (
    r"now|suddenly|since|turned|turning|turns|getting|gone|went|just|becoming|became"
    r"|changed|changing"
    r"|all of a sudden|was clear|quickly|fast|more and more|looks like|ago|at once"
    r"|starting|started"
)
_DRIFTWOOD: Final = r"wood|logs?|branches|twigs|sticks|debris|trunks?|trees|leaves and \w+"
_DRIFTS: Final = (
    r"floating|coming down|washing|drifting|rushing|shooting|swimming|racing|carries"
    r"|carrying"
    r"|brings"
)
_BRINK: Final = (
    r"lip|brink|where (?:it|the (?:water|stream|creek|river)) (?:drops|falls|goes over"
    r"|tips|plunges)"
    r"|right (?:above|over) the (?:drop|fall|falls)|top edge of the (?:falls?|waterfall"
    r"|cliff|drop)"
    r"|edge of the (?:falls?|waterfall|cliff|drop|precipice|abyss|ledge|gorge|canyon)"
    r"|cliff edge"
    r"|above the (?:falls?|waterfall|drop|plunge)|over the (?:drop|abyss|void)|crest of "
    r"the fall"
    r"|head of the (?:falls?|waterfall)|top of the (?:falls?|waterfall|cascade|drop)"
)
_GOES: Final = (
    r"walk\w*|stand|standing|stood|sit|sitting|sat|lie|lying|crawl\w*|climb\w*|step"
    r"|stepping|hop\w*|jump\w*"
    r"|lean out|leaning out|leaning over|lean over|cross|crossing|wade|wading|swim\w*"
    r"|hang|hanging|perch\w*|kneel\w*|crouch\w*|set up"
    r"|setting up|i am (?:on|at|right|now)|we are (?:on|at|right|now)|on the rock|on a "
    r"rock|(?:put|set) (?:my|the) tripod|tripod (?:on|at|over)"
    r"|feet (?:over|dangling)|balanc\w+|creep\w*|scoot\w*|inch out|edging|up here"
)
_SAFE_PLACE: Final = (
    r"platform|viewpoint|overlook|deck|boardwalk|bridge|railing|rail|handrail|path"
    r"|footbridge|far away|from below"
)
_BARS: Final = (
    r"railings?|guard ?rails?|fence|barrier|chain|roped off|closed off|taped off|no entry"
    r"|do not enter|keep out"
    r"|closure|closed sign|warning sign|danger sign|barricade|off limits|restricted"
    r"|forbidden|prohibited|no trespassing"
)
_PASSES: Final = (
    r"over (?:the|it|that)|step over|climb\w*|hop\w*|jump\w*|past|duck\w*|squeez\w*"
    r"|under it|around it|round it|through it|beyond"
    r"|anyway|does anyone care|nobody (?:cares|sees|looks|is)|everyone does|everybody "
    r"does|who cares|ignor\w+|sneak\w*|other side|slip (?:past|under|through)|risk it"
)

CUES: Final = (
    Rules(
        DangerKind.IN_WATER,
        together=(
            Cues(
                (
                    r"slipped|fell|fallen|tumbled|slid|toppled|lost (?:his|her|their|my) "
                    r"footing|jumped|went in"
                ),
                (
                    r"floating|drifting (?:down|off|away)|downstream|cannot see (?:him"
                    r"|her"
                    r"|them)|under (?:the )?water"
                    r"|underwater|head (?:is )?under|holding on|rapids|to shore|not come "
                    r"up"
                    r"|cannot swim|help (?:him|her|them)"
                ),
                unless=_KIT + "|leaf|leaves|" + _PICTURE,
                by_people=True,
            ),
        ),
    ),
    Rules(
        DangerKind.FLOOD,
        together=(
            Cues(
                r"way up|(?:much|way|a lot|far) higher|(?:looks|is|getting|gets) angry",
                r"water|river|creek|stream|brook",
                unless=r"viewpoint|iso|walk\w*|climb\w*|mist|" + _PICTURE,
            ),
            Cues(
                rf"(?:{_TURBID})",
                (
                    rf"(?:{_BODY_OF_WATER})\b.*\b(?:{_TURNING})\b"
                    rf"|\b(?:{_TURNING})\b.*\b(?:{_BODY_OF_WATER})"
                ),
                unless=(
                    r"tannin|peat\w*|boots?|shoes?|rocks?|leaves|bank|bear|mug|walls?"
                    r"|moss"
                    r"|path|trail|"
                )
                + _PICTURE,
            ),
            Cues(
                rf"(?:{_DRIFTWOOD})",
                rf"(?:{_DRIFTS})",
                unless=_PICTURE + "|spinning|swirl\\w*|slowly",
            ),
            Cues(
                (
                    r"(?:my|the|our) (?:marks?|marker|stone|rock|boots?|feet|tripod|bag"
                    r"|spot"
                    r"|island|gravel bar|beach|ledge)"
                ),
                (
                    r"(?:water|creek|river|stream)\b.*\b(?:reached|reaching|reaches"
                    r"|covered"
                    r"|covers|swallowed|touches now|took|at my)"
                ),
                unless=_PICTURE + "|leaf",
            ),
        ),
    ),
    Rules(
        DangerKind.HURT,
        together=(
            Cues(
                rf"(?:{_INJURY})",
                rf"(?:my|his|her|their|{PERSON})\b.*\b(?:{_LIMB})|\b(?:{_LIMB})\b",
                unless=_KIT + "|branch|clouds?|light|water|rock is|twig|panorama|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.MISSING,
        together=(
            Cues(r"unaccounted", r"for"),
            Cues(
                r"nobody (?:\w+ )?(?:has )?(?:seen|heard)|last seen|last saw",
                rf"{PERSON}|since|for",
                unless=_PICTURE,
            ),
            Cues(
                (
                    r"(?:went|gone|walked|ran|headed|wandered|hiked|set) (?:on |off "
                    r")?(?:ahead|off|alone|back|upstream|downstream|up|down|out|for|to)\b"
                ),
                (
                    r"is not (?:at|there|here|back|answering|in)\b|are not (?:at|there"
                    r"|here"
                    r"|back)|not (?:come )?back|no (?:sign|answer|reply)|not returned"
                ),
                unless=_PICTURE + "|light|sun|" + _KIT,
                by_people=True,
            ),
        ),
    ),
    Rules(
        DangerKind.COLD,
        together=(
            Cues(
                rf"(?:{_EXTREMITY})",
                rf"(?:{_STIFF})",
                unless="rocks?|wall|water|branch|" + _KIT + "|" + _PICTURE,
            ),
            Cues(
                r"wet|soaked|drenched|fell in|spray",
                (
                    r"(?:freezing|shaking|trembling|shivering|chattering|so cold|really "
                    r"cold"
                    r"|very cold|too cold|cold and (?:tired|shaky))"
                ),
                unless=_KIT + "|morning|" + _PICTURE,
            ),
            Cues(
                (
                    r"not stop (?:shaking|trembling)|stop (?:shaking|trembling)|shakes? "
                    r"all "
                    r"over|shaking (?:all over|so much|a lot|badly)"
                ),
                r"i|he|she|we|they|my|hands|body|cold|wet",
                unless=_KIT + "|" + _PICTURE,
            ),
            Cues(
                r"cold|freezing|wet",
                (
                    r"cannot think|not think(?:ing)? straight|sleepy|drowsy|confused"
                    r"|stumbling|slurring|cannot (?:walk|talk|speak|hold|grip|stop)"
                ),
                unless=_KIT + "|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.DARK,
        together=(
            Cues(
                (
                    r"(?:no|without a|without|forgot (?:my|the|our|a)|not have a|lost my"
                    r"|broke my|my) (?:working )?(?:torch|headlamp|flashlight|lamp)s?"
                ),
                (
                    r"how (?:do|can) (?:i|we|you)|moon|get (?:down|out|back)|way (?:down"
                    r"|out"
                    r"|back)|dusk|dark|night|sunset|sun is|km|miles?|late|trail|path|car"
                ),
                unless="iso|light painting|" + _PICTURE,
            ),
            Cues(
                r"(?:dark|darkness|night|nightfall|dusk)",
                (
                    r"(?:trail|path|way|walk|hike|km|miles?|hours?) (?:\w+ ){0,4}?(?:left"
                    r"|to "
                    r"go|back|out|down|ahead|steep|gone|from the car)|scared|cannot "
                    r"(?:find"
                    r"|see)|how do (?:i|we) get"
                ),
                unless="before|turn back|planned|plan|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.LOST,
        together=(
            Cues(
                (
                    r"(?:trail|path|track|markers?|blazes|cairns|gps|map)(?: is| are| has"
                    r"| "
                    r"have)?(?: just)? (?:gone|stopped|ended|vanished|disappeared|dead"
                    r"|wrong"
                    r"|useless|missing|not (?:make sense|fit|match|load))"
                ),
                r"only|no|bush\w*|forest|woods|where|now|which|lost|help|we|i|cannot|and",
                unless=_PICTURE + "|foam|parking",
            ),
        ),
    ),
    Rules(
        DangerKind.THUNDER,
        together=(
            Cues(
                r"flash(?:es|ing)?|bolts?",
                (
                    r"clouds?|sky|storm|ridge|horizon|mountains?|rumbl\w+|boom|bang"
                    r"|closer"
                    r"|seconds later|overhead"
                ),
                unless="off|leaves|hole|strobe|fill|highlights?|screen|blink\\w*|"
                + _KIT
                + "|"
                + _PICTURE,
            ),
            Cues(
                r"(?:storm|sky|clouds?) ",
                r"(?:growl\w*|rumbl\w+|closer|approaching|over us|above us|overhead|electric)",
                unless="yesterday|soft|nice|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.LIP,
        gate="lip|brink|where|above|edge|over|cliff|top|head|crest",
        together=(
            Cues(
                rf"(?:{_BRINK})",
                rf"(?:{_GOES})",
                unless=_SAFE_PLACE + "|trees?|leaves|branch\\w*|sky|sun|sun is|light|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.WADING,
        gate=(
            "feet|foot|boots|barefoot|waders|legs|shoes|sandals|tripod|cross|island"
            "|other"
            "|middle|waist|knee"
        ),
        together=(
            Cues(
                r"stand(?:ing)? (?:beside|next to|behind|by|with) it",
                r"in the (?:water|creek|stream|river|brook|pool|current)",
                unless=_PICTURE,
            ),
            Cues(
                (
                    r"(?:my |our |bare |both )?(?:feet|foot|boots|barefoot|sandals)|me "
                    r"standing|we stand|i stand|i am standing"
                ),
                r"in the (?:\w+ )?(?:water|creek|stream|river|brook|pool|current)\b",
                unless="tripod feet|tripod foot|away|from|beside|" + _PICTURE,
            ),
            Cues(
                (
                    r"(?:cross(?:ing)?|get|walk|go|wade|jump|hop|over) (?:\w+ "
                    r"){0,2}?(?:to"
                    r"|onto|on) (?:the|that|this) (?:\w+ )?(?:island|gravel bar|sandbar"
                    r"|far "
                    r"bank|other bank|opposite bank|far side|mid\w* (?:rock|boulder)"
                    r"|opposite side)"
                ),
                r"i|we|can|could|may|want|going|is|should|ok|safe|cross|crossing",
                unless="bridge|footbridge|" + _PICTURE,
            ),
            Cues(
                r"waders|water shoes|barefoot|dry ?suit|neoprene",
                r"go|going|in|into|middle|out|cross|through|step|walk",
                unless="off|no|home|car|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.BARRIER,
        gate=(
            "rail|guard|fence|barrier|chain|rope|clos|tape|entry|enter|keep|sign|warn"
            "|danger"
            "|barric|off|restrict|forbid|prohib|tresp"
        ),
        together=(
            Cues(
                r"signs? (?:says?|said|tells?|asks?)",
                r"off it|but|minutes?|anyway|good spot|better spot|just|quick\w*|nobody|ignor\w+",
                unless=_PICTURE,
            ),
            Cues(
                rf"(?:{_BARS})",
                rf"(?:{_PASSES})",
                unless=r"behind the|from behind|staying|stay|light|" + _PICTURE,
            ),
        ),
    ),
    Rules(
        DangerKind.ICE,
        gate="ice|icicle|frozen|icy",
        together=(
            Cues(
                r"icicles?|ice (?:curtain|wall|fall|column|pillars?)|hanging ice|ice",
                (
                    r"(?:stand\w*|sit\w*|set up|walk\w*|am|are|go|going|crawl\w*"
                    r"|step\w*) "
                    r"(?:\w+ ){0,3}?(?:below|under|underneath|beneath|behind|on the"
                    r"|onto)\b"
                ),
                unless="look\\w*|like|exposure|away|" + _PICTURE,
            ),
        ),
    ),
)
