"""People in trouble: in the water, hurt, missing."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import END, GAP, PERSON, THE, WATER, Rules

_FELL: Final = (
    r"(?:fell|fallen|did fall|slipped|slid|tumbled|toppled|stumbled|jumped|plunged|dived|dove)"
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
            rf" (?:him|her|them|me|us|someone|somebody|(?:my|our|a|one of) {GAP}{PERSON}|\w+ "
            r"(?:away|down))"
        ),
        (
            rf"{PERSON} (?:(?:is|are|was|of us) )?(?:just |still |now |both |all "
            r")?(?:floating |face down )?in the "
            rf"(?:\w+ )?{WATER}(?! with| for (?:the|a) (?:shot|picture|photo)| of (?:the|my)| "
            r"ruin| spoil| wait)"
        ),
        (
            rf"i am in the (?:\w+ )?{WATER}(?= (?:and|but|help|holding|hold|cold|please|cannot"
            r"|need|,))"
            r"(?=.*\b(?:cannot|help|hold|holding|out|stuck|cold|swim|strong|hurry))"
        ),
        r"(?:man|woman|person|hiker|someone|somebody) overboard",
        rf"{PERSON} (?:(?:is|are|was|might|may|could|be|just|nearly|almost) )*drown(?:ing|ed|s)?\b",
        (
            r"cannot (?:get|climb|pull) (?:\w+ )?out of the (?:\w+ )?(?:water|river|creek"
            r"|stream|pool|current)"
        ),
        (
            r"(?:kayaker|paddler|canoeist|rafter|swimmer|boat|kayak|raft|canoe)s? (?:\w+ "
            r"){0,3}?(?:upside down|overturned|in trouble|stuck|flipped|trapped|missing|under"
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
            rf"(?:being|getting|was|were|got|is|are|am|been) {_TAKEN} (?:\w+ )?(?:off|towards?"
            r"|round|around|down|over|past|into|through|out)\b(?! (?:by|to) the (?:light"
            r"|frame))"
        ),
        r"(?:gone|went|going) in (?:off|from|by|over|near|head|feet|clothes|at the)\b",
        (
            r"(?:is|are|am|now|still|and|ended up|landed) in the (?:\w+ )?(?:rapids?|current"
            r"|torrent|whirlpool|hydraulic|boil)\b(?=.*)(?<!rock is in the current)"
        ),
        (
            r"(?:foot|leg|ankle|arm|boot) (?:is |got |has )?(?:\w+ )?(?:stuck|wedged|caught"
            r"|trapped|pinned|jammed) (?:\w+ ){0,2}?(?:between|under|in|by|behind)\b"
        ),
        (
            r"(?:water|current|river|stream) (?:keeps |is |just )*(?:pushing|pulling|dragging"
            r"|pinning|holding) (?:me|us|him|her|them|my|on me)\b"
        ),
        (
            r"cannot (?:hold on|hang on|swim|reach (?:him|her|them|the bank|shore)|keep (?:my"
            r"|his|her) head)\b(?! to the (?:rail|railing|tripod))"
        ),
        r"cannot get (?:him|her|them|back) (?:out|to (?:the )?(?:shore|bank)|ashore)\b",
        (
            r"(?:struggling|flailing|thrashing|floating|bobbing|splashing|screaming) (?:\w+ "
            r"){0,2}?(?:in the (?:water|river|creek|stream|pool|current)|face down"
            r"|downstream)\b(?! for)"
        ),
        (
            r"(?:disappeared|vanished|gone|went|stuck|held) (?:under|beneath|below|in) the "
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
            r"|ledge|rocks?|boulder|bank|path|trail|slab|shore|log|bridge|lip|crossing))\b"
        ),
        (
            r"(?:fell|went|gone|slipped|swept|slid|tumbled|fallen) (?:right |straight |down "
            r")?over "
            rf"(?:the )?(?:\w+ )?{_DROP}\b"
        ),
        (
            r"(?:went|gone|pulled|going|go) under(?= [.,]|$| and| again| twice| the (?:water"
            r"|log|fall|rock))"
        ),
        r"underwater and",
        (
            r"(?:not|never) (?:come|came|coming|gone) (?:back )?up(?: yet)?(?= [.,]|$| for| "
            r"again| yet)"
        ),
        r"not surfac\w+",
        (
            r"(?:stuck|trapped|caught|pinned|wedged|held) (?:\w+ )?(?:in|under|on|against|by"
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

_BODY: Final = (
    r"(?:ankles?|legs?|foot|feet|knees?|hips?|arms?|wrists?|hands?|fingers?|thumb"
    r"|shoulders?|elbow"
    r"|ribs?|back|head|skull|neck|nose|collar ?bone|shin|thigh|face|eye|toes?|calf|chin"
    r"|forehead"
    r"|femur|achilles|pelvis|jaw|scalp|tooth|teeth)"
)
_WHOSE: Final = rf"(?:my|his|her|their|our|the|an|a|your|both|{PERSON} (?:is )?|\w+ is )"
_DAMAGED: Final = (
    r"(?:broke|broken|fractured|snapped|dislocated|twisted|sprained|rolled|injured"
    r"|smashed|crushed"
    r"|gashed|tore|torn|busted|wrenched|cracked|sliced|split|banged(?: up)?|hurt|messed "
    r"up|popped"
    r"|whacked|smacked|cut|turned|bashed|stabbed|burned|burnt|scalded|jammed|pulled"
    r"|tweaked)"
)
_HURTS: Final = (
    r"(?:twisted|broken|sprained|swollen|swelling|gone(?= [.,]|$)|done|dislocated|busted"
    r"|hurt|hurts|hurting"
    r"|bleeding|injured|killing me|bent|snapped|popped|gave (?:out|way)|shot|fractured"
    r"|messed up"
    r"|split|crushed|trapped|torn|cut open|bent|sticking out|not moving|useless|purple"
    r"|screwed)"
)
_FALLEN_FROM: Final = (
    r"(?:cliffs?|rocks?|ledge|slope|wall|bank|trail|path|bridge|log|bluff|side|edge"
    r"|stairs|steps"
    r"|boulder|slab|viewpoint|platform|ladder|gully|ravine|hill|hillside|embankment|top)"
)

_HURT: Final = Rules(
    DangerKind.HURT,
    plain=(
        (
            rf"(?:{_WHOSE}|i have |has |have |got )?{_DAMAGED} (?:up )?(?:my|his|her|their|an?"
            r"|both|\w+ is) "
            rf"(?:\w+ )?{_BODY}\b(?! of the (?:tripod|frame|fall)|piece| lamp)"
        ),
        (
            r"(?:has|have|got|with|think|it is|is) (?:an? |probably |maybe |my |his |her "
            r")*(?:broken|sprained|twisted|dislocated|fractured"
            rf"|swollen|injured|busted|bleeding) {_BODY}\b"
        ),
        (
            r"(?:broken|broke|twisted|sprained|rolled|dislocated|fractured) "
            r"(?:ankle|leg(?! of)|wrist|arm|knee|foot|hip|rib|shoulder|collar ?bone|femur"
            r"|finger)\b"
        ),
        (
            rf"(?:my|his|her|their|{PERSON} is|\w+ is|the|both) (?:left |right )?{_BODY}"
            r"(?: (?:is|are|has|have|looks?|feels?|might be|may be|just|really|pretty|all|be"
            r"|badly"
            rf"|totally|probably|so|i|think|completely|getting|starting to))* {_HURTS}\b"
        ),
        (
            r"^(?:ankle|knee|leg|wrist|shoulder|foot|hip|arm)(?: (?:is|looks|feels|just"
            rf"|probably|really|has|got))* {_HURTS}\b"
        ),
        r"cannot (?:even |really )?(?:put|bear|place) (?:any |much )?weight",
        (
            r"cannot (?:even |really |hardly |barely )?(?:walk|stand|get up|stand up|step)"
            r"(?= [.,]|$| on (?:it|my|his|her|the foot)| any ?more| at all| alone| and| by| "
            r"without| or| properly)"
        ),
        r"(?:barely|hardly) (?:walk|stand|breathe|conscious)\b",
        rf"cannot move (?:my|his|her|their) (?:\w+ )?{_BODY}\b",
        r"cannot feel (?:my|his|her|their) (?:legs?|arms?)\b",
        (
            r"(?:i|he|she|they|we) cannot (?:move|breathe)\b(?! (?:the|any|it|this|closer"
            r"|back|further|my tripod))"
        ),
        (
            r"(?:is|am|are|not stop|keeps?|still|will not stop|heavily|badly|started|stop"
            r"|starts) bleeding\b"
        ),
        (
            r"bleeding (?:a lot|bad|badly|heavily|from|like|everywhere|hard|through"
            r"|and)\b(?! the (?:right|left|top))"
        ),
        r"the bleeding\b",
        (
            r"blood (?:everywhere|all over|on (?:his|her|my|the rock)|is|coming|running|loss"
            r"|pouring|in)\b"
        ),
        r"(?:lot|lots|losing|much|coughing) (?:of )?blood\b",
        (
            r"(?:hit|banged|smacked|cracked|knocked|struck|bumped|whacked) (?:\w+ )?(?:my|his"
            r"|her|their) (?:\w+ )?head\b"
        ),
        r"(?:hit|struck|caught|got) (?:on|in) the (?:head|face|back|leg|chest)\b",
        (
            r"(?:rocks?|stones?|boulder|branch|tree|log|ice|icicle) (?:just )?(?:came down"
            r"|fell|landed|dropped|rolled"
            r"|hit|struck|came|crashed|got|smashed|smacked)(?: down)?(?: right)? ?(?:on|onto"
            r"|on top of|in)? "
            r"(?:me|him|her|us|them|someone|somebody|(?:my|his|her|our|one of"
            rf"|a) {GAP}(?:{PERSON}|{_BODY}))\b"
        ),
        (
            r"(?:rock|rocks|stone|stones|boulder|branch|tree|log|ice|icicle) (?:just "
            r")?(?:came down|fell|landed|dropped|crashed) (?:right )?on(?:to| top of)? "
            r"(?!the\b|a\b|it\b|my (?:tripod|lens|bag|camera)|its)\w+"
        ),
        (
            r"(?:hit|struck|knocked down|crushed) by (?:a |some |the )?(?:falling |big "
            r"|small )?(?:rocks?|stones?|branch|boulder|tree|log|ice|icicle)"
        ),
        (
            r"(?:am|is|are|was|got|gets|been|badly|seriously|pretty|really|someone|somebody"
            r"|friend|bad) (?:badly |seriously |pretty |really |bad |quite )?(?:hurt"
            r"|injured)\b(?! the)"
        ),
        (
            r"hurt (?:himself|herself|myself|themselves|ourselves|badly|bad|real|and alone"
            r"|her|his|alone)\b"
        ),
        r"alone and (?:hurt|injured)\b",
        r"injured\b(?= [.,]|$| (?:hiker|person|man|woman|student|leg|and|here|on|by|at|friend|at))",
        r"(?:snake|viper|adder|rattler|dog|tick) ?bite\b",
        (
            r"(?:bitten|(?<!a )bit) by an? (?:snake|dog|spider|viper|adder|rattlesnake|tick"
            r"|scorpion|bat|something)"
        ),
        r"(?:snake|viper|adder|dog) bit\b",
        r"bit (?:me|him|her)\b",
        r"stung (?:by|me|him|her|all)\b",
        (
            r"(?:need|needs|get|send|want|call|calling|called|where is) (?:an? |the |some "
            r"|for |us |in |urgent |mountain |out |medical )*(?:ambulance|rescue|medic"
            r"|paramedics?|doctor|helicopter"
            r"|first aid|evacuation|evac|search and rescue|emergency services|medical "
            r"help)\b(?! (?:blanket|kit|card))"
        ),
        r"call (?:911|112|999|the police|for help|emergency|000)\b",
        r"ambulance\b",
        r"send (?:help|someone|somebody|a rescue)\b",
        (
            r"(?:medical|this is an|it is an|real|we have an|have an|an actual) "
            r"emergency\b(?! (?:exit|blanket|light|battery|sign))"
        ),
        (
            r"(?:chest pain|heart attack|seizure|having a stroke|anaphyla\w*|allergic "
            r"(?:reaction|shock)|concuss\w+|hypoglyc\w+|epipen)"
        ),
        r"(?:there has been|had|was|been in|bad|been) an? (?:bad |serious |terrible )?accident\b",
        r"(?:passed|knocked) out(?= [.,]|$| and| cold| for| on| by| after)",
        r"(?:no pulse|not have a pulse|cpr)\b",
        (
            r"(?:deep|nasty|bad|big|head) (?:cut|gash|wound)\b(?= [.,]|$| (?:in|on|to|across"
            r"|and|from|it))(?! (?:in|on|of) (?:the )?(?:rock|frame|wall|cliff))"
        ),
        (
            r"(?:he|she|friend|wife|husband|someone|somebody|i|kid|student|they|we) (?:is "
            r"|are |am |has |have )?(?:just )?(?:fainted|collapsed|choking|blacked out)\b"
        ),
        (
            r"^(?:sos|mayday(?: mayday)*|sos sos(?: sos)?|emergency|help (?:emergency|sos|me "
            r"please i am hurt))$"
        ),
    ),
    by_people=(
        (
            r"(?:trouble|difficulty|hard time|struggling|problems|struggles|hard) (?:with "
            r")?(?:breathing|to breathe)\b|short of breath\b|gasping\b"
        ),
        r"(?:is|are|out|was) out cold\b|knocked senseless\b|unconcious\b",
        (
            rf"{_BODY} (?:just |has |have )?(?:went|made a|gone) (?:a )?(?:crack|pop|snap"
            r"|crunch|click)\w*"
        ),
        r"collaps(?:ed|ing)\b(?! (?:the|my|a|two|one) )",
        r"in (?:a lot of |terrible |so much |agony|bad |great |real |extreme )+(?:pain|agony)?\b",
        r"(?:screaming|crying|moaning|groaning) (?:\w+ )?(?:in|with|from) pain\b",
        (
            r"(?:needs?|have to get|get|go) (?:\w+ )?(?:to )?(?:a |the )?(?:hospital|stitches"
            r"|surgeon|er)\b"
        ),
        r"(?:going|went|gone|is|seems) (?:in|into|in to) shock\b",
        (
            r"(?:fell|tumbled|slid|went) (?:backwards?|head ?first|headlong|badly|awkwardly"
            r"|all the way down|to the bottom|off the (?:top|back|edge|side))\b"
        ),
        (
            r"(?:slipped|slid|fell|tumbled) (?:\w+ ){0,3}?(?:and|then) (?:\w+ "
            r"){0,2}?(?:cannot|hit|hurt|broke|twisted|landed|is not|not moving|bleeding"
            r"|knocked|banged|cut)\b"
        ),
        (
            r"(?:bone|tourniquet|splint)\b(?=.*\b(?:leg|arm|out|need|how|his|her|my|skin"
            r"|through)\b)(?! dry)"
        ),
        r"unconscious\b",
        r"(?:not|stopped|barely|hardly) (?:really )?breathing\b",
        r"unresponsive\b",
        r"not respond(?:ing|s)?(?: to (?:me|us|anything|anybody|voice|his name|her name))\b",
        r"not respond(?:ing)?(?= [.,]|$| any| at all| and)",
        r"(?:not|will not) (?:wake|waking|come round|open (?:his|her) eyes)\b",
        (
            r"(?:he|she|someone|somebody|they|friend|wife|husband|person|man|woman|kid"
            r"|student) (?:is|are) not (?:really )?moving\b"
        ),
        (
            rf"fell (?:off|down|from|out of|onto|against) (?:of )?{THE}(?:\w+ "
            rf")?{_FALLEN_FROM}\b(?! (?:in|into) (?:shadow|shade|focus))"
        ),
        (
            r"fell (?:about |around |maybe |like |a good |at least |some |from )*(?:\d+|ten"
            r"|five|six|eight|three|four|two|fifteen|twenty|thirty|a few|several|a couple "
            r"of) ?(?:feet|foot|ft|m|met(?:er|re)s?|yards)\b"
        ),
        (
            r"(?:(?<=^i )|(?<=\bi )|(?<=he )|(?<=she )|(?<=they )|(?<=just )|(?<=friend )"
            r"|(?<=wife )|(?<=husband )|(?<=son )|(?<=daughter )|(?<=someone )|(?<=somebody )"
            r"|(?<=student )|(?<=kid ))"
            r"(?:fell|fallen|slipped)(?= [.,]|$| and (?:cannot|hit|hurt|broke|now|twisted|is"
            r"|he|she|i|my|landed|his|her)| hard| bad| badly| on (?:the|a|some|my|his|her|wet"
            r"|slick|slimy|ice)| down (?:hard|here|and)|"
            r" (?:pretty|really) (?:hard|bad))"
        ),
        r"took (?:a|an) (?:bad |hard |nasty |big |awful )?(?:fall|tumble|spill)\b",
        r"(?:vomiting|throwing up|losing consciousness|fainting)\b",
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
            r"(?:counted|count|counting) (?:only |just )?\w+ .*\b(?:were|was|should be|are "
            r"supposed|left with|started with|instead of|not)\b \w+"
        ),
        (
            r"(?:we are|we were|group is|now) (?:\w+ )?(?:one|two|a|somebody|someone) "
            r"(?:person |student |man )?(?:down|short|fewer|less)\b(?! stop)"
        ),
        (
            r"(?:waiting for|looking for|searching for) (?!the\b|light|sun|a\b|my (?:lens|cap"
            rf"|filter)|clouds?|better|good|it\b|that\b)(?:{_LOVED}|\w+) (?:\w+ "
            rf"){{0,3}}?(?:for (?:an|over|more|two|half|\d)|since|hours?|ages)\b"
        ),
        rf"{PERSON} (?:\w+ )?(?:not (?:show|shown|showed|turn|turned)|no ?show)\b",
        (
            r"(?:has anyone|has anybody|anyone|anybody) seen (?!the |a |my (?:lens|cap|filter"
            r"|remote|tripod|bag)|this|that |it)\w+"
        ),
        (
            rf"cannot (?:find|see|reach|locate|hear) {_LOVED}\b(?! (?:in|on) the (?:frame"
            r"|picture|photo|shot|screen))"
        ),
        (
            rf"lost (?:sight of |track of |contact with |touch with )?{_LOVED}\b(?! (?:lens"
            r"|cap|filter|tripod|remote|phone))"
        ),
        (
            r"lost (?:sight of|track of|contact with) (?!the (?:light|time|sun|fall|texture"
            r"|shot)|time|my (?:shot|subject))\w+"
        ),
        (
            rf"(?:{PERSON}|one|two|three|of us|\d) (?:is |are |has |have |has been |been "
            r"|went |gone |still |just |of us )*missing\b(?! (?:a|an|the|my|from (?:the|my) "
            r"(?:bag|frame|kit))\b| (?:focus|stop))"
        ),
        r"one (?:person|of us|student|hiker|kid) (?:\w+ )?(?:missing|short)\b",
        (
            r"missing (?:someone|somebody|one(?: of us| person)?(?= [.,]|$)|one of (?:us|the)"
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
            rf"not (?:seen|heard from) {_LOVED}\b|not (?:seen|heard from) (?!a |any|the |such"
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
            r"(?:is|are|was) (?:still )?not (?:here|there|back|at the (?:car|meeting)|with us"
            r"|where|in (?:his|her|the) (?:spot|place|tent))\b(?! (?:in|for|any ?more|light"
            r"|to|what|off|yet (?:the|in))\b)(?=.*\b(?:yet|still|meeting|hour|minutes|agreed"
            r"|said|supposed|answer|anywhere|us|car|point|spot|place|since|o'?clock|lunch)\b"
            r"|$)"
        ),
        rf"(?:has|have|did|is|are|was|had|never) (?:not )?(?:still )?(?<=not ){_NOT_BACK}",
        rf"(?:has|have|did|is|are) not (?:still |even )?{_NOT_BACK}",
        rf"(?:has|have|is|are) still not (?:{_NOT_BACK})",
        rf"never {_NOT_BACK}",
        (
            r"(?:is|does|do|did|has|are|will) not (?:answer|reply|respond|pick up|answering"
            r"|replying|replied|answered|picking up)\w*\b(?! (?:my question|to (?:the|my) "
            r"(?:remote|touch)|me what|to me|to us|to anything))"
        ),
        (
            r"cannot find (?!a\b|an\b|any|the\b|my\b|our\b|it\b|out|what|where|how|focus|that"
            r"|this|some|enough|one\b|in\b|detail|light|texture|f\b|nd\b|your|which|why|these"
            r"|those|iso|good|space|no\b)\w+(?= [.,]|$| anywhere| any ?more| since| and| he "
            r"| she | now)"
        ),
        r"not been seen\b",
        r"(?:overdue|gone missing)\b",
        r"(?<=\w )(?:has|is) (?:disappeared|vanished|missing)\b(?= [.,]|$| since| for| now)",
    ),
)

PEOPLE: Final = (_IN_WATER, _HURT, _MISSING)
