"""English wordings: replies to whether all are safe, and to whether anybody is out there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.rules import PERSON

_GOOD: Final = (
    r"(?:safe|fine|ok|okay|alright|all right|good|unhurt|out|well|together|dry"
    # On the way down the creek, or back along it, nobody is safe; nor is a way found that is not
    # theirs.
    r"|back(?! (?:down|along|through|into)\b)|down(?! (?:the|this|that|along|through|into)\b)"
    r"|found(?! an?\b)"
    r"|ashore|home|off (?:the|that) (?:edge|lip|rocks?|ledge|ice)|rescued|accounted for)\b"
    # "I'm fine with f/8", "out of sight", "good at this" say nothing of anybody's safety.
    r"(?! (?:of (?:sight|reach|battery|ideas)|with(?! (?:us|me|him|her|them))|for|at this"
    r"|at that|to|there)\b)"
)
_IS: Final = (
    r"(?: (?:is|are|am|was|were|all|both|got|made it|has|have|been|now|just|already|feel|feels))*"
    r"(?: \w+)? "
)
_KIN: Final = (
    r"(?:friend|wife|husband|son|daughter|brother|sister|partner|mate|buddy|kid|child|mum|mom|dad"
    r"|mother|father|girlfriend|boyfriend|student|guide|leader|boy|girl|man|woman|guy|lady|dog)"
)
_HIM: Final = rf"(?:him|her|my {_KIN}|our {_KIN}|the {_KIN})"
_HE: Final = rf"(?:he|she|(?:(?:my|our|the) (?:\w+ )?)?{_KIN})"
_GOT: Final = r"(?:got|pulled|fished|dragged|helped|have|had|brought|hauled|lifted)"
_CAME: Final = r"(?:came|climbed|got|swam|walked|made it)"
_OUT: Final = r"(?: \w+)? (?:out|back|safe|ashore|up|home|down)\b"
_RESCUERS: Final = (
    r"(?:rescue|rescuers|rangers?|ambulance|medics|paramedics|helicopter|firefighters)"
)
_CAR: Final = r"(?:car|cars|trailhead|hut|hotel|bus|van|shelter|parking|car park)"
_PATH: Final = (
    r"(?:path|trail|platform|deck|bridge|boardwalk|rail|railing|fence|rope|barrier|viewpoint"
    r"|overlook|terrace|car park|parking|road)"
)

REPLIES: Final[Mapping[str, tuple[str, ...]]] = {
    "all": (
        (
            r"\b(?:all(?: of us)?|everyone|everybody|we|both(?: of us)?|the whole group|the group"
            rf"|the (?:two|three) of us){_IS}{_GOOD}"
        ),
        r"\ball (?:clear|good|safe|fine|accounted for|ok|okay|well|cool|sorted)\b",
        r"^(?:safe|safe and sound|safe and well|safe again)$",
        (
            r"(?:^|, )(?:safe|safe and sound|fine|okay|ok|unhurt|dry and (?:ok|okay|safe))(?: ,)?"
            r" (?:(?:both|all|the (?:two|three|four)) of us|everyone|everybody)(?= ,|$)"
        ),
        r"\bsafe now\b",
        rf"\b(?:all|the) (?:two|three|four|five|six|\d)(?: of (?:us|them))?{_IS}{_GOOD}",
        (
            r"\b(?:we|everyone|everybody|all of us|all)(?: are| is)?(?: all)?(?: \w+)?"
            r" (?:up (?:on|at|in) the"
            r"|on (?:high|higher|safe|dry) ground|out of the (?:gorge|canyon|water|river)"
            r"|away from the (?:water|river|edge|fall|falls|gorge))\b"
        ),
        rf"\b(?:me and (?:my )?\w+|(?:my )?\w+ and (?:i|me)) are(?: \w+)? {_GOOD}",
        rf"\b(?:all|both)(?: \w+)? of us (?:are )?(?:\w+ )?(?:at|in|on) the (?:{_CAR}|{_PATH})\b",
        (
            r"\b(?:nobody|no one|noone) (?:is|was|got)?(?: \w+)? ?(?:hurt|missing|in danger"
            r"|injured|lost)\b"
        ),
        r"\bno harm done\b",
        r"\bnothing(?: \w+)? (?:happened|wrong|serious)\b",
        r"\bno(?:t in)? danger\b",
    ),
    # Where who writes is, and who is with them: of others it says nothing.
    "here": (
        rf"\bwe (?:can )?see the (?:{_CAR}|{_PATH})\b",
        rf"\b(?:we|i)(?: am| are| have)?(?: \w+)?(?: back)? (?:at|in) (?:the |my |our )?{_CAR}\b",
        rf"\bback (?:at|in|on|behind) the (?:{_CAR}|{_PATH})\b",
        rf"\b(?:we|i) (?:am|are) (?:\w+ )?on the {_PATH}(?: (?:again|now|back))+\b",
        rf"^(?:(?:ok|now|sitting|safe|inside|warm|dry)[ ,]+)*(?:in|at) (?:the |my |our )?{_CAR}\b",
        r"\bfound (?:the|our) (?:path|trail|way|car)\b",
    ),
    "here_again": (
        (
            r"\b(?:he|she|they) (?:(?:is|are|now|both|all) )*(?:here|back|with (?:me|us)|beside me"
            r"|next to me)\b(?! (?:on|in|at|to) )"
        ),
    ),
    "warm_again": (
        (
            r"\b(?:warm|warmer|warmed up|warm and dry)(?: (?:again|now|enough))*(?= ,|$)"
            r"|\b(?:stopped|no longer|not) shivering(?: any ?more| now)*(?= ,|$)"
        ),
    ),
    "found_way": (r"\b(?:i|we) (?:(?:now|again) )?know (?:again )?where (?:i|we) (?:am|are)\b",),
    "mended": (
        (
            r"\b(?:stopped bleeding|(?:the )?(?:bleeding|blood)(?: has| is)? stopped"
            r"|(?:is )?(?:not|no longer) bleeding(?: any ?more)?|no (?:more )?blood(?: any ?more)?"
            r"|(?:(?:i|he|she) )?can (?:walk|stand)(?: (?:again|on it|normally))*"
            r"|bandaged|patched up|(?:plaster|bandage|band aid)(?: is| are)? on"
            r"|only (?:a|some|a few|two)(?: (?:little|small|tiny))?"
            r" (?:scratch(?:es)?|bruises?|grazes?))\b"
        ),
    ),
    "they": (
        (
            rf"\b(?:they|both of them|all of them|the (?:others|kids|children|students"
            rf"|two)){_IS}{_GOOD}"
        ),
        rf"\b{_GOT} (?:them|both|everyone|everybody|all of them){_OUT}",
        r"\bfound (?:them|everybody|everyone|both)\b",
        rf"\bthey {_CAME}{_OUT}",
        rf"\b{_RESCUERS} (?:\w+ ){{0,2}}(?:here|arrived|have them|with us)\b",
    ),
    "one": (
        rf"\b{_HE}{_IS}{_GOOD}",
        rf"\b{_GOT} {_HIM}{_OUT}",
        rf"\bfound {_HIM}\b|\bso is (?:he|she)\b",
        rf"\b{_HE} (?:managed to |was able to |could )?(?:{_CAME}|come|climb|get|swim|walk){_OUT}",
        rf"\b(?:we|i|they) (?:have|got|have got) {_HIM}(?= ,|$| (?:now|here|back|again))",
        rf"\b{_RESCUERS} (?:\w+ ){{0,2}}with {_HIM}\b",
        rf"\b(?:one|two|three)(?: of them)? (?:is|are){_IS}{_GOOD}",
        rf"\b{_RESCUERS} (?:\w+ ){{0,2}}(?:have|has|got|took|picked up) {_HIM}\b",
    ),
    "own": (
        rf"\bi{_IS}{_GOOD}",
        rf"\bi {_CAME}{_OUT}",
        rf"\bi (?:can )?see the (?:{_CAR}|{_PATH})\b",
    ),
    "but_fine": (
        (
            r"\b(?:wet|soaked|muddy|cold|tired|shaken|scared|dirty|hungry) but"
            r" (?:fine|ok|okay|safe|alright|all right|well|good|unhurt|happy)\b"
        ),
    ),
    "back_by_themselves": (
        r"\b(?:he|she|they) (?:was|were|had|is|are) (?:only|just)\b",
        r"\b(?:he|she) (?:was|is) (?:at|in|behind|on|by|with|already)\b",
    ),
    "always_so": (
        r"\balways(?: \w+)? (?:like|brown|so|that|this)\b|\b(?:is|that is|it is) normal\b",
        r"\b(?:peat\w*|tannin\w*)\b",
    ),
    "clear_water": (
        r"\b(?:see ?through|clear|can see (?:right )?(?:to )?the (?:bottom|stones|ground))\b",
    ),
    "not_rising": (
        (
            r"\b(?:not|isnt|hasnt|has not|is not|did not|didnt|never|nor) (?:\w+ )?(?:rising"
            r"|risen|rose|rise|come up|coming up|came up|higher|gone up|going up)\b"
            r"|\bno (?:twigs?|mud|muck|dirt|debris|rise)\b"
        ),
    ),
    "not_dark": (
        (
            r"\b(?:not|isnt|is not) (?:at )?(?:night|dark|late|nightfall)\b"
            r"|\bin the (?:morning|afternoon)\b|\b(?:mid ?day|noon|broad daylight)\b"
        ),
    ),
    "retracted": (
        r"\bfalse alarm\b",
        r"^(?:lol |haha |no )*(?:jk|kidding)(?: lol| haha| sorry)*(?= ,|$)",
        r"(?<!\bme )(?<!\bus )(?<!know )\b(?:just|only|was|is|a)(?: just| only| a| bad)* joke\b",
        r"\bstupid joke\b",
        r"\b(?:just|only|was|am|were|i) (?:joking|kidding|testing|messing)\b",
        r"\b(?:just|only|was|a) (?:just |only |a )*test\b",
        r"\bwrong (?:chat|room|window|person)\b",
        r"\bmis(?:understood|understanding|typed|read)\b",
        r"\b(?:typo|autocorrect)\b",
        r"\bnot? (?:a )?person\b",
    ),
    "meant": (
        r"\b(?:i|we) (?:only |just )?(?:meant|mean|was asking|spoke of)\b",
        r"\b(?:i|we) (?:was|am|are|were) (?:only |just )?(?:talking|on) about\b",
        r"\bi (?:did not|do not) mean\b",
    ),
    "only": (
        r"\b(?:only|just) (?:the|my|a|an|our|his|her)\b",
        r"\bit (?:was|is) (?:only |just )?(?:the|my|a|his|her)\b",
    ),
    "heard": (
        r"ok|okay|k|kk|alright|all right|fine|right|good|sure|got it|understood|roger|will do",
        r"on it|doing (?:it|that)|copy|done|thanks|thank you|i will|i see|great|cool|aha|then|so",
    ),
    "fine": (r"fine|good|all right|alright|all good|we good",),
    "nobody": (
        (
            r"(?:nobody|none|nope nobody|no nobody|not any ?more|not me|all back|we are back|i"
            r" am back)"
            r"\b(?! (?:but|except|cares|minds|sees|looks|watches|stops|else|knows"
            r"|answers?|hears?|comes?|helps?|can"
            r"|is (?:here|coming|around|answering)))"
        ),
    ),
    "stepped_back": (
        (
            r"\b(?:i|we|he|she|they)(?: (?:have|has|am|are|is|just|all|already|will))*"
            r" (?:stepped|moved|went|came|gone|come|got|walked|climbed|step|move|go)(?: \w+)?"
            r" (?:back|away|down|off)\b(?! (?:to|on|up|down|in|into|for|there|across|over)\b)"
        ),
        (
            r"\b(?:i|we) (?:will|would) not(?: (?:go|do it|do that|then|go there"
            r"|stand there))*(?= ,|$)"
        ),
        rf"\b(?:back|off|heading|going|walking)(?: back| down| off)? to the {_CAR}\b",
        (
            r"(?<!not )(?<!never )\b(?:stays?|staying|keeps?) (?:on the (?:bank|shore)|ashore"
            r"|out of the (?:water|river|creek|stream|pool))\b"
        ),
        r"\b(?:then not|never mind|forget it|leave it|not going(?: there)?|better not)(?= ,|$)",
    ),
    "somebody": (
        r"me|i am|we are|one|two|three|somebody|someone|he is|she is|they are|both",
        rf"my {PERSON}(?: (?:is|are))?",
    ),
    "place": (
        (
            r"\b(?:stay\w*|stand\w*|sit\w*|am|are|back|remain\w*|keep\w*|only|just|now|is)(?: \w+)?"
            rf" (?:on|at|behind) (?:the|a|this|that|another)(?: other| next| first)? {_PATH}\b"
        ),
        (
            r"\b(?:i|we)(?: am| are| will| shall)? (?:stay\w*|remain|keep\w*|stand\w*|sit\w*)"
            r"(?: \w+)? (?:here|back|up here|down here)\b"
        ),
        (
            r"\b(?:i am|we are|i sit|sitting|he is|she is)(?: \w+)? (?:at home|at work|in bed"
            r"|at my desk"
            r"|(?:in|on|at) (?:the|my|our|a) (?:kitchen|garden|living room|cafe|bar"
            r"|restaurant|sofa|couch"
            r"|bench|hotel|house|bus|train|car|tent|office|visitor centre))\b"
        ),
        r"\b(?:i am|we are) behind (?:it|the (?:rail|railing|fence|rope|barrier))\b",
        (
            r"\b(?:\d{2,}|\w+ (?:hundred|fifty)|hundred)"
            r" (?:m|metres?|meters?|yards?|feet|ft)(?: \w+)?"
            r" from the (?:edge|lip|drop|brink|cliff)\b"
        ),
    ),
    "yes": (r"yes|yeah|yep|yup|yea",),
    "after_yes": (
        (
            r"my|he|she|i|we|they|some(?:one|body)|one|two|three|help|please|hurt|lost|me|it"
            r"|us|near|at"
            r"|in|on|and|but|a|the|both|very|yes"
        ),
    ),
    "no": (r"no|nope|nah|negative",),
    "not_yet": (r"not|not yet|never",),
    "unsure": (
        (
            r"\b(?:not|no|nope|never|cannot|except|apart from|minus|still|yet|but|almost|nearly"
            r"|soon|hope|hopefully|if"
            r"|when|until|trying|waiting|missing|think|guess|maybe|probably|only|help|unless|one"
            r" of)\b"
        ),
        r"\b(?<!so )(?:are (?:we|they|you)|is (?:he|she|it))\b",
        # Somebody is elsewhere, or looked for.
        r"\b(?:is|are) (?:down|out|over|in) there\b",
        r"\b(?:searching|looking for|calling (?:him|her|them|his|their))\b",
    ),
    "after_no": (
        r"all|we|i|everyone|everybody|nobody|it|that|this|just|only|thanks|thank|he|she|they|none",
        r"no|not|danger|false|nothing|sorry|of course|why",
    ),
}
