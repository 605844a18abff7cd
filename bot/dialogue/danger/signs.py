"""Signs to leave at once, and people whom cold, dark or the way out has caught."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import PERSON, Rules

_RIVER: Final = (
    r"(?:waters?|river|creek|stream|brook|beck|burn|pool|torrent|water ?level|level|flow"
    r"|rapids|current)"
)
_TURNS: Final = (
    r"(?: (?:is|are|was|has|have|had|been|looks?|seems?|getting|gets|got|turning|turned"
    r"|turns|going|goes|went"
    r"|becoming|became|just|suddenly|now|all|pretty|really|a|bit|more|slowly|quite|so"
    r"|very|kind|of"
    r"|starting|started|to|look|turn|here|there|quickly|fast|rather|slightly|definitely"
    r"|and|higher|foamy|too"
    r"|running|coming|down|from|clear|in|below|above|that|almost|completely|i|think|still"
    r"|again|keeps|keep|level))*"
)
_DIRTY: Final = (
    r"(?:brown\w*|mudd(?:y|ier)|murk(?:y|ier)|chocolate\w*|coffee\w*|dirt(?:y|ier)|silty)"
)
_UP: Final = (
    r"(?:rising\b(?! (?:mist|spray|steam|vapou?r|fog))|risen|rose|swollen|coming up|came "
    r"up|come up|comes up|going up|gone up|went up"
    r"|higher(?! (?:in|up in) the)|climbing|jumped|surging|surged|up (?:a|by|\d|and|fast"
    r"|again|quite|since|half|ten|some|another|about|nearly)"
    r"|creeping up|rises\b|deeper (?:now|than)|swelling|picking up (?:fast|quickly))"
)
_NOT_PICTURE: Final = (
    r"(?!.*\b(?:tannin|peat|tea coloured|iron|in the (?:frame|picture|photo|raw|file|shot"
    r"|jpe?g|image)|on (?:the |my )?screen))"
)
_AMOUNT: Final = (
    r"(?:an?|one|two|three|four|five|six|ten|half an?|\d+|some|another|about|several|good|few"
    r"|at least|almost|nearly|by)"
)

_FLOOD: Final = Rules(
    DangerKind.FLOOD,
    plain=(
        (
            rf"{_RIVER} (?:(?!not|never|nor|rocks?|leaves|over|with)\w+ ){{0,6}}?{_DIRTY}(?= "
            r"[.,]|$| (?:now|all|and|but|since|as|suddenly|fast|today|like|here|so|just"
            r"|quickly|after|from|too|again|coming|down)\b)(?<!over the brown)(?<!tones are "
            rf"brown){_NOT_PICTURE}"
        ),
        (
            rf"{_RIVER} (?:(?!not|never|level|mist|sun|spray|in|of|over|drops?)\w+ "
            rf"){{0,4}}?(?:rising|rises|rose|risen|coming up|came up|swelling|swollen|higher"
            r"|faster and)\b(?! (?:mist|spray|steam|iso|line|to the (?:right|left)|in the "
            r"(?:frame|picture)|key|contrast))"
        ),
        (
            rf"{_RIVER} (?:\w+ ){{0,2}}?(?:up|higher|risen) (?:by )?(?:about )?\d+ ?(?:cm|in"
            r"|inch|inches|m|ft|feet|foot)\b"
        ),
        (
            r"(?:logs?|trunks?|trees|branches|debris|wood) (?:are |is |keep |started "
            r")*(?:coming|going|shooting|crashing) (?:over|down|through|past)\b"
        ),
        (
            r"(?:crossing|ford|stepping stones|way back|path|trail|bridge|stones) (?:back "
            r")?(?:is|are|was|got|has been) (?:now |all |already )*(?:underwater|flooded"
            r"|covered|washed away|washed out|submerged)\b"
        ),
        (
            rf"(?<!mist from the ){_RIVER}{_TURNS} {_DIRTY}\b(?! (?:rock|stone|bear|mug))(?! "
            rf".*stays? clear){_NOT_PICTURE}"
        ),
        (
            r"(?:brown|muddy|dirty|murky|chocolate|brownish|brown muddy|silty)(?: \w+)? "
            rf"(?:water|river|creek|stream|torrent|flow){_NOT_PICTURE}"
        ),
        rf"{_RIVER}{_TURNS} {_UP}",
        (
            r"it (?:all |just |suddenly |has |is |now )*(?:went|gone|turned|turning|going"
            r"|goes|getting|got|changed) (?:\w+ ){0,3}?(?:to |into )?(?:brown|chocolate|muddy"
            r"|mud|murky)\b"
            r"(?! (?:tone|cast|tint))"
        ),
        (
            r"it (?:has |is )?(?:came up|come up|coming up|rising|rose|risen|went up|gone "
            rf"up) (?:{_AMOUNT} )*(?:fast|quick|quickly|foot|feet|inch|inches|cm|m|ft|hand)"
        ),
        (
            rf"(?:up|rose|risen|higher) (?:by )?(?:{_AMOUNT} )+(?:foot|feet|inch|inches|cm"
            r"|hand)\b(?=.*\b(?:since|now|in the last|already|ago|than)\b)(?=.*\b(?:water"
            r"|river|creek|stream|mark|level)\b)"
        ),
        (
            r"(?:rumbl\w+|roar\w*|boom\w*|noise)(?: \w+){0,2} (?:upstream|upriver|up the "
            r"(?:valley|canyon|gorge|creek|river)|from above)"
        ),
        (
            r"(?:roar|noise|sound)(?: of (?:the )?(?:water|fall|falls|creek|river))? (?:just "
            r"|is |has |got |getting |gets |grew |suddenly |now |become |became |all of a "
            r"sudden )+louder"
        ),
        r"(?:sudden|new|strange|growing|louder) roar\b",
        (
            r"(?:twigs|branches|sticks|debris|logs|tree trunks|whole trees|trees|driftwood"
            r"|mud)(?: and \w+)?(?: \w+){0,2}? (?:coming|floating|washing|drifting|carried"
            r"|going|rushing|came|swept|in the (?:water|current) now)"
            r"(?: down| past| by|$| now| along)"
        ),
        (
            r"(?:lots|more and more|suddenly|loads|tons|bunch) (?:of )?(?:leaves|twigs|foam"
            r"|sticks|debris)(?: and \w+)?(?: \w+){0,3} (?:down|past|by|floating|coming|in "
            r"the (?:water|creek|stream|river))"
        ),
        r"flash ?flood\w*",
        (
            r"(?:is|are|was|getting|got|been|it is|now|river|creek|stream|trail|path|crossing"
            r"|road|bridge|gorge|valley|canyon) (?:now |all |completely |getting )*flood(?:ed"
            r"|ing)\b(?! (?:with|by|in) (?:\w+ )?light)"
        ),
        r"^flood(?:ing)?(?: here| now| coming)?$",
        r"flood (?:warning|watch|alert|wave|siren|water|is|coming|surge)\b",
        r"wall of (?:brown |muddy )?water\b",
        r"(?:dam|weir) (?:\w+ ){0,2}(?:broke|burst|release\w*|siren|opened|opening|alarm|horn)",
        (
            r"sirens? (?:is |are |just |has )*(?:going|went|sounding|sounded|upstream|wailing"
            r"|from the)"
        ),
        (
            r"(?:marked|mark|crossed|stood|sat|dry|ago|earlier|before|this morning|was|were"
            r"|used to be)\b.{0,60}\b(?:underwater|submerged|under now|covered(?: by| with| "
            r"in)? (?:by |with )?(?:water|now)|gone , covered|washed away|cm deep|deep now"
            r"|flooded)"
        ),
        (
            r"(?:rocks?|stones?|mark|marker|stepping stones|path|beach|gravel|ledge"
            r"|crossing)(?: \w+){0,8}? (?:underwater now|now underwater|already underwater"
            r"|is underwater|are underwater|submerged now|now submerged|gone under|covered "
            r"now|now covered|disappeared)\b"
        ),
        r"cut off by (?:the )?(?:water|river|creek|stream)",
        r"(?:brown|muddy|big|huge) wave\b|wave (?:of (?:brown |muddy )?water|coming down)\b",
        (
            r"(?:stepping stones|stones|rocks|crossing)(?: \w+){0,3}? (?:have |has |are |is "
            r"|just )+(?:disappeared|vanished|gone|underwater)\b(?! (?:in|into) (?:the "
            r")?(?:shadow|frame|dark|black|white|haze|mist))"
        ),
        r"(?:surge|torrent) (?:of water |is )?coming\b",
    ),
)

_LIGHTS: Final = r"(?:torch(?:es)?|headlamps?|flashlights?|lamps?|light source|lights?)"
_THUNDER: Final = Rules(
    DangerKind.THUNDER,
    plain=(
        r"thunder ?clouds?\b(?! (?:photo|in the (?:frame|picture)|for drama))",
        (
            r"(?:first|a|big|huge|another|of) bolts?\b(?=.*\b(?:sky|ridge|thunder|hill"
            r"|light\w*|cloud\w*|over|storm)\b)(?! (?:on|for|in) (?:the|my) (?:tripod|plate"
            r"|head))"
        ),
        (
            r"(?<! as )(?<!fall is )(?<!falls is )(?<!water is )(?<!waterfall is "
            r")(?<!cascade is )thunder\b(?! (?:of the (?:fall|water|cascade|river)|mug|creek"
            r"|falls|canyon|point|valley|gorge))"
            r"(?!.*\bof the (?:fall|falls|water|cascade)\b)"
        ),
        r"thunder ?(?:storms?|claps?|heads?)\b",
        (
            r"(?:it is|is|starts?|started|keeps|begins?|began|starting) (?:\w+ "
            r")?thundering\b(?! (?:down|over|into|past|fall|water|cascade))"
        ),
        (
            r"(?<!phone is )lightning\b(?! (?:cable|port|charger|connector|trigger|fast"
            r"|adapter|plug|bug|quick))"
        ),
        (
            r"storm (?:is |has |clouds? |front |cell )*(?:coming|rolling|moving|building"
            r"|close|closing|here|near|nearing|approaching|above|overhead|brewing|right"
            r"|almost|getting|on top|about to|blowing|arriv\w+)"
        ),
        r"(?:flash|flashes)(?: \w+){0,8}? (?:count\w*|seconds later|boom|bang|rumbl\w*|and a)\b",
        (
            r"(?:saw|see|seen|seeing|was that|is that|another|some) (?:a |some |the |big "
            r"|bright )*flash(?:es)? (?:over|behind|in the (?:sky|clouds|distance)|above|to "
            r"the|from the cloud)"
        ),
        (
            r"(?:hear|heard|hearing|distant|loud|big|sky|clouds? (?:is|are)|far|deep|that) "
            r"(?:a |some |the |distant |loud |low |deep )*(?:rumbl\w+|boom(?:s|ing)?)\b(?! "
            r"(?:of the|from the fall))"
        ),
        (
            r"rumbl\w+ (?:in the (?:distance|sky|clouds|west|east|north|south)|overhead|far"
            r"|behind the|over the (?:ridge|hill|mountain)|getting)"
        ),
        r"hair (?:is |are |on \w+ \w+ )*(?:stand\w*|going|rising|lifting)",
        (
            r"(?:tripod|poles?|metal|rocks?|camera|ridge|air|legs) (?:is |are |starts? "
            r"|started |just )*(?:to )?(?:buzz\w*|crackl\w*)"
        ),
        r"(?:buzzing|crackling) (?:tripod|poles?|air|metal|rocks?)",
        r"struck (?:right |close |very )?(?:near|close|next|the (?:tree|ridge)|a tree)",
    ),
)

_OWN: Final = r"(?:my|his|her|our|their|your|both|the)"
_ENDS: Final = r"(?:fingers?|hands?|toes?|feet|foot|thumbs?|face|nose|ears|fingertips|cheeks)"
_COLD: Final = Rules(
    DangerKind.COLD,
    plain=(
        (
            r"(?:cannot|not|barely|hardly|lost|no longer|losing) (?:really |even )?(?:feel"
            rf"|feeling)(?: in)? (?:(?:{_OWN}|any|most of) )*{_ENDS}\b"
        ),
        (
            rf"{_OWN} {_ENDS}(?: (?:is|are|have|has|go|gone|going|went|so|getting|feel|feels"
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
            rf"{_ENDS} (?:is |are |do |does |will |have )*not (?:work|working|move|moving|obey"
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
            r"so cold (?:that )?(?:i|we|he|she|they|my|you)? ?(?:cannot|can hardly|can barely"
            r"|hurts|it hurts|hands|fingers|am|is)"
        ),
        (
            r"too cold to (?:press|hold|turn|move|feel|think|walk|work|stand|talk|use|grip"
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
            r"(?<!it )(?<!water )(?:is|am|are) (?:really |so |very |too |getting |absolutely "
            r"|ice |bitterly |really really |dangerously |pretty |damn |now |all |also |just "
            r"|dead )*(?:freezing(?! (?:the|water|motion|it|level|rain))|frozen (?:through"
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
            r"(?:i|we|he|she|they) (?:am|are|is) cold\b(?= [.,]|$| and (?:wet|cannot|shaking"
            r"|tired|scared|alone)| to the)"
        ),
    ),
)

_SEE: Final = (
    r"(?:cannot|can not|can hardly|can barely|barely|hardly|not) (?:even |really |properly )?see"
)
_WAY: Final = (
    r"(?:trail|path|track|route|trailhead|way back|way out|way down|way home|way up|way|road"
    r"|footpath|markers?|blazes?|cairns?)"
)
_DARK: Final = Rules(
    DangerKind.DARK,
    plain=(
        (
            r"(?:dark|night)\b.*\bonly (?:\w+ ){0,2}?(?:phones?|phone lights?|one (?:light"
            r"|lamp|headlamp|torch))\b"
        ),
        r"(?:stuck|trapped|stranded|alone|lost) (?:\w+ ){0,3}?in the dark\b",
        (
            r"(?:too dark|so dark) (?:\w+ )?(?:to|that|now|i|we) (?:\w+ ){0,3}?(?:walk|see "
            r"the|hike|get (?:down|out|back)|go on|find|cannot|move)\b"
        ),
        r"(?:night|darkness) (?:has |is )?(?:fallen|on us|upon us)\b",
        (
            r"(?:dark\w*|night\w*|sunset|sun is (?:gone|down|set)|sun (?:gone|set|down)"
            rf"|dusk)\b(?:.{{0,80}})\b(?:no|without|without an?|without our|without my|forgot"
            r"|forgot (?:my|the|our)|dead|lost (?:my|the|our)|not have (?:an?|any)"
            r"|not bring (?:an?|any|my|our)|only (?:my|one|the) (?:phone|\w+)|broke (?:my|the"
            rf"|our)|left (?:my|the|our)) ?(?:a |working )?{_LIGHTS}\b(?! (?:in|on|left (?:in"
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
            rf"(?:dark|night|sunset)\b.{{0,60}}{_LIGHTS} (?:is |are |just |has |have |almost "
            r"|nearly )*(?:dead|died|broken|dying|gone|empty|failed|failing|not work\w*"
            r"|broke)\b"
        ),
        r"(?:phone|battery) (?:is |only |just )?(?:at |on )?\d ?(?:percent|pct)?\b.{0,40}\bdark\b",
        (
            r"dark\b.{0,60}\b(?:cannot find|cannot see|lost|scared|stuck|stranded|still "
            r"(?:\w+ )?(?:km|miles?|hours?)|far from|(?:km|miles?|hours?) (?:to go|from|left"
            r"|back)|(?:get|find|walk|hike) (?:\w+ )?(?:out|down|back)(?: safely)?|how do "
            r"(?:i|we) get|alone out here|way out|way back|trail (?:is )?gone)"
        ),
        (
            r"(?:cannot find|cannot see|lost|stuck|stranded|far from|alone)\b.{0,60}\b(?:it "
            r"is (?:getting |nearly |almost |pretty )?dark|dark now|in the dark|after dark"
            r"|getting dark|nightfall|gets? dark|got dark|(?:before|and) dark)\b(?! (?:rock"
            r"|tone|area|corner|part|frame|side|green|in the (?:frame|picture)|shadow))"
        ),
        (
            rf"{_SEE} (?:the |my |our |any |a )?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand"
            r"|boots)\b.*\b(?:dark|night|sun|dusk|sunset)\b"
        ),
        (
            rf"(?:dark|night|sun|dusk|sunset)\b.*\b{_SEE} (?:the |my |our |any |a |where "
            rf")?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand|boots|i am|we are|anything(?= [.,]"
            r"|$| any ?more))\b(?! (?:in|on|through) (?:the|my) (?:viewfinder|screen|finder"
            r"|frame))"
        ),
        (
            r"(?:caught|surprised|overtaken|trapped|stuck|stranded|lost) (?:out )?(?:by|in"
            r"|out by|out in|after|until) (?:the )?(?:dark|darkness|night|nightfall"
            r"|nighttime)\b"
        ),
        (
            r"(?:stuck|stranded|trapped)\b.{0,40}\b(?:after sunset|after dark|overnight|in "
            r"the dark|for the night|without a light|all night|no light)\b"
        ),
        (
            r"(?:it is|it got|got|already|now|is) (?:\w+ )?(?:night|dark)\b.*\bstill (?:not "
            r"(?:out|down|back|at the)|here|up here|out here|on the trail|in the (?:gorge"
            r"|canyon|woods|forest)|at the fall)\b(?! too)"
        ),
        r"benighted\b",
        r"(?:spend|spending) the night (?:out|here|up here|in the (?:gorge|woods|open|canyon))\b",
        (
            r"(?:it is|it got|so|already|getting|completely) (?:\w+ )?(?:pitch|completely"
            r"|totally|fully) (?:dark|black)\b(?! (?:rock|wall|shadow|frame|in the (?:frame"
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
            r"){0,3}?in the dark\b(?=.*\b(?:no|without|cannot|lost|alone|scared|how|help)\b)"
        ),
        (
            r"dark\b.{0,30}\bno (?:torch|headlamp|flashlight|lamp)|no (?:torch|headlamp"
            r"|flashlight)\b.{0,30}\bdark"
        ),
    ),
)

_LOST: Final = Rules(
    DangerKind.LOST,
    plain=(
        (
            r"no (?:more )?(?:path|trail|track) (?:at all|any ?more|here|left|visible|in "
            r"sight|to be seen|any where)\b"
        ),
        (
            r"(?:no idea|not know|no clue|not sure|cannot tell) which (?:way|direction|path"
            r"|trail|fork)\b(?! (?:to (?:turn|crop|face|point|tilt)|round|the (?:water|light"
            r"|flow)))"
        ),
        (
            r"(?:been|am|are|for|hours?) .*\b(?:wandering|looking|searching) (?:\w+ "
            r"){0,4}?(?:the |a |our )?(?:trail|path|way (?:out|back|down)|car|exit)\b(?! "
            r"(?:of|to))"
        ),
        (
            r"(?:missed|passed|overshot) (?:the |our |a )?(?:turn ?off|turning|turn|junction"
            r"|fork|trail ?head)\b(?=.*\b(?:now|no|lost|where|path|trail|and|cannot)\b)"
        ),
        (
            r"(?:i am|we are|he is|she is|they are|i think i am|am i|are we|got|i got|we got"
            r"|getting|be|been|am|are) (?:\w+ )?(?:\w+ )?lost\b"
            r"(?! (?:in|on|with|at|about|for|by|between) (?:the |these |this |all |your "
            r"|that |all the |my )?(?:menus?|settings?|numbers?|options?|questions?|steps?"
            r"|maths?|details?|thoughts?|terms?|words?|views?|beauty|moment|f\b|stops?"
            r"|composition|edit\w*|shadows?|highlights?|noise|whites?|water|translation"
            r"|technical|exposure|manual|here f|\d|spray|focus|jargon|buttons?))"
            r"(?! (?:my|the|a|an|some|it|all|two|one|half|our|\d|detail|texture|focus|sight"
            r"|track|interest|count|what|why|how)\b)(?<!highlights are lost)(?<!shadows are "
            r"lost)(?<!whites are lost)(?<!details are lost)(?<!detail is lost)(?<!textures "
            r"are lost)"
        ),
        (
            r"^(?:lost|totally lost|completely lost|we lost)(?= in the (?:woods|forest|fog"
            r"|gorge|dark|bush|valley|mountains?|canyon|trees|mist|snow)| here| somewhere| "
            r"and (?:alone|cold|tired|wet)| [.,]|$)"
        ),
        (
            r"(?:lost|cannot find|not find|cannot see|missed|strayed from|wandered off|lost "
            r"sight of|unable to find|no sign of) (?:the |our |my |a |any )?(?:\w+ "
            rf")?{_WAY}\b(?= [.,]|$| (?:any ?more|back|out|down|home|to|about|and|in|for|an"
            r"|anywhere|again|now|here|we|i|somewhere|since|up|so|after|under|because|marks?"
            r"|signs?))(?! (?:to|of|in) (?:set|turn|lock|focus|foam|light|the (?:menu|frame"
            r"|picture|setting|manual)|switch|change|get rid|frame))"
        ),
        (
            r"(?:not (?:really |exactly )?know|no idea|no clue|not sure|unsure|cannot tell"
            r"|not (?:know )?exactly|idea|not have a clue) (?:of )?where (?:i|we) (?:am"
            r"|are)\b(?! (?:in the (?:menu|walk|list|settings)|focus\w+|supposed))"
        ),
        r"(?:where am i|where are we)\b.*\b(?:lost|no signal|woods|forest|fog)\b",
        (
            r"(?:not (?:really |exactly )?know|no idea|no clue|cannot find out|not sure"
            r"|cannot remember|not remember) (?:how to get|which way (?:is )?|the way|how we "
            r"get|how i get|where to go|how to find)(?: (?:back|out|down|home|to the (?:car"
            r"|trail|parking|path|trailhead|road|hut)|is|we|i|the (?:car|trail))|$)"
        ),
        (
            r"which way (?:is )?(?:back|out|down|home|to the car|the car|is the (?:car|trail"
            r"|trailhead|parking))\b"
        ),
        (
            r"nothing (?:here )?(?:looks|seems|is) familiar\b|not recogni[sz]e (?:anything"
            r"|this place|the trail|where)"
        ),
        r"(?:walking|going|hiking|running|wandering|walked|been) (?:around )?in circles\b",
        (
            r"(?:took|taken|take|on|followed|down) (?:the|a) wrong (?:fork|turn|trail|path"
            r"|turning|track|way|valley|branch|side)\b(?! of)"
        ),
        (
            r"(?:trail|path|track)(?: \w+)? (?:just |has |is |simply )*(?:disappeared"
            r"|disappears|vanished|vanishes|ended|ends in|gone|petered out|fizzled out|stops "
            r"in|lost)\b(?! (?:in|into) (?:the )?(?:frame|shadow|picture|dark corner))"
        ),
        r"disoriented\b|disorientated\b",
        r"stranded\b",
    ),
)

SIGNS: Final = (_FLOOD, _THUNDER, _COLD, _DARK, _LOST)
