"""German wordings: replies to whether all are safe, and to whether anybody is out there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_AM_WEG: Final = (
    r"(?:auf (?:dem|unserem|einem) (?:weg|pfad|steg)|auf der (?:brucke|plattform|strasse|terrasse)"
    r"|(?:im|am|beim) (?:weg|pfad|steg|auto|wagen|parkplatz|bus|aussichtspunkt)|in der hutte)"
)
_GOOD: Final = (
    r"(?:sicher|in sicherheit|ok|okay|gua?t|wohlauf|unverletzt|draussen|raus|rausgekommen|wieder da"
    r"|zuruck|heil|an land|am ufer|gerettet|gefunden|trocken|im trockenen|herausgekommen"
    r"|weg von der kante|gesund)\b"
)
_WO: Final = rf"(?:{_GOOD}|{_AM_WEG}\b)"
_GUT: Final = (
    r"(?:gehts|geht es|geht s)(?: (?:wieder|jetzt|soweit|allen|beiden))* (?:gua?t|besser|prima)\b"
)
_GEHOLT: Final = r"(?:raus\w*|herausgeholt|herausgezogen|gefunden|gerettet|wieder|in sicherheit)\b"

REPLIES: Final[Mapping[str, tuple[str, ...]]] = {
    "all": (
        (
            r"\b(?:alle|beide|jeder|die ganze gruppe)"
            rf"(?: (?!bachbett|flussbett|durch)\w+){{0,4}}? {_WO}"
        ),
        rf"\bwir(?: (?!bachbett|flussbett|durch)\w+){{0,4}}? {_GOOD}",
        rf"\b(?:uns|allen|beiden)(?: beiden| allen)? {_GUT}|\b{_GUT} (?:uns|allen)\b",
        r"\bes geht (?:uns|allen)(?: \w+)? gua?t\b",
        r"^(?:in sicherheit|alle? sicher)$",
        (
            r"\balles (?:(?:wieder|jetzt|soweit) )*(?:gua?t|ok|okay|in ordnung|bestens|paletti"
            r"|super|prima|ruhig|im griff)\b"
        ),
        r"\b(?:nichts|nix)(?: \w+)? (?:passiert|geschehen|gewesen)\b",
        r"\b(?:niemand|keiner|keinem|niemandem)(?: \w+){0,2} (?:verletzt|in gefahr|passiert)\b",
        (
            r"\b(?:wir sind|alle)"
            r"(?: (?:jetzt|nun|schon|wieder|alle|sind|heil|sicher|gua?t|zusammen))*"
            r" oben (?:am|auf (?:dem|der)|beim|an der) (?:weg|pfad|steig"
            r"|forstweg|wanderweg|strasse|parkplatz|auto|hutte|wiese)\b"
        ),
        r"\bkeine gefahr\b",
        r"\b(?:(?:niemand|keiner) fehlt|fehlt (?:niemand|keiner)|keinem fehlt (?:et)?was)\b",
        (
            r"\b(?:alle(?: (?:zwei|drei|vier|funf|sechs|sieben|acht|neun|zehn|\d+))?"
            r"(?: (?:sind|wieder|jetzt|schon))* (?:da|hier|beisammen|beieinander)"
            r"|vollzahlig)(?= ,|$)"
        ),
    ),
    "here": (
        rf"\bwir(?: (?!bachbett|flussbett|durch)\w+){{0,4}}? {_AM_WEG}\b",
        rf"\b(?:wieder|zuruck) {_AM_WEG}\b",
        rf"^(?:(?:sind|sitzen|sitz|bin|stehen|stehn|jetzt|ok|schon|wieder|alle) )+{_AM_WEG}\b",
        r"^(?:(?:wir|sind|sitzen|jetzt|ok|schon|langst|wieder|alle) )+(?:daheim|zu ?hause)\b",
        r"\b(?:weg|pfad) (?:wieder )?gefunden\b",
    ),
    "here_again": (
        (
            r"\b(?:er|sie) (?:ist|sind) (?:(?:jetzt|schon|wieder|nun) )*(?:hier|wieder da|zuruck"
            r"|bei (?:mir|uns))\b|\b(?:ist|sind) (?:er|sie) (?:(?:jetzt|schon|wieder) )*"
            r"(?:hier|wieder da|zuruck|bei (?:mir|uns))\b"
        ),
    ),
    "warm_again": (
        (
            r"\b(?:wieder|schon|jetzt)(?: schon| wieder)* (?:warm|aufgewarmt|trocken)(?= ,|$)"
            r"|\b(?:zitter\w*|frier\w*) (?:\w+ )?nicht mehr\b"
        ),
    ),
    "found_way": (
        r"\b(?:wissen|weiss) (?:(?:jetzt|wieder|wir|ich|,) )*wo (?:wir|ich) (?:sind|bin)\b",
    ),
    "mended": (
        (
            r"\b(?:blutet nicht mehr|(?:blut\w*|es) (?:ist )?(?:gestillt|gestoppt|aufgehort)"
            r"|(?:(?:ich|er|sie) )?kann (?:wieder )?(?:auftreten|laufen|gehen)"
            r"|pflaster (?:ist )?(?:drauf|drum)|verbunden|verband (?:ist )?(?:drauf|drum|dran)"
            r"|(?:nur|bloss) (?:(?:ein\w*|a|paar|kleine\w*) )*"
            r"(?:kratzer|schrammen?|blaue\w* fleck(?:en|e)?))\b"
        ),
    ),
    "they": (
        rf"\bsie sind(?: \w+){{0,3}}? {_WO}",
        rf"\bihnen {_GUT}|\bes geht ihnen(?: \w+)? gua?t\b",
        rf"\b(?:beide|alle)(?: \w+){{0,2}} {_GEHOLT}",
    ),
    "one": (
        rf"\b(?:er|sie|mein \w+|meine \w+|der \w+|die \w+) (?:ist|war|hat)(?: \w+){{0,3}}? {_WO}",
        rf"\b(?:ihm|ihr|meinem \w+|meiner \w+) {_GUT}|\bes geht (?:ihm|ihr)(?: \w+)? gua?t\b",
        rf"\b(?:ihn|sie|den \w+)(?: \w+){{0,3}}? {_GEHOLT}",
        r"\bist (?:wieder )?(?:raus|draussen|da)\b",
        r"\b(?:haben|hab|habe) (?:ihn|sie)(?= ,|$| (?:jetzt|wieder|hier)\b)",
        (
            r"\b(?:rettung\w*|bergwacht|bergrettung|sanitater|notarzt|krankenwagen|hubschrauber"
            r"|feuerwehr)"
            r" (?:ist|sind|hat|haben)(?: (?:jetzt|schon|gerade))* (?:da|hier|ihn|sie|bei (?:ihm"
            r"|ihr|uns))\b"
        ),
    ),
    "own": (
        rf"\bich bin(?: \w+){{0,3}}? {_WO}",
        rf"\bmir {_GUT}|\bes geht mir(?: \w+)? gua?t\b",
        rf"^bin(?: \w+)? {_WO}",
        r"^(?:es )?geht (?:(?:schon|mir|jetzt) )*wieder(?: gut)?(?= ,|$)",
    ),
    "but_fine": (
        (
            r"\b(?:nass|durchnasst|schmutzig|dreckig|kalt|mude|erschrocken) aber"
            r" (?:ok|okay|gua?t|heil|wohlauf|sicher|gesund|unverletzt|glucklich|alles gua?t)\b"
        ),
    ),
    "back_by_themselves": (r"\b(?:er|sie) (?:war|waren|ist|sind) (?:nur|bloss|schon|kurz)\b",),
    "always_so": (r"\bimmer (?:so|braun)\b|\b(?:ist|das ist) normal\b|\b(?:moor\w*|torf\w*)\b",),
    "clear_water": (
        r"\b(?:durchsichtig|glasklar|klar|sieht (?:man )?(?:bis )?(?:auf )?den grund)\b",
    ),
    "not_rising": (
        (
            r"\b(?:steigt|gestiegen|hoher|angestiegen) (?:\w+ )?(?:nicht|nich|net|nix)\b"
            r"|\b(?:nicht|nich|net|nix) (?:\w+ )?(?:gestiegen|hoher|angestiegen|steigend)\b"
            r"|\bkein(?:e|en)? (?:aste|astchen|zweige|schlamm|dreck|treibholz)\b"
        ),
    ),
    "not_dark": (
        (
            r"\b(?:nicht|nich|net|keine?) (?:nacht|nachts|dunkel|spat|abend)\b"
            r"|\b(?:nachmittags?|vormittags?|mittags?|hellichter tag|helllichter tag)\b"
        ),
    ),
    "retracted": (
        r"\b(?:fehlalarm|falscher alarm|blinder alarm)\b",
        r"(?<!mir einen )(?<!uns einen )(?<!mir nen )\b(?:spass|scherz|witz)\b(?! beiseite)",
        r"\bhab(?:e)? nur (?:getestet|probiert)\b",
        r"\bnur (?:ein )?test\b",
        r"\b(?:vertippt|verschrieben|missverstandnis|falscher chat)\b",
        r"\bkeine? (?:mensch|person)\b",
    ),
    "meant": (
        r"\b(?:ich|wir) (?:mein(?:te|ten|e|en)?|hab\w* gemeint|sprach\w* von)\b",
        r"\bgemeint (?:war|ist|hab\w*)\b",
    ),
    "only": (
        r"\b(?:nur|bloss|lediglich) (?:die|der|das|den|meine?n?|ein\w*|unser\w*)\b",
        r"\bes (?:war|ist) (?:nur |bloss )?(?:die|der|das|meine?|ein\w*)\b",
    ),
    "heard": (
        r"ok|okay|gua?t|verstanden|alles klar|klar|passt|in ordnung|mach ich|machen wir|danke",
        r"is gua?t|ist gua?t|geht klar|aha|super|fertig|erledigt|dann",
    ),
    "fine": (r"gua?t|alles gua?t|passt|alles ok",),
    "nobody": (
        (
            r"(?:niemand|keiner|nicht mehr|keine seele|alle zuruck|wir sind zuruck|bin zuruck)"
            r"\b(?! (?:ausser|sieht|schaut|merkt|stort|hilft|hort|kommt|antwortet|sonst"
            r"|weiss|ist (?:hier|da)(?= [.,]|$)))"
        ),
    ),
    "stepped_back": (
        (
            r"\b(?:bin|sind|ist|geh\w*|tret\w*)(?: (?!nicht)\w+){0,2}"
            r" (?:zuruck|weg|runter|zuruckgegangen|zuruckgetreten|weggegangen|runtergekommen)\b"
            # Down to the tripod, or in for the bag, is no step back.
            r"(?! (?:zum|zur|ins|ans|in|an|auf|und hol\w*)\b"
            r"(?! (?:auto|wagen|parkplatz|bus|weg|hutte)\b))"
        ),
        r"\bbleib\w*(?: (?!nicht|nie)\w+| ,){0,3} (?:am ufer|an land|auf dem trockenen)\b",
        r"\bbleib\w* (?:draussen aus|raus aus|aus) dem (?:wasser|bach|fluss)\b",
        r"\b(?:zuruck|heim|runter|jetzt|geh\w*)(?: \w+)? zum (?:auto|wagen|parkplatz|bus)\b",
        (
            r"\b(?:dann nicht|mach\w* (?:ich|wir) nicht|lass\w* (?:ich|wir) (?:es )?(?:sein"
            r"|bleiben)"
            r"|vergiss es|lieber nicht)(?= ,|$)"
        ),
    ),
    "somebody": (
        r"ich|wir|einer|zwei|drei|jemand|er|sie|er ist|sie ist|sie sind|wir sind|ich bin",
        r"meine? \w+(?: ist)?",
    ),
    "place": (
        (
            r"\b(?:bin|sind|sitz\w*|ist)(?: (?!nicht)\w+){0,2} (?:daheim|zu ?hause|im (?:bett"
            r"|garten|cafe"
            r"|hotel|zug|buro|restaurant|wohnzimmer)|auf (?:dem|der) (?:sofa|bank|couch|terrasse)"
            r"|in der (?:kuche|bahn|hutte))\b"
        ),
        (
            r"\b(?:bleib\w*|steh\w*|sitz\w*|bin|sind|zuruck|wieder|nur|ist)(?: (?!nicht)\w+){0,2}"
            rf" (?:{_AM_WEG}|(?:hinter|an|am)(?: (?:dem|der|einem))?"
            r"(?: (?:anderen|nachsten))? (?:gelander|zaun"
            rf"|absperrung))\b"
        ),
    ),
    "yes": (r"ja|jo|jep|jawohl|doch",),
    "after_yes": (
        (
            r"mein\w*|er|sie|ich|wir|einer|jemand|bitte|hilfe|verletzt|verirrt|im|an|in|aber"
            r"|zwei|drei"
            r"|uns|mir|leider|ja"
        ),
    ),
    "no": (r"nein|nee|ne|noe",),
    "not_yet": (r"nicht|noch nicht|noch lange nicht",),
    "unsure": (
        (
            r"\b(?:nicht|kein\w*|nie|niemals|niemand\w*|noch|aber|nur|fast|beinahe?|bald"
            r"|hoff\w*|wenn"
            r"|falls|glaub\w*|denk\w*|vielleicht|wohl|ausser|bis auf|minus|fehlt|fehlen"
            r"|vermiss\w*|warte\w*|ob|hilfe|sobald|gleich)\b"
        ),
        # Somebody is elsewhere, or looked for.
        (
            r"\b(?:ist|liegt|steht|hangt|sitzt) (?:da |dort )?(?:unten|drin|draussen)(?= ,|$)"
            r"(?! ,\s*$)|\b(?:such\w*|rufen nach)\b"
        ),
    ),
    "after_no": (
        r"alles|wir|ich|alle|niemand|keiner|es|das|nur|danke|er|sie|war|nichts|keine gefahr",
        r"falsch\w*|sorry|uns|mir|passt|quatsch",
    ),
}
