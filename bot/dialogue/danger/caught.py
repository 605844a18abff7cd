"""People whom the cold, the dark or the way out has caught."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import PERSON, Rules

_LIGHTS: Final = r"(?:torch(?:es)?|headlamps?|flashlights?|lamps?|light source|lights?)"
_OWN: Final = r"(?:my|his|her|our|their|your|both|the)"
_ENDS: Final = r"(?:fingers?|hands?|toes?|feet|foot|thumbs?|face|nose|ears|fingertips|cheeks)"
_COLD: Final = Rules(
    DangerKind.COLD,
    plain=(
        (
            r"(?:cannot|not|barely|hardly|lost|no longer|losing) (?:really |even "
            r")?(?:feel"
            rf"|feeling)(?: in)? (?:(?:{_OWN}|any|most of) )*{_ENDS}\b"
        ),
        (
            rf"{_OWN} {_ENDS}(?: (?:is|are|have|has|go|gone|going|went|so|getting|feel"
            r"|feels"
            r"|got|totally|all|really|white|both|and|completely|red|starting|to|turning"
            r"|turned|quite|pretty|a|bit|just|like))* (?:numb|blue|frozen|freezing|stiff"
            r"|useless|white|ice|tingl\w+|waxy|burning)\b(?! (?:balance|at))"
        ),
        (
            rf"^{_ENDS}(?: and \w+)?(?: (?:is|are|have|has|go|gone|going|totally|all"
            r"|completely|so|getting|both))* (?:numb|blue|frozen|freezing|white and)\b"
        ),
        rf"numb (?:{_ENDS}|from the cold|with cold|all over)\b",
        (
            rf"{_ENDS} (?:is |are |do |does |will |have )*not (?:work|working|move|moving"
            r"|obey"
            r"|bend|function)\w*"
        ),
        (
            rf"(?:{_OWN} )lips(?: \w+)? (?:are |is |have |went |turning |turned |look "
            r"|looking |gone |going )*blue\b|lips are (?:turning |going |all )?blue\b(?! "
            r"(?:in|on))"
        ),
        (
            r"(?:her|his|my|their|is|the) teeth\b.{0,20}\bchatter\w*|teeth (?:are |keep "
            r"|will not |is |not |stop )*chatter\w*"
        ),
        r"hypotherm\w+",
        r"cannot (?:stop|quit) (?:\w+ )?(?:shivering|shaking|trembling|chattering)\b",
        r"frost ?(?:bite|bitten|nip)\w*",
        r"(?:shaking|shakes|trembling|shivering) (?:\w+ )?(?:with|from) (?:the )?cold\b",
        r"(?:shaking|trembling) (?:uncontrollably|all over|badly|like (?:a leaf|crazy|mad))",
        (
            r"so cold (?:that )?(?:i|we|he|she|they|my|you)? ?(?:cannot|can hardly|can "
            r"barely"
            r"|hurts|it hurts|hands|fingers|am|is)"
        ),
        (
            r"too cold to (?:press|hold|turn|move|feel|think|walk|work|stand|talk|use"
            r"|grip"
            r"|go on|type|go)"
        ),
        (
            r"(?:soaked|soaking|drenched|wet through|wet to the skin)(?: \w+){0,5}? "
            r"(?:freezing|cold|shiver\w*|frozen|trembl\w*|shaking)\b"
        ),
        r"(?:freezing|cold|shivering|shaking) and (?:\w+ )?(?:soaked|soaking|drenched|wet)\b",
        (
            rf"(?:i am|we are|he is|she is|they are|{PERSON} (?:is|are)) (?:\w+ )?wet and "
            r"(?:\w+ )?(?:cold|freezing)\b"
        ),
        r"(?:slurring|slurred|mumbling)\b",
        (
            rf"{PERSON} (?:is |are |seems |getting |looks |acting )+(?:confused|talking "
            r"nonsense|stumbling|clumsy and|drowsy and)\b"
        ),
    ),
    by_people=(
        r"shiver(?:s|y|ing)?\b",
        (
            r"(?<!it )(?<!water )(?:is|am|are) (?:really |so |very |too |getting "
            r"|absolutely "
            r"|ice |bitterly |really really |dangerously |pretty |damn |now |all |also "
            r"|just "
            r"|dead )*(?:freezing(?! (?:the|water|motion|it|level|rain))|frozen "
            r"(?:through"
            r"|stiff|solid)|chilled to)\b"
        ),
        (
            r"(?:am|are|is|feel|feels|got|gets) (?:really |so |very |too |getting |ice "
            r"|awfully |really really |dangerously |damn |extremely |terribly |getting "
            r"really |getting very |getting too )+cold\b(?! (?:light|water|and clear|in "
            r"(?:the|this) (?:frame|picture)|white|blue|tone|for (?:the|my) (?:battery"
            r"|batteries|phone|camera)))"
        ),
        (
            r"(?:i|we|he|she|they) (?:am|are|is) cold\b(?= [.,]|$| and (?:wet|cannot"
            r"|shaking"
            r"|tired|scared|alone)| to the)"
        ),
    ),
)
_SEE: Final = (
    r"(?:cannot|can not|can hardly|can barely|barely|hardly|not) (?:even |really |properly )?see"
)
_WAY: Final = (
    r"(?:trail|path|track|route|trailhead|way back|way out|way down|way home|way up|way"
    r"|road"
    r"|footpath|markers?|blazes?|cairns?)"
)
#: "Too dark, I can't get back the detail": about the frame.
_NO_PICTURE: Final = (
    r"(?! (?:the |any |some |my |more )*(?:details?|colou?rs?|shadows?|textures?|sliders?|dials?"
    r"|rings?|levers?|iso|aperture|numbers?|screen|focus))"
)
_DARK: Final = Rules(
    DangerKind.DARK,
    plain=(
        (
            r"(?:dark|night)\b.*\bonly (?:\w+ ){0,2}?(?:phones?|phone lights?|one "
            r"(?:light"
            r"|lamp|headlamp|torch))\b"
        ),
        r"(?:stuck|trapped|stranded|alone|lost) (?:\w+ ){0,3}?in the dark\b",
        (
            r"(?<!stop )(?<!stops )(?:too dark|so dark) (?:\w+ )?(?:to|that|now|i|we)"
            r" (?:\w+ ){0,3}?(?:walk|see the|hike|get (?:down|out|back)|go on|find|move"
            r"|cannot (?:see|walk|find|go (?:on|back|down|any)|move|hike|tell|make out))\b"
            rf"{_NO_PICTURE}"
        ),
        (
            r"(?:getting|gets|got|nearly|almost|is) dark\b.{0,20}\b(?:i|we) (?:cannot|can not"
            r"|can hardly|can barely) (?:go on|go back|get (?:out|back|down)|walk|move|hike)\b"
            rf"{_NO_PICTURE}"
        ),
        r"(?:night|darkness) (?:has |is )?(?:fallen|on us|upon us)\b",
        (
            r"(?:dark\w*|night\w*|sunset|sun is (?:gone|down|set)|sun (?:gone|set|down)"
            rf"|dusk)\b(?:.{{0,80}})\b(?:no|without|without an?|without our|without my"
            r"|forgot"
            r"|forgot (?:my|the|our)|dead|lost (?:my|the|our)|not have (?:an?|any)"
            r"|not bring (?:an?|any|my|our)|only (?:my|one|the) (?:phone|\w+)|broke (?:my"
            r"|the"
            rf"|our)|left (?:my|the|our)) ?(?:a |working )?{_LIGHTS}\b(?! (?:in|on|left "
            r"(?:in"
            r"|on)|at (?:f|the)|for (?:the|a) (?:shot|frame|picture)|meter|painting|any))"
            r"(?!.*\b(?:iso|shutter|exposure|f ?\d|stops?)\b)"
        ),
        (
            r"(?:no|without an?|forgot (?:my|the|our)|not have an?|dead|lost (?:my"
            rf"|our)) {_LIGHTS}\b.{{0,60}}\b(?:dark|night|sunset|sun is)"
        ),
        (
            rf"{_LIGHTS} (?:is |are |just |has |have |almost |nearly )*(?:dead|died|broken"
            r"|dying|gone|empty|failed|failing|not work\w*|went out|out of"
            rf"|broke)\b.{{0,60}}(?:dark|night|km|mile|trail|path|walk|way|car|sunset|down"
            r"|out here)"
        ),
        (
            rf"(?:dark|night|sunset)\b.{{0,60}}{_LIGHTS} (?:is |are |just |has |have "
            r"|almost "
            r"|nearly )*(?:dead|died|broken|dying|gone|empty|failed|failing|not work\w*"
            r"|broke)\b"
        ),
        r"(?:phone|battery) (?:is |only |just )?(?:at |on )?\d ?(?:percent|pct)?\b.{0,40}\bdark\b",
        (
            r"dark\b.{0,60}\b(?:cannot find|cannot see|lost|scared|stuck|stranded|still "
            r"(?:\w+ )?(?:km|miles?|hours?)|far from|(?:km|miles?|hours?) (?:to go|from"
            r"|left"
            r"|back)|(?:get|find|walk|hike) (?:\w+ )?(?:out|down|back)(?: safely)?\b"
            rf"{_NO_PICTURE}|how do "
            r"(?:i|we) get|alone out here|way out|way back|trail (?:is )?gone)"
        ),
        (
            r"(?:cannot find|cannot see|lost|stuck|stranded|far from"
            r"|alone)\b.{0,60}\b(?:it "
            r"is (?:getting |nearly |almost |pretty )?dark|dark now|in the dark|after "
            r"dark"
            r"|getting dark|nightfall|gets? dark|got dark|(?:before|and) dark)\b(?! "
            r"(?:rock"
            r"|tone|area|corner|part|frame|side|green|in the (?:frame|picture)|shadow))"
        ),
        (
            rf"{_SEE} (?:the |my |our |any |a )?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand"
            r"|boots)\b.*\b(?:dark|night|sun|dusk|sunset)\b"
        ),
        (
            rf"(?:dark|night|sun|dusk|sunset)\b.*\b{_SEE} (?:the |my |our |any |a |where "
            rf")?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand|boots|i am|we are|anything(?= "
            r"[.,]"
            r"|$| any ?more))\b(?! (?:in|on|through) (?:the|my) (?:viewfinder|screen"
            r"|finder"
            r"|frame))"
        ),
        (
            r"(?:caught|surprised|overtaken|trapped|stuck|stranded|lost) (?:out )?(?:by"
            r"|in"
            r"|out by|out in|after|until) (?:the )?(?:dark|darkness|night|nightfall"
            r"|nighttime)\b"
        ),
        (
            r"(?:stuck|stranded|trapped)\b.{0,40}\b(?:after sunset|after dark|overnight"
            r"|in "
            r"the dark|for the night|without a light|all night|no light)\b"
        ),
        (
            r"(?:it is|it got|got|already|now|is) (?:\w+ )?(?:night|dark)\b.*\bstill "
            r"(?:not "
            r"(?:out|down|back|at the)|here|up here|out here|on the trail|in the (?:gorge"
            r"|canyon|woods|forest)|at the fall)\b(?! too)"
        ),
        r"benighted\b",
        r"(?:spend|spending) the night (?:out|here|up here|in the (?:gorge|woods|open|canyon))\b",
        (
            r"(?:it is|it got|so|already|getting|completely) (?:\w+ )?(?:pitch|completely"
            r"|totally|fully) (?:dark|black)\b(?! (?:rock|wall|shadow|frame|in the "
            r"(?:frame"
            r"|picture|shadows)))"
        ),
        r"pitch dark\b(?! (?:shadow|corner|frame|rock))",
        (
            r"(?:night|darkness) (?:is |has )?(?:falling|coming|closing in|caught|fell"
            r"|almost here|here)\b(?=.*\b(?:we|i|no|trail|path|lost|still|car|alone|way"
            r"|how)\b)"
        ),
        (
            r"(?:walk|walking|hike|hiking|climb|climbing|get|getting|find|way) (?:\w+ "
            r"){0,3}?in the dark\b(?=.*\b(?:no|without|cannot|lost|alone|scared|how"
            r"|help)\b)"
        ),
        (
            r"dark\b.{0,30}\bno (?:torch|headlamp|flashlight|lamp)|no (?:torch|headlamp"
            r"|flashlight)\b.{0,30}\bdark"
        ),
    ),
)
#: "The fall got lost in the frame" is about the picture; "on the way to the falls got lost" not.
_NO_SUBJECT: Final = (
    r"(?!(?:(?<=fall )|(?<=falls )|(?<=water )|(?<=cascade )|(?<=stream )|(?<=subject ))"
    r"(?=.*\b(?:frame|picture|photo|image|shot|crop|composition|background|wide)\b))"
)
_LOST: Final = Rules(
    DangerKind.LOST,
    plain=(
        (
            r"(?:ended up|am|are|got|been|went|wandered|way) off (?:the )?(?:trail|path"
            r"|track)(?= [.,]"
            r"|$| and| somewhere| now| in the)|(?:it )?all looks the same(?= [.,]|$| to "
            r"me| here)"
            r"|no (?:more )?(?:path|trail|track) (?:at all|any ?more|here|left|visible"
            r"|in "
            r"sight|to be seen|any where)\b"
        ),
        (
            r"(?:no idea|not know|no clue|not sure|cannot tell) which (?:way|direction"
            r"|path"
            r"|trail|fork)\b(?! (?:to (?:turn|crop|face|point|tilt)|round|the (?:water"
            r"|light"
            r"|flow)))"
        ),
        (
            r"(?:been|am|are|for|hours?) .*\b(?:wandering|looking|searching) (?:\w+ "
            r"){0,4}?(?:the |a |our )?(?:trail|path|way (?:out|back|down)|car|exit)\b(?! "
            r"(?:of|to))"
        ),
        (
            r"(?:missed|passed|overshot) (?:the |our |a )?(?:turn ?off|turning|turn"
            r"|junction"
            r"|fork|trail ?head)\b(?=.*\b(?:now|no|lost|where|path|trail|and|cannot)\b)"
        ),
        (
            rf"{_NO_SUBJECT}"
            r"(?:i am|we are|he is|she is|they are|i think i am|am i|are we|got|i got|we "
            r"got"
            r"|getting|be|been|am|are) (?:\w+ )?(?:\w+ )?lost\b"
            r"(?! (?:in|on|with|at|about|for|by|between) (?:the |these |this |all |your "
            r"|that |all the |my )?(?:menus?|settings?|numbers?|options?|questions?"
            r"|steps?"
            r"|maths?|details?|thoughts?|terms?|words?|views?|beauty|moment|f\b|stops?"
            r"|composition|edit\w*|shadows?|highlights?|noise|whites?|water|translation"
            r"|technical|exposure|manual|here f|\d|spray|focus|jargon|buttons?))"
            r"(?! (?:my|the|a|an|some|it|all|two|one|half|our|\d|detail|texture|focus"
            r"|sight"
            r"|track|interest|count|what|why|how)\b)(?<!highlights are lost)(?<!shadows "
            r"are "
            r"lost)(?<!whites are lost)(?<!details are lost)(?<!detail is "
            r"lost)(?<!textures "
            r"are lost)"
        ),
        (
            r"^(?:lost|totally lost|completely lost|we lost)(?= in the (?:woods|forest"
            r"|fog"
            r"|gorge|dark|bush|valley|mountains?|canyon|trees|mist|snow)| here| somewhere"
            r"| "
            r"and (?:alone|cold|tired|wet)| [.,]|$)"
        ),
        (
            r"(?:lost|cannot find|not find|cannot see|missed|strayed from|wandered off"
            r"|lost "
            r"sight of|unable to find|no sign of) (?:the |our |my |a |any )?(?:\w+ "
            rf")?{_WAY}\b(?= [.,]|$| (?:any ?more|back|out|down|home|to|about|and|in|for"
            r"|an"
            r"|anywhere|again|now|here|we|i|somewhere|since|up|so|after|under|because"
            r"|marks?"
            r"|signs?))(?! (?:to|of|in) (?:set|turn|lock|focus|foam|light|the (?:menu"
            r"|frame"
            r"|picture|setting|manual)|switch|change|get rid|frame))"
        ),
        (
            r"(?:not (?:really |exactly )?know|no idea|no clue|not sure|unsure|cannot "
            r"tell"
            r"|not (?:know )?exactly|idea|not have a clue) (?:of )?where (?:i|we) (?:am"
            r"|are)\b(?! (?:in the (?:menu|walk|list|settings)|focus\w+|supposed))"
        ),
        r"(?:where am i|where are we)\b.*\b(?:lost|no signal|woods|forest|fog)\b",
        (
            r"(?:not (?:really |exactly )?know|no idea|no clue|cannot find out|not sure"
            r"|cannot remember|not remember) (?:how to get|which way (?:is )?|the way"
            r"|how we "
            r"get|how i get|where to go|how to find)(?: (?:back|out|down|home|to the "
            r"(?:car"
            r"|trail|parking|path|trailhead|road|hut)|is|we|i|the (?:car|trail))|$)"
        ),
        (
            r"which way (?:is )?(?:back|out|down|home|to the car|the car|is the (?:car"
            r"|trail"
            r"|trailhead|parking))\b"
        ),
        (
            r"nothing (?:here )?(?:looks|seems|is) familiar\b|not recogni[sz]e "
            r"(?:anything"
            r"|this place|the trail|where)"
        ),
        r"(?:walking|going|hiking|running|wandering|walked|been) (?:around )?in circles\b",
        (
            r"(?:took|taken|take|on|followed|down) (?:the|a) wrong (?:fork|turn|trail"
            r"|path"
            r"|turning|track|way|valley|branch|side)\b(?! of)"
        ),
        (
            r"(?:trail|path|track)(?: \w+)? (?:just |has |is |simply )*(?:disappeared"
            r"|disappears|vanished|vanishes|ended|ends in|gone|petered out|fizzled out"
            r"|stops "
            r"in|lost)\b(?! (?:in|into) (?:the )?(?:frame|shadow|picture|dark corner))"
        ),
        r"disoriented\b|disorientated\b",
        r"stranded\b",
    ),
)

CAUGHT: Final = (
    _COLD,
    _DARK,
    _LOST,
)
