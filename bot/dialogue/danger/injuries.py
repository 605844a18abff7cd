"""People who are hurt, or need a doctor."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import GAP, PERSON, THE, Rules

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
            rf"(?:{_WHOSE}|i have |has |have |got )?{_DAMAGED} (?:up )?(?:my|his|her|their"
            r"|an?"
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
            r"(?: (?:is|are|has|have|looks?|feels?|might be|may be|just|really|pretty|all"
            r"|be"
            r"|badly"
            rf"|totally|probably|so|i|think|completely|getting|starting to))* {_HURTS}\b"
        ),
        (
            r"^(?:ankle|knee|leg|wrist|shoulder|foot|hip|arm)(?: (?:is|looks|feels|just"
            rf"|probably|really|has|got))* {_HURTS}\b"
        ),
        r"cannot (?:even |really )?(?:put|bear|place) (?:any |much )?weight",
        (
            r"cannot (?:even |really |hardly |barely )?(?:walk|stand|get up|stand up"
            r"|step)"
            r"(?= [.,]|$| on (?:it|my|his|her|the foot)| any ?more| at all| alone| and| "
            r"by| "
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
            r"blood (?:everywhere|all over|on (?:his|her|my|the rock)|is|coming|running"
            r"|loss"
            r"|pouring|in)\b"
        ),
        r"(?:lot|lots|losing|much|coughing) (?:of )?blood\b",
        (
            r"(?:hit|banged|smacked|cracked|knocked|struck|bumped|whacked) (?:\w+ )?(?:my"
            r"|his"
            r"|her|their) (?:\w+ )?head\b"
        ),
        r"(?:hit|struck|caught|got) (?:on|in) the (?:head|face|back|leg|chest)\b",
        (
            r"(?:rocks?|stones?|boulder|branch|tree|log|ice|icicle) (?:just )?(?:came "
            r"down"
            r"|fell|landed|dropped|rolled"
            r"|hit|struck|came|crashed|got|smashed|smacked)(?: down)?(?: right)? ?(?:on"
            r"|onto"
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
            r"(?:am|is|are|was|got|gets|been|badly|seriously|pretty|really|someone"
            r"|somebody"
            r"|friend|bad) (?:badly |seriously |pretty |really |bad |quite )?(?:hurt"
            r"|injured)\b(?! the)"
        ),
        (
            r"hurt (?:himself|herself|myself|themselves|ourselves|badly|bad|real|and "
            r"alone"
            r"|her|his|alone)\b"
        ),
        r"alone and (?:hurt|injured)\b",
        r"injured\b(?= [.,]|$| (?:hiker|person|man|woman|student|leg|and|here|on|by|at|friend|at))",
        r"(?:snake|viper|adder|rattler|dog|tick) ?bite\b",
        (
            r"(?:bitten|(?<!a )bit) by an? (?:snake|dog|spider|viper|adder|rattlesnake"
            r"|tick"
            r"|scorpion|bat|something)"
        ),
        r"(?:snake|viper|adder|dog) bit\b",
        r"bit (?:me|him|her)\b",
        r"stung (?:by|me|him|her|all)\b",
        (
            r"(?:need|needs|get|send|want|call|calling|called|where is) (?:an? |the "
            r"|some "
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
            r"(?:chest (?:pains?|hurts|is tight|feels tight)|heart attack|seizure|having "
            r"a stroke|anaphyla\w*|allergic "
            r"(?:reaction|shock)|concuss\w+|hypoglyc\w+|epipen)"
        ),
        r"(?:there has been|had|was|been in|bad|been) an? (?:bad |serious |terrible )?accident\b",
        r"(?:passed|knocked) out(?= [.,]|$| and| cold| for| on| by| after)",
        r"(?:no pulse|not have a pulse|cpr)\b",
        (
            r"(?:deep|nasty|bad|big|head) (?:cut|gash|wound)\b(?= [.,]|$| (?:in|on|to"
            r"|across"
            r"|and|from|it))(?! (?:in|on|of) (?:the )?(?:rock|frame|wall|cliff))"
        ),
        (
            r"(?:he|she|friend|wife|husband|someone|somebody|i|kid|student|they|we) "
            r"(?:is "
            r"|are |am |has |have )?(?:just )?(?:fainted|collapsed|choking|blacked out)\b"
        ),
        (
            r"^(?:sos|mayday(?: mayday)*|sos sos(?: sos)?|emergency|help (?:emergency|sos"
            r"|me "
            r"please i am hurt))$"
        ),
    ),
    by_people=(
        (
            r"(?:trouble|difficulty|hard time|struggling|problems|struggles|hard) "
            r"(?:with "
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
            r"(?:needs?|have to get|get|go) (?:\w+ )?(?:to )?(?:a |the )?(?:hospital"
            r"|stitches"
            r"|surgeon|er)\b"
        ),
        r"(?:going|went|gone|is|seems) (?:in|into|in to) shock\b",
        (
            r"(?:fell|tumbled|slid|went) (?:backwards?|head ?first|headlong|badly"
            r"|awkwardly"
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
        (
            r"(?:not )?(?:sure|know|tell|check|see) (?:if|whether) (?:he|she|they|\w+) "
            r"(?:is|are) "
            r"(?:still )?(?:breathing|alive|conscious|hurt|badly hurt|injured)\b"
        ),
        r"unconscious\b",
        r"faint(?:ed|s)(?= [.,]|$| and| on| from| again| in| just)",
        r"through (?:my|his|her) (?:foot|hand|leg|arm|palm|boot)\b",
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
            r"fell (?:about |around |maybe |like |a good |at least |some |from )*(?:\d+"
            r"|ten"
            r"|five|six|eight|three|four|two|fifteen|twenty|thirty|a few|several|a "
            r"couple "
            r"of) ?(?:feet|foot|ft|m|met(?:er|re)s?|yards)\b"
        ),
        (
            r"(?:(?<=^i )|(?<=\bi )|(?<=he )|(?<=she )|(?<=they )|(?<=just )|(?<=friend )"
            r"|(?<=wife )|(?<=husband )|(?<=son )|(?<=daughter )|(?<=someone )"
            r"|(?<=somebody )"
            r"|(?<=student )|(?<=kid ))"
            r"(?:fell|fallen|slipped)(?= [.,]|$| and (?:cannot|hit|hurt|broke|now|twisted"
            r"|is"
            r"|he|she|i|my|landed|his|her)| hard| bad| badly| on (?:the|a|some|my|his|her"
            r"|wet"
            r"|slick|slimy|ice)| down (?:hard|here|and)|"
            r" (?:pretty|really) (?:hard|bad))"
        ),
        r"took (?:a|an) (?:bad |hard |nasty |big |awful )?(?:fall|tumble|spill)\b",
        r"(?:vomiting|throwing up|losing consciousness|fainting)\b",
    ),
)

INJURIES: Final = (_HURT,)
