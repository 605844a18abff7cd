"""Where nobody stands beside the water: the lip, and the water itself."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import GAP, THE, Rules

_POSE: Final = (
    r"(?:stand|stands|standing|stood|sit|sitting|sat|crouch\w*|kneel\w*|lie|lying|laying"
    r"|crawl\w*|lean\w* (?:out|over)|walk|walking|step"
    r"|stepping|stepped|climb|climbing|set ?up|setting up|set up|set my tripod|shoot"
    r"|shooting|perched|jump|jumping|hop|hopping|balanc\w+|creep\w*"
    r"|inch\w*|shuffl\w*|dangle\w*|dangling|hang|hanging|scoot\w*|edg(?:e|ing) (?:out|up"
    r"|closer|nearer)|go|going|get|getting|move|moving|put (?:my|the) (?:tripod|camera)"
    r"|photograph\w*|peer\w*|look\w*|sneak\w*|be|stay|place my tripod|hike|hiking|went|am"
    r"|are|is it (?:ok|safe) (?:on|at))"
)
_NO_FRAME: Final = (
    r"(?! of (?:the |my |a |this )?(?:frame|picture|image|photo|shot|water|pool|stream|creek"
    r"|river|trail|path|road|forest|wood|woods|clearing|dynamic|field|canopy|meadow|car"
    r"|parking|lens|depth|composition|crop|screen|histogram|spray|shade|light|town)|-?to|s\b"
    r"| detection| of (?:my )?comfort| sharp| soft)"
)
_TOP: Final = (
    r"(?:top|head|crest|lip|brink|edge|rim) of (?:the |this |that |a )?(?:\w+ "
    r")?(?:water)?(?:falls?|drop|cascade|cliff|gorge|slab|chute|plunge)"
)
_RAILED: Final = (
    r"(?<!platform at the )(?<!viewpoint at the )(?<!railing at the )(?<!deck at the "
    r")(?<!overlook at the )"
)
_LIP: Final = Rules(
    DangerKind.LIP,
    gate=(
        "where|scoot|crawl|inch|shuffle|creep|walk|step|lip|brink|edge|drop|crest|precip"
        "|cliff|top|rim|head|above|lean|jump|leap|hop|over|ledge|overhang|cross"
    ),
    by_people=(
        (
            rf"{_POSE} {GAP}(?:on|at|over|to|onto|from|near|along|off|by|close to|up to"
            rf"|towards?|in) {THE}(?:very |actual |wet |outer |absolute )*"
            r"(?:lip|brink|precipice|cliff ?edge|drop ?off|verge of the)\b(?! of my)"
        ),
        (
            rf"{_POSE} (?!.*\b(?:frame|picture|crop|corner|photo|histogram|zoom|sharp"
            rf"|focus)\b){GAP}(?:on|at|over|to|onto|from|near|along|off|by|close to|closer to"
            rf"|up to|towards?) {THE}(?:very |actual |wet |outer |absolute |cliff "
            rf")*edge\b{_NO_FRAME}"
        ),
        (
            r"(?:tripod|camera|legs?|feet|toes|boots?|me|i|myself|self|us) (?:\w+ "
            r"){0,3}?(?:on|over|at|near|hanging over|past) (?:the |this )?(?:very )?(?:lip"
            r"|brink|drop|cliff edge)\b"
        ),
        (
            r"(?:i am|we are|am|are|i was|now) (?:\w+ )?(?:\w+ )?(?:at|on|above|over|near|by"
            rf"|on top of|up at|up on|back at) (?:the )?(?:very )?(?:lip|brink|crest|{_TOP}"
            r"|cliff edge)\b"
        ),
        (
            rf"{_POSE} (?:\w+ ){{0,3}}?{_RAILED}(?:on|at|to|from|onto|near|over|above|across"
            rf"|along|up on|up to|on top of|by) {THE}(?:very )?{_TOP}\b(?!.*\b(?:frame"
            r"|platform|viewpoint|overlook|deck|railing|in the shot|with \d+ ?mm)\b)"
        ),
        (
            rf"(?:on|up on|right on|standing|climb|get|go|be) (?:on )?top of {THE}(?:\w+ "
            r")?(?:water)?falls?\b(?! (?:there|is|are|white|in the (?:frame|picture)|blown"
            r"|look|with))"
        ),
    ),
    plain=(
        (
            r"(?:spot|place|room|stand|tripod|fits?|am|set ?up|set up|sit|right|view|out"
            r"|shooting|shoot) (?:\w+ )?(?:right )?at the drop\b(?! (?:is|in))"
        ),
        (
            r"(?:from|at|on|to) the very top\b(?! (?:edge|of (?:the|my) (?:frame|picture"
            r"|image|photo|shot)|right|left|border|corner|is\b))"
        ),
        (
            r"(?:stand|standing|shoot\w*|from|tripod|sit|sitting|go|get|up|out|to|top|set ?up"
            r"|slab|rock|spot) (?:\w+ ){0,2}?where (?:the |it |all the )?(?:water |stream "
            r"|creek |river )?(?:leaves|goes over|spills|tips|drops (?:off|over|away)|falls "
            r"(?:off|over|away)|plunges|starts (?:to fall|falling))\b"
        ),
        (
            r"(?:scoot|crawl|inch|shuffle|creep|shimmy|walk|step|lean|edge|lie) (?:\w+ )?out "
            r"(?:on|onto|over|to|along)\b(?! the (?:ice|trail|path|platform|bridge|deck))"
        ),
        (
            r"(?:from|on|onto|at|up|use|reach|that|to) (?:the |that |this |a )?(?:\w+ "
            r")?(?:slab|rock|ledge|boulder|shelf|pool|flat bit|stone) (?:\w+ )?(?:at|on|near"
            r"|by) the (?:very )?top\b(?! (?:edge|right|left|corner|third|of (?:the|my) "
            r"(?:frame|picture|image|photo|shot)|border|is|are|catch\w*))"
        ),
        (
            r"from (?:right |just |up |directly )*(?:at |on )?(?:the )?(?:very )?(?:crest|lip"
            r"|brink|cliff edge|edge|top|rim)(?: of the (?:water)?falls?)? (?:\w+ "
            r")?(?:look\w*|point\w*|shoot\w*|aim\w*|straight) (?:\w+ )?down"
        ),
        (
            r"(?:from|at|view from) (?:right |just |directly )(?:at |on |from )?the (?:brink"
            r"|lip|edge|crest)\b(?! of the frame)"
        ),
        (
            r"(?:lean|leaning|leaned) (?:\w+ )?(?:\w+ )?(?:out|over)(?: \w+){0,3}? (?:over "
            r"|of )?(?:the )?(?:drop|edge|lip|fall|falls|brink|pool|cliff|abyss|void)\b(?! "
            r"of the frame)"
        ),
        (
            r"(?:shoot|shooting|photograph|look|looking|peer|peering|hang\w*|hold\w*|reach\w*"
            r"|stick\w*|dangl\w*|legs|feet|toes|camera|tripod)(?: \w+){0,3}? over the "
            r"(?:very )?(?:edge|lip|drop|brink)\b(?! of the (?:frame|picture))"
        ),
        r"(?:to|near|at|on) the very edge\b(?! of (?:the|my) (?:frame|picture|image|photo|shot))",
        (
            r"(?:cross|crossing|ford|wade|wading|swim|swimming|step|stepping|hop|hopping|jump"
            r"|jumping|stand|standing|walk|walking|tripod|set ?up|set up|sit|sitting|get "
            r"across|go across|bathe|paddle)(?: \w+){0,5}? (?:right |just |directly |a bit "
            r"|slightly |\d+ ?m |ten feet |upstream and )?(?:above|over|at the top of"
            r"|upstream of|on top of|up top of|atop) (?:the |this |that |a )?(?:\w+ "
            r")?(?:falls?|waterfall|drop|lip|edge|brink|plunge|cascade"
            r"|chute)\b(?!.*\b(?:platform|viewpoint|overlook|bridge|railing|deck)\b)"
        ),
        (
            r"(?:slab|rock|ledge|boulder|stone|spot|pool|shelf) (?:\w+ )?(?:right |just "
            r"|directly )?above the (?:drop|lip|falls?|waterfall|brink)\b(?=.*\b(?:tripod"
            r"|stand|set ?up|set up|sit|reach|fits?|from there|shoot|go|can i|could i|get"
            r"|room for)\b)"
        ),
        (
            r"(?:jump|jumping|leap|leaping|hop|hopping|step|stepping) (?:\w+ )?(?:across"
            r"|over)(?: \w+){0,4}? (?:at the top|the (?:top|gap|chute|channel|drop|lip|slot"
            r"|crack))\b"
        ),
        (
            r"(?:stand|standing|walk|step|sit|out|climb|crawl|lie|lying|get) (?:\w+ "
            r"){0,2}?(?:on|onto|on to|to) (?:the |that |an? |this )?(?:overhang|overhanging "
            r"\w+|undercut|cornice)\b"
        ),
        (
            r"(?:could|can|may|might|should|shall|want to|going to|i will|let us|safe to|ok "
            r"to|okay to) (?:i |we |just |quickly )*(?:stand|set ?up|set up|go|get|sit|walk"
            r"|shoot|be|climb)(?: \w+){0,2}? (?:at|on|to|from) the (?:very )?top(?: of the "
            r"(?:falls?|waterfall|drop|cascade))?\b(?= [.,]|$| (?:and|for|where|it|of the"
            r"|because|with the wide|to look|looking))(?! of the (?:frame|picture|hill"
            r"|trail))(?!.*\b(?:platform|viewpoint|overlook|deck)\b)"
        ),
    ),
)
_STREAM: Final = (
    r"(?:water|stream|creek|river|brook|beck|burn|pool|plunge ?pool|current|rapids?|flow"
    r"|shallows|torrent|riverbed|streambed|basin)"
)
_LIMB: Final = (
    r"(?:knees?|thighs?|waist|hips?|chest|belly|shins?|calves|ankles?|crotch|butt|neck|boots?"
    r"|boot tops?)"
)
_ASK: Final = (
    r"(?:can|may|could|should|shall|safe to|ok to|okay to|fine to|want to|going to|would "
    r"like to|like to|thinking (?:of|about)|might|let us|able to|need to|have to|ok if|okay "
    r"if|alright to|allowed to|good idea to|i will|we will|try to|trying to|dare|how about"
    r"|plan to)"
)
_WADING: Final = Rules(
    DangerKind.WADING,
    gate=(
        "further|deeper|take off|calf|without|tripod|wad|stand|step|walk|water|stream|creek"
        "|river|pool|current|knee|thigh|waist|hip|chest|shin|ankle|swim|midstream"
        "|mid|middle|cross|ford|deep|in |in$|hop|jump|paddl|stepping|boulder|gravel|other"
        "|float|bath|dip|feet"
    ),
    by_people=(
        (
            r"wad(?:e|es|ing|ed)\b(?! (?:through (?:the )?(?:menus?|settings?|files?"
            r"|pictures?|photos?|options?|frames)))"
        ),
        (
            r"(?:stand|standing|kneel|kneeling|sit|sitting|crouch|crouching|stood)(?: "
            rf"\w+){{0,2}}? (?:in|inside) {THE}(?:\w+ ){{0,2}}?{_STREAM}\b(?! (?:is|reflection"
            r"|look|spray|of light))"
        ),
        (
            r"(?:go|going|get|getting|step|stepping|walk|walking|climb|climbing|hop|hopping"
            r"|jump|jumping|move|moving|run|stepped|walked|gone|went|head|heading|put (?:my"
            r"|our) feet|stick my feet|dip|plunge|be)(?: (?:right|straight|out|a|bit|down"
            r"|further|deeper|just|back|up|little|slowly|carefully|barefoot|about|off|one|two"
            r"|\d|steps?|metres?|meters?|feet|few|all|the|way))* (?:in|into|in to|through"
            r"|across|inside)"
            rf" {THE}(?:\w+ ){{0,2}}?{_STREAM}\b(?! (?:is|reflection|on the bridge|by the "
            r"bridge|over the bridge|via))(?!.*\bbridge\b)"
        ),
        (
            r"(?:i am|we are|am|are) (?:still |now |already |standing |right |half ?way |out "
            rf"|up to my \w+ )*in {THE}(?:\w+ ){{0,2}}?{_STREAM}\b"
        ),
        (
            rf"(?:cross|crossing|ford|fording|traverse|traversing) {THE}(?:\w+ "
            rf"){{0,2}}?(?:{_STREAM}|it)\b(?!.*\b(?:bridge|footbridge)\b)(?! (?:of the frame"
            r"|by the bridge|at \d+ ?%))"
        ),
        r"(?:ford) (?:it|here|there)\b",
        (
            r"cross (?:here|there|over here|it here)\b(?=.*\b(?:water|creek|river|stream|deep"
            r"|fast|safe|wet)\b)"
        ),
        rf"{_ASK} (?:i |we |just |it is |to )*(?:swim|go swimming|bathe|paddle|take a dip|dive)\b",
        r"swim(?:ming)? (?:over|across|to the|out|in the|under|into|through)\b",
        (
            r"(?:get|go|going|out|stand|standing|set ?up|set up|setup|put (?:my|the) tripod"
            r"|walk|walking|be|jump|hop|right|am|work|shoot|shooting|tripod|sit|climb)(?: "
            r"\w+){0,2}? (?:mid ?stream|(?:into |in |to |at |out to |from )?(?:the "
            r")?middle(?: of (?:the )?(?:stream|river|creek|water|flow|pool|rapids))(?! of "
            r"the frame))\b(?! (?:rock|boulder|stone|log))"
        ),
        (
            r"(?:out|wade|go|walk|get) (?:in)?to the middle\b(?! of (?:the|my) (?:frame"
            r"|picture|dial|path|trail|day|bridge))"
        ),
        (
            r"(?:go|going|get|walk|walking|step|hop|hopping|jump|jumping|out|over|wade"
            r"|scramble|leap) (?:out |over |across |from stone )*(?:to|onto|on to|on) (?:the "
            r"|that |this |a )?(?:\w+ )?(?:rock|boulder|stone|island|gravel bar|log|slab)(?: "
            r"that is| which is)? (?:in the (?:middle|stream|river|water|creek|current|pool)"
            r"|mid ?stream|out there|in mid ?stream)\b"
        ),
        (
            r"(?:hop|hopping|jump|jumping|skip|leap|leaping) (?:from |across |over |on "
            r")*(?:the |some )?(?:rocks?|stones?|boulders?|stone|wet rocks?|stepping "
            r"stones)(?: to (?:stone|rock|the other|boulder)| across| in the| over)\b"
        ),
        (
            r"(?:get|go|cross|make it|over|hop|jump|wade|crossing|swim) (?:\w+ ){0,2}?to the "
            r"(?:other|far) (?:side|bank|shore)\b(?!.*\b(?:bridge|trail|path|polari[sz]er"
            r"|histogram|dial|car)\b)"
        ),
    ),
    plain=(
        (
            r"(?:i|we|go|going|in|stand|standing|am|only|just|about|safe|is|are|up|gets?|to) "
            r"(?:\w+ ){0,2}?(?:knee|shin|calf|mid ?calf|mid ?thigh)s?[ -]?(?:deep|high)\b(?! "
            r"(?:to a duck|riffle|foreground|puddle|boots|rubber|grass|ferns))"
        ),
        rf"(?:further|deeper|farther|more|way) (?:out|in)(?: into| in)? (?:the )?(?:{_STREAM})\b",
        (
            r"(?:take off|without|off with) (?:my |the |our )?(?:boots|shoes"
            r"|socks)\b(?=.*\b(?:in|water|creek|stream|river|cross)\b)"
        ),
        (
            r"(?:tripod|camera|me|myself|us) (?:and (?:me|i|myself) )?(?:out )?in the "
            rf"(?:middle of the )?(?:fast |deep |main )(?:{_STREAM})\b"
        ),
        (
            r"(?:up to|over|above|past|reaches|to|around|at|below) (?:my|our|his|her"
            rf"|the) {_LIMB}\b(?=.*\b(?:water|deep|stream|creek|river|in|current"
            r"|cold)\b)(?<!from my knees)(?! from)"
        ),
        rf"in (?:up )?(?:to|over|above|past) (?:my|the) {_LIMB}\b",
        (
            rf"{_STREAM} (?:is |are |comes |only |just |reaches |about |already |up |goes "
            rf"|now |would be )+(?:up )?(?:to|over|above) (?:my|the|our) {_LIMB}\b"
        ),
        r"(?:thigh|waist|hip|chest|belly|crotch)[ -]?(?:deep|high)\b",
        (
            r"(?:i am|we are|am|are|stand|standing|in|only|just|about|around|be|go|going"
            r"|get) (?:\w+ )?(?:knee|shin|calf|ankle)[ -]?deep\b(?=.*\b(?:in|water|current"
            r"|stream|creek|river|fast|safe|ok|go)\b|$)(?! (?:riffle|foreground|puddle))"
        ),
        (
            rf"{_ASK} (?:i |we |just )*(?:go|step|walk|get|hop|jump) (?:\w+ )?in(?= [.,]|$| "
            r"(?:deeper|further|a bit|up to|to my|there|here|for a|with (?:boots|waders"
            r"|sandals|sneakers)|a little))"
        ),
        (
            r"how (?:deep|far) (?:can|may|could|should|in can|out can) (?:i|we) (?:\w+ "
            r")?(?:go|wade|walk|step|in)\b(?! (?:down|up|with|on|back|in (?:iso|f))\b)"
        ),
        (
            r"(?:too|how) (?:deep|fast|strong|cold) (?:to|for me to|for us to|is it to) "
            r"(?:stand|walk|wade|cross|go|step|get)\b"
        ),
    ),
)

PLACES: Final = (
    _LIP,
    _WADING,
)
