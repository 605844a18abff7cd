"""Signs to leave at once, and people whom cold, dark or the way out has caught."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import PERSON, Rules

_RIVER: Final = r"(?:waters?|river|creek|stream|brook|beck|burn|pool|torrent|water ?level|level|flow|rapids|current)"
_TURNS: Final = (
    r"(?: (?:is|are|was|has|have|had|been|looks?|seems?|getting|gets|got|turning|turned|turns|going|goes|went"
    r"|becoming|became|just|suddenly|now|all|pretty|really|a|bit|more|slowly|quite|so|very|kind|of"
    r"|starting|started|to|look|turn|here|there|quickly|fast|rather|slightly|definitely|and|higher|foamy|too"
    r"|running|coming|down|from|clear|in|below|above|that|almost|completely|i|think|still|again|keeps|keep|level))*"
)
_DIRTY: Final = (
    r"(?:brown\w*|mudd(?:y|ier)|murk(?:y|ier)|chocolate\w*|coffee\w*|dirt(?:y|ier)|silty)"
)
_UP: Final = (
    r"(?:rising\b(?! (?:mist|spray|steam|vapou?r|fog))|risen|rose|swollen|coming up|came up|come up|comes up|going up|gone up|went up"
    r"|higher(?! (?:in|up in) the)|climbing|jumped|surging|surged|up (?:a|by|\d|and|fast|again|quite|since|half|ten|some|another|about|nearly)"
    r"|creeping up|rises\b|deeper (?:now|than)|swelling|picking up (?:fast|quickly))"
)
_NOT_PICTURE: Final = r"(?!.*\b(?:tannin|peat|tea coloured|iron|in the (?:frame|picture|photo|raw|file|shot|jpe?g|image)|on (?:the |my )?screen))"
_AMOUNT: Final = r"(?:an?|one|two|three|four|five|six|ten|half an?|\d+|some|another|about|several|good|few|at least|almost|nearly|by)"

_FLOOD: Final = Rules(
    DangerKind.FLOOD,
    gate="brown|mudd|murk|choc|coffee|dirt|silt|ris|rose|swoll|swell|up|higher|jump|surg|rumbl|roar|twig|branch"
    "|stick|debris|log|leaves|flood|wall of|dam|siren|under|cover|submerg|cut off|deep|climb|creep|tree|gone|louder",
    plain=(
        rf"{_RIVER} (?:(?!not|never|nor|rocks?|leaves|over|with)\w+ ){{0,6}}?{_DIRTY}(?= [.,]|$| (?:now|all|and|but|since|as|suddenly|fast|today|like|here|so|just|quickly|after|from|too|again|coming|down)\b)(?<!over the brown)(?<!tones are brown){_NOT_PICTURE}",
        rf"{_RIVER} (?:(?!not|never|level|mist|sun|spray|in|of|over|drops?)\w+ ){{0,4}}?(?:rising|rises|rose|risen|coming up|came up|swelling|swollen|higher|faster and)\b(?! (?:mist|spray|steam|iso|line|to the (?:right|left)|in the (?:frame|picture)|key|contrast))",
        rf"{_RIVER} (?:\w+ ){{0,2}}?(?:up|higher|risen) (?:by )?(?:about )?\d+ ?(?:cm|in|inch|inches|m|ft|feet|foot)\b",
        r"(?:logs?|trunks?|trees|branches|debris|wood) (?:are |is |keep |started )*(?:coming|going|shooting|crashing) (?:over|down|through|past)\b",
        r"(?:crossing|ford|stepping stones|way back|path|trail|bridge|stones) (?:back )?(?:is|are|was|got|has been) (?:now |all |already )*(?:underwater|gone|flooded|covered|washed away|washed out|submerged)\b",
        rf"(?<!mist from the ){_RIVER}{_TURNS} {_DIRTY}\b(?! (?:rock|stone|bear|mug))(?! .*stays? clear){_NOT_PICTURE}",
        rf"(?:brown|muddy|dirty|murky|chocolate|brownish|brown muddy|silty)(?: \w+)? (?:water|river|creek|stream|torrent|flow){_NOT_PICTURE}",
        rf"{_RIVER}{_TURNS} {_UP}",
        r"it (?:all |just |suddenly |has |is |now )*(?:went|gone|turned|turning|going|goes|getting|got|changed) (?:\w+ ){0,3}?(?:to |into )?(?:brown|chocolate|muddy|mud|murky)\b"
        r"(?! (?:tone|cast|tint))",
        rf"it (?:has |is )?(?:came up|come up|coming up|rising|rose|risen|went up|gone up) (?:{_AMOUNT} )*(?:fast|quick|quickly|foot|feet|inch|inches|cm|m|ft|hand)",
        rf"(?:up|rose|risen|higher) (?:by )?(?:{_AMOUNT} )+(?:foot|feet|inch|inches|cm|hand)\b(?=.*\b(?:since|now|in the last|already|ago|than)\b)(?=.*\b(?:water|river|creek|stream|mark|level)\b)",
        r"(?:rumbl\w+|roar\w*|boom\w*|noise)(?: \w+){0,2} (?:upstream|upriver|up the (?:valley|canyon|gorge|creek|river)|from above)",
        r"(?:roar|noise|sound)(?: of (?:the )?(?:water|fall|falls|creek|river))? (?:just |is |has |got |getting |gets |grew |suddenly |now |become |became |all of a sudden )+louder",
        r"(?:sudden|new|strange|growing|louder) roar\b",
        r"(?:twigs|branches|sticks|debris|logs|tree trunks|whole trees|trees|driftwood|mud)(?: and \w+)?(?: \w+){0,2}? (?:coming|floating|washing|drifting|carried|going|rushing|came|swept|in the (?:water|current) now)"
        r"(?: down| past| by|$| now| along)",
        r"(?:lots|more and more|suddenly|loads|tons|bunch) (?:of )?(?:leaves|twigs|foam|sticks|debris)(?: and \w+)?(?: \w+){0,3} (?:down|past|by|floating|coming|in the (?:water|creek|stream|river))",
        r"flash ?flood\w*",
        r"(?:is|are|was|getting|got|been|it is|now|river|creek|stream|trail|path|crossing|road|bridge|gorge|valley|canyon) (?:now |all |completely |getting )*flood(?:ed|ing)\b(?! (?:with|by|in) (?:\w+ )?light)",
        r"^flood(?:ing)?(?: here| now| coming)?$",
        r"flood (?:warning|watch|alert|wave|siren|water|is|coming|surge)\b",
        r"wall of (?:brown |muddy )?water\b",
        r"(?:dam|weir) (?:\w+ ){0,2}(?:broke|burst|release\w*|siren|opened|opening|alarm|horn)",
        r"sirens? (?:is |are |just |has )*(?:going|went|sounding|sounded|upstream|wailing|from the)",
        r"(?:marked|mark|crossed|stood|sat|dry|ago|earlier|before|this morning|was|were|used to be)\b.{0,60}\b(?:underwater|submerged|under now|covered(?: by| with| in)? (?:by |with )?(?:water|now)|gone , covered|washed away|cm deep|deep now|flooded)",
        r"(?:rocks?|stones?|mark|marker|stepping stones|path|beach|gravel|ledge|crossing)(?: \w+){0,8}? (?:underwater now|now underwater|already underwater|is underwater|are underwater|submerged now|now submerged|gone under|covered now|now covered|disappeared)\b",
        r"cut off by (?:the )?(?:water|river|creek|stream)",
        r"(?:surge|torrent) (?:of water |is )?coming\b",
    ),
)

_LIGHTS: Final = r"(?:torch(?:es)?|headlamps?|flashlights?|lamps?|light source|lights?)"
_THUNDER: Final = Rules(
    DangerKind.THUNDER,
    gate="bolt|thunder|lightning|storm|flash|rumbl|hair|buzz|crackl|count|struck|boom|bang",
    plain=(
        r"thunder ?clouds?\b(?! (?:photo|in the (?:frame|picture)|for drama))",
        r"(?:first|a|big|huge|another|of) bolts?\b(?=.*\b(?:sky|ridge|thunder|hill|light\w*|cloud\w*|over|storm)\b)(?! (?:on|for|in) (?:the|my) (?:tripod|plate|head))",
        r"(?<! as )(?<!fall is )(?<!falls is )(?<!water is )(?<!waterfall is )(?<!cascade is )thunder\b(?! (?:of the (?:fall|water|cascade|river)|mug|creek|falls|canyon|point|valley|gorge))"
        r"(?!.*\bof the (?:fall|falls|water|cascade)\b)",
        r"thunder ?(?:storms?|claps?|heads?)\b",
        r"(?:it is|is|starts?|started|keeps|begins?|began|starting) (?:\w+ )?thundering\b(?! (?:down|over|into|past|fall|water|cascade))",
        r"(?<!phone is )lightning\b(?! (?:cable|port|charger|connector|trigger|fast|adapter|plug|bug|quick))",
        r"storm (?:is |has |clouds? |front |cell )*(?:coming|rolling|moving|building|close|closing|here|near|nearing|approaching|above|overhead|brewing|right|almost|getting|on top|about to|blowing|arriv\w+)",
        r"(?:flash|flashes)(?: \w+){0,8}? (?:count\w*|seconds later|boom|bang|rumbl\w*|and a)\b",
        r"(?:saw|see|seen|seeing|was that|is that|another|some) (?:a |some |the |big |bright )*flash(?:es)? (?:over|behind|in the (?:sky|clouds|distance)|above|to the|from the cloud)",
        r"(?:hear|heard|hearing|distant|loud|big|sky|clouds? (?:is|are)|far|deep|that) (?:a |some |the |distant |loud |low |deep )*(?:rumbl\w+|boom(?:s|ing)?)\b(?! (?:of the|from the fall))",
        r"rumbl\w+ (?:in the (?:distance|sky|clouds|west|east|north|south)|overhead|far|behind the|over the (?:ridge|hill|mountain)|getting)",
        r"hair (?:is |are |on \w+ \w+ )*(?:stand\w*|going|rising|lifting)",
        r"(?:tripod|poles?|metal|rocks?|camera|ridge|air|legs) (?:is |are |starts? |started |just )*(?:to )?(?:buzz\w*|crackl\w*)",
        r"(?:buzzing|crackling) (?:tripod|poles?|air|metal|rocks?)",
        r"struck (?:right |close |very )?(?:near|close|next|the (?:tree|ridge)|a tree)",
    ),
)

_OWN: Final = r"(?:my|his|her|our|their|your|both|the)"
_ENDS: Final = r"(?:fingers?|hands?|toes?|feet|foot|thumbs?|face|nose|ears|fingertips|cheeks)"
_COLD: Final = Rules(
    DangerKind.COLD,
    gate="feel|shiver|shak|teeth|finger|hand|toe|feet|thumb|numb|blue|hypoth|frost|soak|drench|wet|freez|froz"
    "|cold|slur|stumbl|nonsense|confus|mumbl|trembl|chill",
    plain=(
        rf"(?:cannot|not|barely|hardly|lost|no longer|losing) (?:really |even )?(?:feel|feeling)(?: in)? (?:(?:{_OWN}|any|most of) )*{_ENDS}\b",
        rf"{_OWN} {_ENDS}(?: (?:is|are|have|has|go|gone|going|went|so|getting|feel|feels|got|totally|all|really|white|both|and|completely|red|starting|to|turning|turned|quite|pretty|a|bit|just|like))* (?:numb|blue|frozen|freezing|stiff|useless|white|ice|tingl\w+|waxy|burning)\b(?! (?:balance|at))",
        rf"^{_ENDS}(?: and \w+)?(?: (?:is|are|have|has|go|gone|going|totally|all|completely|so|getting|both))* (?:numb|blue|frozen|freezing|white and)\b",
        rf"numb (?:{_ENDS}|from the cold|with cold|all over)\b",
        rf"{_ENDS} (?:is |are |do |does |will |have )*not (?:work|working|move|moving|obey|bend|function)\w*",
        rf"(?:{_OWN} )lips(?: \w+)? (?:are |is |have |went |turning |turned |look |looking |gone |going )*blue\b|lips are (?:turning |going |all )?blue\b(?! (?:in|on))",
        r"(?:her|his|my|their|is|the) teeth\b.{0,20}\bchatter\w*|teeth (?:are |keep |will not |is |not |stop )*chatter\w*",
        r"hypotherm\w+",
        r"frost ?(?:bite|bitten|nip)\w*",
        r"(?:shaking|shakes|trembling|shivering) (?:\w+ )?(?:with|from) (?:the )?cold\b",
        r"(?:shaking|trembling) (?:uncontrollably|all over|badly|like (?:a leaf|crazy|mad))",
        r"so cold (?:that )?(?:i|we|he|she|they|my|you)? ?(?:cannot|can hardly|can barely|hurts|it hurts|hands|fingers|am|is)",
        r"too cold to (?:press|hold|turn|move|feel|think|walk|work|stand|talk|use|grip|go on|type|go)",
        r"(?:soaked|soaking|drenched|wet through|wet to the skin)(?: \w+){0,5}? (?:freezing|cold|shiver\w*|frozen|trembl\w*|shaking)\b",
        r"(?:freezing|cold|shivering|shaking) and (?:\w+ )?(?:soaked|soaking|drenched|wet)\b",
        rf"(?:i am|we are|he is|she is|they are|{PERSON} (?:is|are)) (?:\w+ )?wet and (?:\w+ )?(?:cold|freezing)\b",
        r"(?:slurring|slurred|mumbling)\b",
        rf"{PERSON} (?:is |are |seems |getting |looks |acting )+(?:confused|talking nonsense|stumbling|clumsy and|drowsy and)\b",
    ),
    by_people=(
        r"shiver(?:s|y|ing)?\b",
        r"(?<!it )(?<!water )(?:is|am|are) (?:really |so |very |too |getting |absolutely |ice |bitterly |really really |dangerously |pretty |damn |now |all |also |just |dead )*(?:freezing(?! (?:the|water|motion|it|level|rain))|frozen (?:through|stiff|solid)|chilled to)\b",
        r"(?:am|are|is|feel|feels|got|gets) (?:really |so |very |too |getting |ice |awfully |really really |dangerously |damn |extremely |terribly |getting really |getting very |getting too )+cold\b(?! (?:light|water|and clear|in (?:the|this) (?:frame|picture)|white|blue|tone|for (?:the|my) (?:battery|batteries|phone|camera)))",
        r"(?:i|we|he|she|they) (?:am|are|is) cold\b(?= [.,]|$| and (?:wet|cannot|shaking|tired|scared|alone)| to the)",
    ),
)

_SEE: Final = (
    r"(?:cannot|can not|can hardly|can barely|barely|hardly|not) (?:even |really |properly )?see"
)
_WAY: Final = r"(?:trail|path|track|route|trailhead|way back|way out|way down|way home|way up|way|road|footpath|markers?|blazes?|cairns?)"
_DARK: Final = Rules(
    DangerKind.DARK,
    gate="dark|night|torch|headlamp|flashlight|lamp|light|sunset|sun |dusk|benight|see",
    plain=(
        r"(?:dark|night)\b.*\bonly (?:\w+ ){0,2}?(?:phones?|phone lights?|one (?:light|lamp|headlamp|torch))\b",
        r"(?:stuck|trapped|stranded|alone|lost) (?:\w+ ){0,3}?in the dark\b",
        r"(?:too dark|so dark) (?:\w+ )?(?:to|that|now|i|we) (?:\w+ ){0,3}?(?:walk|see the|hike|get (?:down|out|back)|go on|find|cannot|move)\b",
        r"(?:night|darkness) (?:has |is )?(?:fallen|on us|upon us)\b",
        rf"(?:dark\w*|night\w*|sunset|sun is (?:gone|down|set)|sun (?:gone|set|down)|dusk)\b(?:.{{0,80}})\b(?:no|without|without an?|without our|without my|forgot|forgot (?:my|the|our)|dead|lost (?:my|the|our)|not have (?:an?|any)"
        rf"|not bring (?:an?|any|my|our)|only (?:my|one|the) (?:phone|\w+)|broke (?:my|the|our)|left (?:my|the|our)) ?(?:a |working )?{_LIGHTS}\b(?! (?:in|on|left (?:in|on)|at (?:f|the)|for (?:the|a) (?:shot|frame|picture)|meter|painting|any))"
        r"(?!.*\b(?:iso|shutter|exposure|f ?\d|stops?)\b)",
        rf"(?:no|without an?|forgot (?:my|the|our)|not have an?|dead|lost (?:my|our)) {_LIGHTS}\b.{{0,60}}\b(?:dark|night|sunset|sun is)",
        rf"{_LIGHTS} (?:is |are |just |has |have |almost |nearly )*(?:dead|died|broken|dying|gone|empty|failed|failing|not work\w*|went out|out of|broke)\b.{{0,60}}(?:dark|night|km|mile|trail|path|walk|way|car|sunset|down|out here)",
        rf"(?:dark|night|sunset)\b.{{0,60}}{_LIGHTS} (?:is |are |just |has |have |almost |nearly )*(?:dead|died|broken|dying|gone|empty|failed|failing|not work\w*|broke)\b",
        r"(?:phone|battery) (?:is |only |just )?(?:at |on )?\d ?(?:percent|pct)?\b.{0,40}\bdark\b",
        r"dark\b.{0,60}\b(?:cannot find|cannot see|lost|scared|stuck|stranded|still (?:\w+ )?(?:km|miles?|hours?)|far from|(?:km|miles?|hours?) (?:to go|from|left|back)|(?:get|find|walk|hike) (?:\w+ )?(?:out|down|back)(?: safely)?|how do (?:i|we) get|alone out here|way out|way back|trail (?:is )?gone)",
        r"(?:cannot find|cannot see|lost|stuck|stranded|far from|alone)\b.{0,60}\b(?:it is (?:getting |nearly |almost |pretty )?dark|dark now|in the dark|after dark|getting dark|nightfall|gets? dark|got dark|(?:before|and) dark)\b(?! (?:rock|tone|area|corner|part|frame|side|green|in the (?:frame|picture)|shadow))",
        rf"{_SEE} (?:the |my |our |any |a )?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand|boots)\b.*\b(?:dark|night|sun|dusk|sunset)\b",
        rf"(?:dark|night|sun|dusk|sunset)\b.*\b{_SEE} (?:the |my |our |any |a |where )?(?:\w+ )?(?:{_WAY}|feet|ground|steps|hand|boots|i am|we are|anything(?= [.,]|$| any ?more))\b(?! (?:in|on|through) (?:the|my) (?:viewfinder|screen|finder|frame))",
        r"(?:caught|surprised|overtaken|trapped|stuck|stranded|lost) (?:out )?(?:by|in|out by|out in|after|until) (?:the )?(?:dark|darkness|night|nightfall|nighttime)\b",
        r"(?:stuck|stranded|trapped)\b.{0,40}\b(?:after sunset|after dark|overnight|in the dark|for the night|without a light|all night|no light)\b",
        r"benighted\b",
        r"(?:spend|spending) the night (?:out|here|up here|in the (?:gorge|woods|open|canyon))\b",
        r"(?:it is|it got|so|already|getting|completely) (?:\w+ )?(?:pitch|completely|totally|fully) (?:dark|black)\b(?! (?:rock|wall|shadow|frame|in the (?:frame|picture|shadows)))",
        r"pitch dark\b(?! (?:shadow|corner|frame|rock))",
        r"(?:night|darkness) (?:is |has )?(?:falling|coming|closing in|caught|fell|almost here|here)\b(?=.*\b(?:we|i|no|trail|path|lost|still|car|alone|way|how)\b)",
        r"(?:walk|walking|hike|hiking|climb|climbing|get|getting|find|way) (?:\w+ ){0,3}?in the dark\b(?=.*\b(?:no|without|cannot|lost|alone|scared|how|help)\b)",
        r"dark\b.{0,30}\bno (?:torch|headlamp|flashlight|lamp)|no (?:torch|headlamp|flashlight)\b.{0,30}\bdark",
    ),
)

_LOST: Final = Rules(
    DangerKind.LOST,
    gate="miss|no |been|lost|know|idea|find|familiar|circles|wrong|trail|path|track|way|disorient|where|turned|map|stranded|went",
    plain=(
        r"no (?:more )?(?:path|trail|track) (?:at all|any ?more|here|left|visible|in sight|to be seen|any where)\b",
        r"(?:no idea|not know|no clue|not sure|cannot tell) which (?:way|direction|path|trail|fork)\b(?! (?:to (?:turn|crop|face|point|tilt)|round|the (?:water|light|flow)))",
        r"(?:been|am|are|for|hours?) .*\b(?:wandering|looking|searching) (?:\w+ ){0,4}?(?:the |a |our )?(?:trail|path|way (?:out|back|down)|car|exit)\b(?! (?:of|to))",
        r"(?:missed|passed|overshot) (?:the |our |a )?(?:turn ?off|turning|turn|junction|fork|trail ?head)\b(?=.*\b(?:now|no|lost|where|path|trail|and|cannot)\b)",
        r"(?:i am|we are|he is|she is|they are|i think i am|am i|are we|got|i got|we got|getting|be|am|are) (?:\w+ )?(?:\w+ )?lost\b"
        r"(?! (?:in|on|with|at|about|for|by|between) (?:the |these |this |all |your |that |all the |my )?(?:menus?|settings?|numbers?|options?|questions?|steps?|maths?|details?|thoughts?|terms?|words?|views?|beauty|moment|f\b|stops?|composition|edit\w*|shadows?|highlights?|noise|whites?|water|translation|technical|exposure|manual|here f|\d|spray|focus|jargon|buttons?))"
        r"(?! (?:my|the|a|an|some|it|all|two|one|half|our|\d|detail|texture|focus|sight|track|interest|count|what|why|how)\b)(?<!highlights are lost)(?<!shadows are lost)(?<!whites are lost)(?<!details are lost)(?<!detail is lost)(?<!textures are lost)",
        r"^(?:lost|totally lost|completely lost|we lost)(?= in the (?:woods|forest|fog|gorge|dark|bush|valley|mountains?|canyon|trees|mist|snow)| here| somewhere| and (?:alone|cold|tired|wet)| [.,]|$)",
        rf"(?:lost|cannot find|not find|cannot see|missed|strayed from|wandered off|lost sight of|unable to find|no sign of) (?:the |our |my |a |any )?(?:\w+ )?{_WAY}\b(?= [.,]|$| (?:any ?more|back|out|down|home|to|about|and|in|for|an|anywhere|again|now|here|we|i|somewhere|since|up|so|after|under|because|marks?|signs?))(?! (?:to|of|in) (?:set|turn|lock|focus|foam|light|the (?:menu|frame|picture|setting|manual)|switch|change|get rid|frame))",
        r"(?:not (?:really |exactly )?know|no idea|no clue|not sure|unsure|cannot tell|not (?:know )?exactly|idea|not have a clue) (?:of )?where (?:i|we) (?:am|are)\b(?! (?:in the (?:menu|walk|list|settings)|focus\w+|supposed))",
        r"(?:where am i|where are we)\b.*\b(?:lost|no signal|woods|forest|fog)\b",
        r"(?:not (?:really |exactly )?know|no idea|no clue|cannot find out|not sure|cannot remember|not remember) (?:how to get|which way (?:is )?|the way|how we get|how i get|where to go|how to find)(?: (?:back|out|down|home|to the (?:car|trail|parking|path|trailhead|road|hut)|is|we|i|the (?:car|trail))|$)",
        r"which way (?:is )?(?:back|out|down|home|to the car|the car|is the (?:car|trail|trailhead|parking))\b",
        r"nothing (?:here )?(?:looks|seems|is) familiar\b|not recogni[sz]e (?:anything|this place|the trail|where)",
        r"(?:walking|going|hiking|running|wandering|walked|been) (?:around )?in circles\b",
        r"(?:took|taken|take|on|followed|down) (?:the|a) wrong (?:fork|turn|trail|path|turning|track|way|valley|branch|side)\b(?! of)",
        r"(?:trail|path|track)(?: \w+)? (?:just |has |is |simply )*(?:disappeared|disappears|vanished|vanishes|ended|ends in|gone|petered out|fizzled out|stops in|lost)\b(?! (?:in|into) (?:the )?(?:frame|shadow|picture|dark corner))",
        r"disoriented\b|disorientated\b",
        r"stranded\b",
    ),
)

SIGNS: Final = (_FLOOD, _THUNDER, _COLD, _DARK, _LOST)
