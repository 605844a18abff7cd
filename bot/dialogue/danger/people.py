"""People in trouble: in the water, missing."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import END, GAP, PERSON, THE, WATER, Rules

_FELL: Final = (
    r"(?:fell|fallen|did fall|slipped|slid|tumbled|toppled|stumbled|tripped|rolled"
    r"|dropped|crashed|jumped|plunged|dived|dove)"
)
_TAKEN: Final = r"(?:swept|washed|carried|dragged|pulled|sucked|taken|knocked)"
_DROP: Final = r"(?:edge|falls?|lip|drop|waterfall|brink|cliff|ledge|side)"
_HOLD: Final = r"(?:logs?|branch(?:es)?|rocks?|roots?|tree|strainer|boulder|hole|boil|hydraulic)"
_IN_WATER: Final = Rules(
    DangerKind.IN_WATER,
    plain=(
        (
            rf"{THE}(?:{WATER}|flood|wave) (?:just |has |have )?"
            r"(?:took|taken|got|has|caught|grabbed|swept|carried|pulled|dragged|knocked)"
            rf" (?:him|her|them|me|us|someone|somebody|(?:my|our|a|one of) {GAP}{PERSON}"
            r"|\w+ "
            r"(?:away|down))"
        ),
        (
            rf"{PERSON} (?:(?:is|are|was|of us) )?(?:just |still |now |both |all "
            r")?(?:floating |face down )?in the "
            rf"(?:\w+ )?{WATER}(?! with| for (?:the|a) (?:shot|picture|photo)| of (?:the"
            r"|my)| "
            r"ruin| spoil| wait)"
        ),
        (
            rf"i am in the (?:\w+ )?{WATER}(?= (?:and|but|help|holding|hold|cold|please"
            r"|cannot"
            r"|need|,))"
            r"(?=.*\b(?:cannot|help|hold|holding|out|stuck|cold|swim|strong|hurry))"
        ),
        r"(?:man|woman|person|hiker|someone|somebody) overboard",
        # "the lens cap fell in and so did I": a thing, but not it alone
        (
            rf"(?:{_FELL}|went) in(?: ,)?(?: and)? "
            r"(?:so did (?:i|we|he|she)|me (?:too|with it|after it))"
        ),
        rf"{PERSON} (?:(?:is|are|was|might|may|could|be|just|nearly|almost) )*drown(?:ing|ed|s)?\b",
        (
            r"cannot (?:get|climb|pull) (?:\w+ )?out of the (?:\w+ )?(?:water|river|creek"
            r"|stream|pool|current)"
        ),
        (
            r"(?:kayaker|paddler|canoeist|rafter|swimmer|boat|kayak|raft|canoe)s? (?:\w+ "
            r"){0,3}?(?:upside down|overturned|in trouble|stuck|flipped|trapped|missing"
            r"|under"
            r"|pinned)\b"
        ),
        r"(?:capsized|boat flipped|kayak flipped|canoe flipped)",
    ),
    by_people=(
        (
            rf"{_TAKEN} (?:him|her|them|me|us|{GAP}{PERSON}) (?:off|away|down|round|around"
            r"|under|over|towards?|into|past|through)\b"
        ),
        (
            rf"(?:being|getting|was|were|got|is|are|am|been) {_TAKEN} (?:\w+ )?(?:off"
            r"|towards?"
            r"|round|around|down|over|past|into|through|out)\b(?! (?:by|to) the (?:light"
            r"|frame))"
        ),
        r"(?:gone|went|going) in (?:off|from|by|over|near|head|feet|clothes|at the)\b",
        (
            r"(?:is|are|am|now|still|and|ended up|landed) in the (?:\w+ )?(?:rapids?"
            r"|current"
            r"|torrent|whirlpool|hydraulic|boil)\b(?=.*)(?<!rock is in the current)"
        ),
        (
            r"(?:foot|leg|ankle|arm|boot) (?:is |got |has )?(?:\w+ )?(?:stuck|wedged"
            r"|caught"
            r"|trapped|pinned|jammed) (?:\w+ ){0,2}?(?:between|under|in|by|behind)\b"
        ),
        (
            r"(?:water|current|river|stream) (?:keeps |is |just )*(?:pushing|pulling"
            r"|dragging"
            r"|pinning|holding) (?:me|us|him|her|them|my|on me)\b"
        ),
        (
            r"cannot (?:hold on|hang on|swim|reach (?:him|her|them|the bank|shore)|keep "
            r"(?:my"
            r"|his|her) head)\b(?! to the (?:rail|railing|tripod))"
        ),
        r"cannot get (?:him|her|them|back) (?:out|to (?:the )?(?:shore|bank)|ashore)\b",
        (
            r"(?:struggling|flailing|thrashing|floating|bobbing|splashing|screaming) "
            r"(?:\w+ "
            r"){0,2}?(?:in the (?:water|river|creek|stream|pool|current)|face down"
            r"|downstream)\b(?! for)"
        ),
        (
            r"(?:disappeared|vanished|gone|went|stuck|held) (?:under|beneath|below|in) "
            r"the "
            r"(?:water|surface|fall|falls|foam|boil|log)\b"
        ),
        (
            r"lost (?:my|his|her|their|our) (?:footing|balance|grip)\b(?=.*\b(?:in|water"
            r"|river|creek|stream|current)\b)"
        ),
        rf"{_FELL} (?:\w+ ){{0,3}}?in(?:to)? (?:the |a |this |that )?(?:\w+ )?{WATER}\b",
        rf"{_FELL} (?:right |straight )?in{END}",
        rf"went in{END}(?! (?:with|for|too))",
        r"gone in(?= [.,]|$| help| and)",
        (
            rf"{_TAKEN} (?:\w+ )?(?:away|downstream|down ?river|under|over the {_DROP}"
            rf"|off {THE}{GAP}(?:feet"
            r"|ledge|rocks?|boulder|bank|path|trail|slab|shore|log|bridge|lip"
            r"|crossing))\b"
        ),
        (
            r"(?:fell|went|gone|slipped|swept|slid|tumbled|fallen) (?:right |straight "
            r"|down "
            r")?over "
            rf"(?:the )?(?:\w+ )?{_DROP}\b"
        ),
        (
            r"(?:went|gone|pulled|going|go) under(?= [.,]|$| and| again| twice| the "
            r"(?:water"
            r"|log|fall|rock))"
        ),
        r"underwater and",
        (
            r"(?:he|she|they|boy|girl|son|daughter|friend|wife|husband|kid|child|man|woman"
            r"|someone|somebody)"
            r" (?:is |are |got |went |still )+(?:under|below|behind) the (?:water|waterfall"
            r"|falls?|foam|log)"
            r"\b(?=.*\b(?:not|cannot|stuck|gone)\b)"
        ),
        (
            r"(?:not|never) (?:come|came|coming|gone) (?:back )?up(?: yet)?(?= [.,]|$| "
            r"for| "
            r"again| yet)"
        ),
        r"not surfac\w+",
        (
            r"(?:stuck|trapped|caught|pinned|wedged|held) (?:\w+ )?(?:in|under|on|against"
            r"|by"
            r"|between) "
            rf"{THE}(?:\w+ )?(?:{WATER}|{_HOLD})\b"
        ),
        (
            r"(?:(?:holding|hanging|clinging) on ?(?:to )?|clinging to |holding "
            rf"){THE}{_HOLD}\b"
            r"(?! (?:back|out|away|aside|with my|for))"
        ),
        r"fell (?:off|from) (?:the |a )?(?:log|bridge|rock|ledge|bank) in(?:to)?\b",
        r"in over (?:his|her|their|my) head\b",
    ),
)
_NOT_BACK: Final = (
    r"(?:(?:come|came|coming|returned|return|made it|got|gotten|been|arrived)(?: "
    r"back)?(?: yet)?"
    r"(?= [.,]|$| (?:from|yet|down|up|since|for|home|to (?:the|camp|us|our)|here|out"
    r"|after|and|in))"
    r"|(?:come|came|coming|made it|got|gotten|been) back\b"
    r"|(?:shown|turned|showed|show|turn) up\b|back(?= yet| from| [.,]|$| since))"
)
_LOVED: Final = (
    r"(?:him|her|them|(?:my|our|his|her|the|one of|two of) (?:\w+ ){0,3}?"
    r"(?:friend|wife|husband|son|daughter|brother|sister|partner|mate|buddy|kids?|child"
    r"|children|dad|father|mum"
    r"|mom|mother|girlfriend|boyfriend|students?|teacher|leader|guide|group|us"
    r"|participants?|people|uncle|aunt|guys?|boys?|girls?|others|hiker|man|woman))"
)
_MISSING: Final = Rules(
    DangerKind.MISSING,
    plain=(
        (
            r"we are (?:only )?(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven"
            r"|twelve) ,? ?(?:but )?(?:we )?"
            r"(?:should be|were|should have been) (?:\d+|two|three|four|five|six|seven"
            r"|eight|nine|ten|eleven|twelve)\b"
            r"|(?:he|she|they|\w+) (?:is|are) not (?:at|by|in) the \w+ (?:and|,) not "
            r"\w+ing\b"
            r"|(?:counted|count|counting) (?:only |just )?\w+ .*\b(?:were|was|should be"
            r"|are "
            r"supposed|left with|started with|instead of|not)\b \w+"
        ),
        (
            r"(?:we are|we were|group is|now) (?:\w+ )?(?:one|two|a|somebody|someone) "
            r"(?:person |student |man )?(?:down|short|fewer|less)\b(?! stop)"
        ),
        (
            r"(?:waiting for|looking for|searching for) (?!the\b|light|sun|a\b|my (?:lens"
            r"|cap"
            rf"|filter)|clouds?|better|good|it\b|that\b)(?:{_LOVED}|\w+) (?:\w+ "
            rf"){{0,3}}?(?:for (?:an|over|more|two|half|\d)|since|hours?|ages)\b"
        ),
        rf"{PERSON} (?:\w+ )?(?:not (?:show|shown|showed|turn|turned)|no ?show)\b",
        (
            r"(?:has anyone|has anybody|anyone|anybody) seen (?!the |a |my (?:lens|cap"
            r"|filter"
            r"|remote|tripod|bag)|this|that |it)\w+"
        ),
        (
            rf"cannot (?:find|see|reach|locate|hear) {_LOVED}\b(?! (?:in|on) the (?:frame"
            r"|picture|photo|shot|screen))"
        ),
        (
            rf"lost (?:sight of |track of |contact with |touch with )?{_LOVED}\b(?! "
            r"(?:lens"
            r"|cap|filter|tripod|remote|phone))"
        ),
        (
            r"lost (?:sight of|track of|contact with) (?!the (?:light|time|sun|fall"
            r"|texture"
            r"|shot)|time|my (?:shot|subject))\w+"
        ),
        (
            rf"(?:{PERSON}|one|two|three|of us|\d) (?:is |are |has |have |has been |been "
            r"|went |gone |still |just |of us )*missing\b(?! (?:a|an|the|my|from (?:the"
            r"|my) "
            r"(?:bag|frame|kit))\b| (?:focus|stop))"
        ),
        r"one (?:person|of us|student|hiker|kid) (?:\w+ )?(?:missing|short)\b",
        (
            r"missing (?:someone|somebody|one(?: of us| person)?(?= [.,]|$)|one of (?:us"
            r"|the)"
            r"|two people|two of|a person)\b"
        ),
        r"missing (?:person|hiker|student|man|woman|child|kid|friend|people)\b",
        r"(?:one|two|three|\d) (?:short|too few|people short|person short)\b",
        r"headcount (?:\w+ )*(?:short|missing|off|wrong|less|not)\b",
        r"no (?:sign|trace) of (?!rain|life|light|wind|a |the |texture|clipping|noise)\w+",
        (
            r"(?:shout|call|yell|whistl)\w* .*no (?:reply|answer|response)\b|no (?:reply"
            r"|answer|response) .*(?:shout|call|yell|whistl)"
        ),
        (
            rf"not (?:seen|heard from) {_LOVED}\b|not (?:seen|heard from) (?!a |any|the "
            r"|such"
            r"|this|that|it|light|rain|sun|anything|water|texture)\w+ (?:for|since|in"
            r"|anywhere)\b"
        ),
        r"nobody (?:has |have )?(?:seen|heard from|heard) (?:him|her|them|\w+ (?:since|for|in))",
        (
            r"should (?:have been|be|have) (?:here|back|been back|down|come back) (?:\w+ "
            r"){0,3}?(?:ago|by now|already|long|since)"
        ),
        (
            rf"{PERSON} (?:has |have |is )?(?:just )?(?:wandered off|disappeared|vanished"
            r"|gone missing|overdue)\b"
        ),
        rf"{_LOVED} (?:has |have )?(?:been )?gone (?:for|since|over|more than|now|an|two|three|\d)",
        r"(?:separated from|got separated|been separated)\b",
    ),
    by_people=(
        (
            r"(?:is|are|was) (?:still )?not (?:here|there|back|at the (?:car|meeting)"
            r"|with us"
            r"|where|in (?:his|her|the) (?:spot|place|tent))\b(?! (?:in|for|any ?more"
            r"|light"
            r"|to|what|off|yet (?:the|in))\b)(?=.*\b(?:yet|still|meeting|hour|minutes"
            r"|agreed"
            r"|said|supposed|answer|anywhere|us|car|point|spot|place|since|o'?clock"
            r"|lunch)\b"
            r"|$)"
        ),
        rf"(?:has|have|did|is|are|was|had|never) (?:not )?(?:still )?(?<=not ){_NOT_BACK}",
        rf"(?:has|have|did|is|are) not (?:still |even )?{_NOT_BACK}",
        rf"(?:has|have|is|are) still not (?:{_NOT_BACK})",
        rf"never {_NOT_BACK}",
        (
            r"(?:is|does|do|did|has|are|will) not (?:answer|reply|respond|pick up"
            r"|answering"
            r"|replying|replied|answered|picking up)\w*\b(?! (?:my question|to (?:the"
            r"|my) "
            r"(?:remote|touch)|me what|to me|to us|to anything))"
        ),
        (
            r"cannot find (?!a\b|an\b|any|the\b|my\b|our\b|it\b|out|what|where|how|focus"
            r"|that"
            r"|this|some|enough|one\b|in\b|detail|light|texture|f\b|nd\b|your|which|why"
            r"|these"
            r"|those|iso|good|space|no\b)\w+(?= [.,]|$| anywhere| any ?more| since| and| "
            r"he "
            r"| she | now)"
        ),
        r"not been seen\b",
        r"(?:overdue|gone missing)\b",
        r"(?<=\w )(?:has|is) (?:disappeared|vanished|missing)\b(?= [.,]|$| since| for| now)",
    ),
)

PEOPLE: Final = (
    _IN_WATER,
    _MISSING,
)
