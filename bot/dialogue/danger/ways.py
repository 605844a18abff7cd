"""Ways that nobody takes: past a barrier, up wet rock, under the fall, over ice."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.rules import THE, Rules

_ASK: Final = (
    r"(?:can|may|could|should|shall|safe to|ok to|okay to|fine to|want to|going to|would "
    r"like to|like to|thinking (?:of|about)|might|let us|able to|need to|have to|ok if"
    r"|okay "
    r"if|alright to|allowed to|good idea to|i will|we will|try to|trying to|dare|how "
    r"about"
    r"|plan to)"
)
_RAIL: Final = (
    r"(?:rails?|railings?|guard ?rails?|hand ?rails?|fences?|barriers?|ropes?|chains?"
    r"|gates?"
    r"|tape|barricades?|cordon|wire|parapet|(?:safety |retaining |stone |low )wall"
    r"|netting"
    r"|banister|balustrade|guard)"
)
_BARRED: Final = (
    r"(?:closed|shut|off limits|forbidden|prohibited|roped off|fenced off|taped off"
    r"|blocked "
    r"off|cordoned off|barred|gated)"
)
_ANYWAY: Final = (
    r"(?:but|anyway|anyways|go|going|worth|sneak\w*|can|could|should|shortcut|quick"
    r"|quickly"
    r"|still|everyone|everybody|what lens|which lens|ignore|past|around|through|just"
    r"|nobody"
    r"|slip|try|in)"
)
_BARRIER: Final = Rules(
    DangerKind.BARRIER,
    gate=(
        "rail|guard|hand|fence|barrier|rope|chain|gate|tape|barric|cordon|wire|parapet"
        "|wall"
        "|net|clos|sign|off|forbid"
        "|prohib|enter|entry|tresp|boardwalk|platform|deck|walkway|banis|balus|shut"
        "|block"
        "|barr|keep out|ignor|bypass"
    ),
    by_people=(
        (
            r"(?:hop|hopping|hopped|jump|jumping|jumped|climb|climbing|climbed|vault\w*"
            r"|clamber\w*|scal(?:e|ing)|cross|crossing|crossed|leap\w*|skip|bypass\w*"
            r"|scrambl\w*|straddl\w*|sit on|sitting on|stand on|standing on)"
            r"(?: (?:over|past|under|through|round|around|across|on|onto|outside|just"
            r"|quickly"
            rf"|right|that|little))* {THE}(?:\w+ )?{_RAIL}\b(?! (?:in|at|of) the (?:frame"
            r"|picture|bottom))"
        ),
        (
            r"(?:go|going|goes|went|get|getting|got|step|stepping|stepped|duck\w*"
            r"|squeez\w*"
            r"|crawl\w*|slip|slipping|slipped|sneak\w*|walk\w*|push\w*|wriggle|roll|swing"
            r"|swung|nip|pop|gone|lean\w* far|move|moving|set ?up|stand|standing|shoot"
            r"|shooting|just|am|are|be|head)"
            r"(?: (?:a|bit|just|quickly|right|out|up|down|me|tripod|little))* (?:over"
            r"|past"
            r"|under|underneath|through|round|around|beyond|outside|across|in front of"
            r"|to "
            r"the other side of|on the other side of|on the wrong side of|over to "
            rf"the) {THE}(?:\w+ )?{_RAIL}\b(?<!shoot over the rail)(?<!shoot through the "
            r"fence)(?<!shooting through the fence)(?<!shooting over the rail)(?<!shoot "
            r"over "
            r"the railing)(?<!shooting over the railing)(?<!shoot through the railing)"
        ),
        rf"(?:wrong|far|outer|water|river) side of {THE}(?:\w+ )?{_RAIL}\b",
        (
            r"(?:past|beyond|behind|ignor\w+|disregard\w*|around|under) (?:the |that "
            r"|this "
            r"|a |all |those )?(?:\w+ ){0,2}?(?:closed sign|no entry sign|warning signs?"
            r"|closure|danger signs?|do not enter|stop sign|no trespassing|keep out"
            r"|signs?"
            r"|end of (?:the )?(?:trail|path) sign)\b(?! in the (?:frame"
            r"|picture))(?<!behind "
            r"the sign)(?<!behind a sign)(?<!under the sign)(?<!around the sign)"
        ),
        (
            r"(?:step|climb|get|go|hop|jump|walk|stepping|going|walking|head|wander|stray"
            r"|move) (?:\w+ )?(?:off|beyond|past|outside) (?:of )?(?:the )?(?:\w+ "
            r")?(?:platform|boardwalk|viewpoint|deck|walkway|marked trail|marked path"
            r"|viewing area|designated \w+|official \w+)\b"
        ),
        (
            r"leave the (?:platform|boardwalk|deck|walkway|marked trail|marked path)(?= "
            r"[.,]"
            r"|$| (?:to|and|for|here|a|there))(?! (?:out|for (?:the car|home)))"
        ),
    ),
    plain=(
        (
            r"(?:gate|fence|chain|rope|rail|railing|barrier|tape|wire"
            r"|guard ?rail)\b[^.]{0,30}\b(?:get|go|step|slip|squeeze|climb|hop|sneak|duck"
            r"|walk|reach) (?:right )?(?:round|around|over|under|through|past"
            r"|beyond)\b(?! "
            r"the frame)"
        ),
        (
            rf"(?:beyond|past|behind|over|under) the {_RAIL}\\b(?=.*\\b(?:worth|go|goes"
            r"|closer"
            r"|can|could|may|should|better|sneak|slip|quick)\\b)(?<!from behind the "
            r"rail)(?<!shoot over the rail)(?<!from behind the railing)"
        ),
        (
            rf"(?:gap|hole|opening) in the (?:\w+ )?{_RAIL}\b(?=.*\b(?:i|we|go|went"
            r"|through"
            r"|squeeze|slip|fit|get)\b)"
        ),
        (
            rf"{_RAIL}(?: \w+){{0,6}}? (?:went|go|going|get|got|step|slip|squeeze|climb"
            r"|climbing|fit) (?:through|over|past|under|underneath|round|around)\b(?! "
            r"the "
            r"frame)"
        ),
        (
            r"(?:chain|rope|tape|fence|gate|barrier)s? (?:is |are )?(?:across|over|on"
            r"|blocking|in front of) (?:the |our |my )?(?:\w+ )?(?:path|trail|way|steps"
            r"|stairs|entrance|bridge|track)"
        ),
        (
            r"(?:trail|path|track|area|park|sign|signs|gate|road|viewpoint|platform|loop"
            r"|access|steps|stairs|bridge|section|cave|gorge|it|that|place|side|canyon"
            r"|spot"
            rf"|way)(?: \w+){{0,4}}? {_BARRED}\b(?=.*\b{_ANYWAY}\b)(?!.*\b(?:so i am|so we"
            r"|so "
            r"i|instead|from the)\b)"
        ),
        (
            r"(?:ignor\w+|disregard\w*|break\w*|worth) (?:\w+ ){0,2}?(?:closure|closed"
            r"|signs?"
            r"|warnings?|barrier|fence|tape|ropes?|rules)\b"
        ),
        (
            r"(?:do not enter|no entry|no trespassing|keep out|no access|no admittance"
            r"|area "
            r"closed|trail closed|closed area|restricted area)\b(?! in the "
            r"frame)(?=.*\b(?:but|anyway|go|ignore|past|everybody|everyone|still|can|just"
            r"|through|what if|lens|nobody|sign)\b)"
        ),
        (
            r"(?:past|beyond|inside|into|in) the (?:closed|restricted|forbidden|roped off"
            r"|fenced|private) (?:area|section|trail|part|path|zone|bit|sign|gate|side)"
        ),
        rf"{_ASK} (?:i |we |just )*(?:ignore|sneak (?:in|past)|trespass|go in anyway)\b",
        r"trespass(?:ing)?\b",
    ),
)
_SCRAMBLE: Final = (
    r"(?:climb|climbing|scramble|scrambling|clamber\w*|shimmy\w*|free ?climb\w*|free "
    r"solo\w*"
    r"|scal(?:e|ing)|boulder(?:ing)? up|abseil\w*|rappel\w*|slid(?:e|ing) down"
    r"|lower(?:ing)? "
    r"myself|down ?climb\w*|haul myself|pull myself up|bushwhack\w*|monkey)"
)
_STEEP: Final = (
    r"(?:rocks?|slabs?|walls?|face|cliffs?|falls?|waterfall|moss\w*|ledges?|boulders?"
    r"|trees?"
    r"|bank|gully|chimney|side|cascade|scree|crag|drop|wet|slope|gorge|roots?|logs?"
    r"|outcrop"
    r"|chute)"
)
_EASY: Final = r"(?!.*\b(?:stairs|steps|path|trail|ladder|staircase|platform|km|miles?|sunset)\b)"
_CLIMB: Final = Rules(
    DangerKind.CLIMB,
    gate=(
        "climb|scrambl|clamber|shimmy|free|scal|boulder|abseil|rappel|slid|lower|down"
        "|haul"
        "|pull|halfway|half|bushw|monkey"
    ),
    by_people=(
        (
            r"(?<!long )(?<!steep )(?<!m )(?<!ft )(?<!feet )(?<!metres )(?<!meters "
            r")(?<!the )(?<!\d "
            rf"){_SCRAMBLE}(?: (?:\w+ ){{0,4}}?){_STEEP}\b{_EASY}"
        ),
        (
            r"(?<!long )(?<!steep )(?<!m )(?<!ft )(?<!feet )(?<!metres )(?<!meters "
            r")(?<!the )(?:climb|climbing"
            r"|scramble|scrambling|clamber\w*|shimmy\w*) (?:a |bit |little |just |right "
            r"|straight )*(?:up|down|higher|beside|next to|alongside|behind|around"
            rf"|along)\b(?! (?:to \d|the (?:hill|road|valley))){_EASY}"
        ),
        (
            rf"{_ASK} (?:i |we |just |to )*(?:climb|scramble|clamber) (?:it|that|this"
            r"|there"
            rf"|here|to|over to)\b{_EASY}"
        ),
        (
            r"(?:half ?way|part ?way|partly|all the way) (?:up|down) (?:the |a |this "
            r"|that "
            r")?(?:wet |mossy |slippery |steep )*(?:rocks?|slabs?|wall|face|cliff|falls?"
            r"|waterfall|gully|boulder)\b(?! (?:is|there is|in the (?:frame|picture)|a "
            r"|the "
            r"))"
        ),
        (
            r"(?:go|going|get|getting|walk|walking|make my way) (?:straight |right "
            r"|directly "
            r"|\w+ )?(?:up|down) (?:the |this |that )?(?:wet |mossy |slick |slippery "
            r"|steep "
            r")+(?:rocks?|slabs?|wall|face|cliff|moss|bank|gully)\b"
        ),
    ),
)
_ROOF: Final = (
    r"(?:(?:water )?curtain|(?:water)?falls?|falling water|overhang|overhanging \w+"
    r"|cornice"
    r"|veil|cascade|sheet of water|landing zone|falling \w+|main drop|drop|loose \w+"
    r"|cave "
    r"(?:behind|under)|spray curtain|rock roof|undercut|hanging rock)"
)
_BE: Final = (
    r"(?:go|going|gone|went|stand|standing|shoot|shooting|shoot from|walk|walking|get"
    r"|getting"
    r"|crawl\w*|step|stepping|set ?up|set up|setting up|am|are|sit|sitting|hide|hiding"
    r"|shelter\w*|duck\w*|squeez\w*|crouch\w*|slip|photo|photograph\w*|tripod|camp|wait"
    r"|waiting|be|being|move|moving|work|working|me|i|stay|from|right|directly|creep"
    r"|sneak"
    r"|climb|climbing|dry)"
)
_UNDER: Final = Rules(
    DangerKind.UNDER,
    gate=(
        "behind|under|beneath|inside|cave|rock|stone|pebble|boulder|ice|chunk|gravel|log"
        "|debris|branch|fall|land|hit|crash"
    ),
    by_people=(
        (
            r"(?:from|out|get|go|going|shoot|stand|walk|standing|step|slip|room|space"
            r"|path"
            r"|way|squeeze|behind) (?:\w+ ){0,2}?(?:behind|underneath) the (?:water"
            r"|falling "
            r"water|fall|falls|waterfall|curtain|cascade)\b(?! (?:is|are|wall|line"
            r"|there))"
        ),
        (
            rf"{_BE} (?:\w+ ){{0,2}}?(?:behind|underneath|beneath|under|right under|inside"
            rf"|below) (?:the |a |that |this |an )?(?:\w+ )?{_ROOF}\b(?<!under the "
            r"drop)(?! "
            r"(?:is|are|line|there|looks?\b|by (?:two|one|a)|goes|in the (?:frame"
            r"|picture)))"
        ),
        (
            r"(?:stand|standing|am|set ?up|set up|sit|go|tripod|right|get|walk) (?:\w+ "
            r"){0,3}?where (?:the |all the )?(?:water|fall|it) (?:lands|hits|comes down"
            r"|crashes|falls|drops)\b"
        ),
    ),
    plain=(
        (
            r"(?<!the )(?<!of )(?:rocks?|stones?|pebbles|boulders?|chunks?|gravel|debris"
            r"|bits of (?:rock|ice)|pieces of (?:rock|ice)|ice|icicles?|logs?)(?: (?:\w+ "
            r"){0,2}?)?(?:keep |keeps |are |is |just |started |start |have been |been "
            r"|still "
            r")*(?:falling|coming down|came down|come down|dropping|dropped|crashing"
            r"|landing"
            r"|raining|tumbling|fell down|fell)(?: down)?"
            r"(?! (?:out of focus|into (?:shadow|shade|place)|water|in love|behind the "
            r"plane))(?= [.,]|$| (?:around|near|beside|next|on|onto|from|every|off|close"
            r"|by"
            r"|past|me|us|here|now|a|again|all|between|in front|and|right|just))"
        ),
        (
            r"(?:fresh|recent|new|small|big|active|danger|just a|is|some|more|hear|heard"
            r"|a) "
            r"(?:\w+ )?rock ?falls?\b(?! (?:into|in) (?:shadow|focus))"
        ),
        r"rock ?fall (?:next|near|beside|here|from|above|behind|just|right|danger|coming)",
        r"falling (?:rocks?|stones?|ice|debris|branches|boulders)\b(?! (?:sign|look))",
        (
            r"(?:crawl|go|climb|duck|squeeze|get|shelter) (?:\w+ ){0,2}?(?:into|inside"
            r"|in) "
            r"the (?:\w+ )?(?:cave|hole|gap|hollow|grotto|alcove) (?:behind|under|beneath"
            r"|below)\b"
        ),
    ),
)
_FROZEN: Final = (
    r"(?:ice(?! (?:curtain|cream|cap))|frozen (?:pool|lake|stream|river|creek|water"
    r"|surface"
    r"|pond|plunge ?pool|fall|falls|waterfall))"
)
_ICE: Final = Rules(
    DangerKind.ICE,
    gate="snow|ice|icy|icicle|frozen|spikes|microspikes|crampons|glaze|verglas|black",
    by_people=(
        (
            r"(?:walk|walking|stand|standing|step|stepping|go|going|set ?up|set up"
            r"|crawl\w*"
            r"|am|are|slid(?:e|ing)|cross|crossing|get|getting|wander|venture|out|sit"
            r"|sitting"
            rf"|tripod|kneel\w*|lie|safe|be|skate|climb|climbing)(?: \w+){{0,3}}? (?:on"
            r"|onto"
            r"|across|over|out on|out onto|on to|up) (?:the |that |some |this |a |thin "
            rf"|thick )*{_FROZEN}\b(?! (?:texture|blue|in the frame))"
        ),
        r"(?:cross|crossing|climb|climbing) (?:the |that |this |a )?(?:ice\b|frozen \w+)",
        (
            r"(?:under|beneath|below|behind|inside) (?:the |a |those |that |big |these "
            r"|some "
            r")*(?:ice curtain|ice ?fall|icicles?|ice pillars?|ice column|ice wall"
            r"|hanging "
            r"ice|ice)\b(?=.*\b(?:can|go|going|stand|standing|set|shoot|i|walk|crawl|get"
            r"|safe)\b)(?! (?:is|are) (?:bright|dark|blown))"
        ),
        (
            r"(?:walk|walking|stand|standing|step|scramble|climb|go|going|traverse"
            r"|cross)(?: "
            r"\w+){0,3}? icy (?:ledge|rocks?|trail|edge|slab|path|steps|stairs|bank)\b"
        ),
    ),
    plain=(
        (
            r"(?:frozen \w+|ice|ice bridge|snow bridge)(?: \w+){0,2}? (?:hold|holds|bear"
            r"|bears|carry|carries|support|supports|take)(?: \w+)? (?:me|us|my|a|the|our"
            r"|weight|both|up)\b"
        ),
        r"(?:ice bridge|snow bridge)\b",
        (
            r"(?:(?:the|this|that|is) (?:pool )?|^)ice (?:(?:is|will|does|looks|seems"
            r"|over|on"
            r"|of|the|pool|still|really|now|just|already|has|be|not|that|going|to"
            r"|\w+ing) "
            r")*(?:thick|thin|hold|holds|safe|strong|crack\w*|break\w*|bear|carry"
            r"|creak\w*"
            r"|solid|enough)\b"
        ),
        (
            r"(?:walk|stand|step|set up|go|set it|tripod)\b.*\bfrozen over\b|frozen "
            r"over\b.*\b(?:set ?up|stand|walk|on it|cross|go|tripod|out)\b"
        ),
        (
            r"(?:icicles?|ice (?:curtain|fall|pillars?|columns?|dam|chunks?)|hanging "
            r"ice)(?: "
            r"\w+){0,3}? (?:over|above|overhead|right above) ?(?:me|us|my|our|the (?:path"
            r"|trail|spot)|where i)?\b(?<! over the)(?! the (?:fall|pool|water))"
        ),
        (
            r"(?:no|without|forgot\w*|left) (?:\w+ ){0,2}?(?:micro ?spikes|crampons"
            r"|spikes)\b"
            r"|(?:micro ?spikes|crampons) (?:are )?(?:at home|in the car)\b"
        ),
    ),
)

WAYS: Final = (
    _BARRIER,
    _CLIMB,
    _UNDER,
    _ICE,
)
