"""Signs to leave at once: brown or rising water, thunder."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import Rules

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
    r"|again|quite|since|half|ten|some|another|about|nearly|since)"
    r"|way up|creeping up|rises\b|deeper (?:now|than)|swelling|picking up (?:fast"
    r"|quickly))"
)
_NOT_PICTURE: Final = (
    r"(?!.*\b(?:tannin|peat|tea coloured|iron|in the (?:frame|picture|photo|raw|file|shot"
    r"|jpe?g|image)|on (?:the |my )?screen))"
)
_AMOUNT: Final = (
    r"(?:an?|one|two|three|four|five|six|ten|half an?|\d+|some|another|about|several|good"
    r"|few"
    r"|at least|almost|nearly|by)"
)
_FLOOD: Final = Rules(
    DangerKind.FLOOD,
    plain=(
        (
            rf"{_RIVER} (?:(?!not|never|nor|rocks?|leaves|over|with)\w+ "
            rf"){{0,6}}?{_DIRTY}(?= "
            r"[.,]|$| (?:now|all|and|but|since|as|suddenly|fast|today|like|here|so|just"
            r"|quickly|after|from|too|again|coming|down)\b)(?<!over the brown)(?<!tones "
            r"are "
            rf"brown){_NOT_PICTURE}"
        ),
        (
            rf"{_RIVER} (?:(?!not|never|level|mist|sun|spray|in|of|over|drops?)\w+ "
            rf"){{0,4}}?(?:rising|rises|rose|risen|coming up|came up|swelling|swollen"
            r"|higher"
            r"|faster and)\b(?! (?:mist|spray|steam|iso|line|to the (?:right|left)|in "
            r"the "
            r"(?:frame|picture)|key|contrast))"
        ),
        (
            rf"{_RIVER} (?:\w+ ){{0,2}}?(?:up|higher|risen) (?:by )?(?:about )?\d+ ?(?:cm"
            r"|in"
            r"|inch|inches|m|ft|feet|foot)\b"
        ),
        (
            r"(?:logs?|trunks?|trees|branches|debris|wood) (?:are |is |keep |started "
            r")*(?:coming|going|shooting|crashing) (?:over|down|through|past)\b"
        ),
        (
            r"(?:crossing|ford|stepping stones|way back|path|trail|bridge|stones) "
            r"(?:back "
            r")?(?:is|are|was|got|has been) (?:now |all |already )*(?:underwater|flooded"
            r"|covered|washed away|washed out|submerged)\b"
        ),
        (
            rf"(?<!mist from the ){_RIVER}{_TURNS} {_DIRTY}\b(?! (?:rock|stone|bear"
            r"|mug))(?! "
            rf".*stays? clear){_NOT_PICTURE}"
        ),
        (
            r"(?:brown|muddy|dirty|murky|chocolate|brownish|brown muddy|silty)(?: \w+)? "
            rf"(?:water|river|creek|stream|torrent|flow){_NOT_PICTURE}"
        ),
        rf"{_RIVER}{_TURNS} {_UP}",
        (
            r"it (?:all |just |suddenly |has |is |now )*(?:went|gone|turned|turning|going"
            r"|goes|getting|got|changed) (?:\w+ ){0,3}?(?:to |into )?(?:brown|chocolate"
            r"|muddy"
            r"|mud|murky)\b"
            r"(?! (?:tone|cast|tint))"
        ),
        (
            r"it (?:has |is )?(?:came up|come up|coming up|rising|rose|risen|went up"
            r"|gone "
            rf"up) (?:{_AMOUNT} )*(?:fast|quick|quickly|foot|feet|inch|inches|cm|m|ft"
            r"|hand)"
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
            r"(?:roar|noise|sound)(?: of (?:the )?(?:water|fall|falls|creek|river))? "
            r"(?:just "
            r"|is |has |got |getting |gets |grew |suddenly |now |become |became |all of "
            r"a "
            r"sudden )+louder"
        ),
        r"(?:sudden|new|strange|growing|louder) roar\b",
        (
            r"(?:twigs|branches|sticks|debris|logs|tree trunks|whole trees|trees"
            r"|driftwood"
            r"|mud)(?: and \w+)?(?: \w+){0,2}? (?:coming|floating|washing|drifting"
            r"|carried"
            r"|going|rushing|came|swept|in the (?:water|current) now)"
            r"(?: down| past| by|$| now| along)"
        ),
        (
            r"(?:lots|more and more|suddenly|loads|tons|bunch) (?:of )?(?:leaves|twigs"
            r"|foam"
            r"|sticks|debris)(?: and \w+)?(?: \w+){0,3} (?:down|past|by|floating|coming"
            r"|in "
            r"the (?:water|creek|stream|river))"
        ),
        r"flash ?flood\w*",
        (
            r"(?:is|are|was|getting|got|been|it is|now|river|creek|stream|trail|path"
            r"|crossing"
            r"|road|bridge|gorge|valley|canyon) (?:now |all |completely |getting "
            r")*flood(?:ed"
            r"|ing)\b(?! (?:with|by|in) (?:\w+ )?light)"
        ),
        r"^flood(?:ing)?(?: here| now| coming)?$",
        r"flood (?:warning|watch|alert|wave|siren|water|is|coming|surge)\b",
        r"wall of (?:brown |muddy )?water\b",
        r"(?:dam|weir) (?:\w+ ){0,2}(?:broke|burst|release\w*|siren|opened|opening|alarm|horn)",
        (
            r"sirens? (?:is |are |just |has )*(?:going|went|sounding|sounded|upstream"
            r"|wailing"
            r"|from the)"
        ),
        (
            r"(?:marked|mark|crossed|stood|sat|dry|ago|earlier|before|this morning|was"
            r"|were"
            r"|used to be)\b.{0,60}\b(?:underwater|submerged|under now|covered(?: by| "
            r"with| "
            r"in)? (?:by |with )?(?:water|now)|gone , covered|washed away|cm deep|deep "
            r"now"
            r"|flooded)"
        ),
        (
            r"(?:rocks?|stones?|mark|marker|stepping stones|path|beach|gravel|ledge"
            r"|crossing)(?: \w+){0,8}? (?:underwater now|now underwater|already "
            r"underwater"
            r"|is underwater|are underwater|submerged now|now submerged|gone under"
            r"|covered "
            r"now|now covered|disappeared)\b"
        ),
        r"cut off by (?:the )?(?:water|river|creek|stream)",
        r"(?:brown|muddy|big|huge) wave\b|wave (?:of (?:brown |muddy )?water|coming down)\b",
        (
            r"(?:stepping stones|stones|rocks|crossing)(?: \w+){0,3}? (?:have |has |are "
            r"|is "
            r"|just )+(?:disappeared|vanished|gone|underwater)\b(?! (?:in|into) (?:the "
            r")?(?:shadow|frame|dark|black|white|haze|mist))"
        ),
        r"(?:surge|torrent) (?:of water |is )?coming\b",
    ),
)
_THUNDER: Final = Rules(
    DangerKind.THUNDER,
    plain=(
        r"thunder ?clouds?\b(?! (?:photo|in the (?:frame|picture)|for drama))",
        (
            r"(?:first|a|big|huge|another|of) bolts?\b(?=.*\b(?:sky|ridge|thunder|hill"
            r"|light\w*|cloud\w*|over|storm)\b)(?! (?:on|for|in) (?:the|my) (?:tripod"
            r"|plate"
            r"|head))"
        ),
        (
            r"(?<! as )(?<!sound is like )(?<!noise is like )(?<!roar is like )(?<!fall "
            r"is )(?<!falls is )(?<!water is )(?<!waterfall is "
            r")(?<!cascade is )thunder\b(?! (?:of the (?:fall|water|cascade|river)|mug"
            r"|creek"
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
            r"|bright )*flash(?:es)? (?:over|behind|in the (?:sky|clouds|distance)|above"
            r"|to "
            r"the|from the cloud)"
        ),
        (
            r"(?:hear|heard|hearing|distant|loud|big|sky|clouds? (?:is|are)|far|deep"
            r"|that) "
            r"(?:a |some |the |distant |loud |low |deep )*(?:rumbl\w+|boom(?:s"
            r"|ing)?)\b(?! "
            r"(?:of the|from the fall))"
        ),
        (
            r"rumbl\w+ (?:in the (?:distance|sky|clouds|west|east|north|south)|overhead"
            r"|far"
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

SIGNS: Final = (
    _FLOOD,
    _THUNDER,
)
