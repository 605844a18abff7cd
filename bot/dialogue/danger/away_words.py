"""Words of who is away from where nobody should stand: places reached, steps back, who is meant."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.kinds import DangerKind

_SAFE: Final = (
    r"(?:path|footpath|trail|track|road|street|platform|deck|bridge|footbridge|boardwalk|viewpoint"
    r"|overlook|lookout|terrace|car park|parking(?: lot| area)?|cars?|van|bus|trailhead|hut|hotel"
    r"|house|cafe|bench|meadow|lawn|picnic (?:area|table)|visitor cent(?:re|er))"
)
_RAIL: Final = r"(?:railings?|rails?|fence|rope|barrier|handrail|sign|guard ?rail)"
_PLATZ: Final = (
    r"(?:weg|pfad|steig|steg|wanderweg|forstweg|strasse|brucke|plattform|aussichtspunkt"
    r"|aussichtsplattform|terrasse|parkplatz|auto|wagen|bus|hutte|hotel|haus|wiese|bank)"
)
_ZAUN: Final = r"(?:gelander|zaun|absperrung|seil|schild|schranke)"
_LUGAR: Final = (
    r"(?:sendero|camino|mirador|plataforma|puente|pasarela|carretera|terraza|aparcamiento|parking"
    r"|estacionamiento|coche|carro|auto|refugio|hotel|pista|banco|prado|cafeteria)"
)
_VALLA: Final = r"(?:barandilla|valla|baranda|cuerda|barrera|cerca)"
_ART: Final = r"(?:the |a |an |my |our |this |that |marked |main |lower |upper |public )*"
_DER: Final = r"(?:dem |der |den |das |die |unserem |einem |einer |markierten |anderen )*"
_EL: Final = r"(?:el |la |los |las |un |una |mi |nuestro |otro )*"
#: Somebody else who came back; "he is gone" may mean that he fell.
_THEY: Final = (
    r"(?:he|she|they|(?:(?:my|our|the) (?:\w+ )?)?(?:friend|wife|husband|son|daughter"
    r"|brother|sister|partner|kids?|child|children|boy|girl|dog|others))"
)
#: A safe place that was reached: good for every kind, whoever is meant.
REACHED: Final = re.compile(
    rf"\b(?:(?:on|onto|at|in|to|by) {_ART}{_SAFE}|behind {_ART}{_RAIL}|(?:to|at) {_ART}{_RAIL}"
    r"|(?:on|to) (?:this|the (?:safe|right)) side(?: of (?:the|it))?|at home|back home|home already"
    rf"|(?:auf|am|an|beim|im|in|zum|zur|bei|ans|ins) {_DER}{_PLATZ}|daheim|zu ?hause"
    rf"|hinter[mn]? {_DER}{_ZAUN}|(?:am|beim|zum) {_DER}{_ZAUN}|heruben"
    r"|auf (?:dieser|der (?:sicheren|richtigen)) seite"
    rf"|(?:en|al?|hasta|detras del?|tras) {_EL}(?:{_LUGAR}|{_VALLA})|en casa|(?:de|a) este lado)\b"
)
#: Others who are back with who writes: says nothing where that is where nobody should stand.
RETURNED: Final = re.compile(
    rf"\b(?:{_THEY} (?:(?:is|are|have|has|came|come|got|both|all|now|already|safely|just) )*"
    r"(?:back(?: over| here)?|(?:here )?with (?:me|us)|left)(?: (?:to|with|by) (?:me|us))?"
    r"|on (?:the|a) (?:leash|lead)|an der leine|con la correa"
    r"|(?:er|sie|\w+) (?:ist|sind) (?:(?:wieder|jetzt|schon) )*"
    r"(?:zuruck|wieder da|wieder hier|bei (?:mir|uns))"
    r"|^(?:ist|sind|jetzt) (?:(?:er|sie|jetzt|ist|sind) )*wieder (?:da|hier|zuruck|bei (?:mir|uns))"
    r"|(?:ya )?(?:volvio|ha vuelto|regreso|ha regresado|volvieron|han vuelto)"
    r"|(?:ya )?esta(?:n)? (?:(?:aqui|ya) )*(?:conmigo|con nosotros|con nosotras|de vuelta))\b"
)
#: Away from an edge, down from a climb: the step itself, where nothing is left to be guessed.
_STEPPED: Final = (
    r"(?:stepped|moved|went|walked|got|came|gone|backed) (?:well |right |all |far )*"
    r"(?:back|away|off)"
    r"(?: from (?:it|there|here))?|(?:zuruckgetreten|zuruckgegangen|weggegangen)"
    r"|(?:me|nos) (?:he |hemos )?(?:aparte|apartado|alejado|aleje|retire|retirado|apartamos"
    r"|alejamos)"
)
_EDGE: Final = r"(?:edge|lip|brink|rim|ledge|drop|cliff|drop ?off)"
_KANTE: Final = r"(?:kante|abbruch|klippe|rand|abgrund|abrisskante)"
_WET: Final = r"(?:water|creek|stream|river|pool|brook|current)"
_BACH: Final = r"(?:wasser|bach|fluss|becken|gumpen?)"
_RIO: Final = r"(?:agua|rio|arroyo|poza|corriente)"
_OVER: Final = r"(?:it|there|the (?:falls?|waterfall|curtain|overhang|rocks?|cliff|wall))"
_OUT: Final = (
    r"^(?:ok |yes |yeah )?(?:(?:i|we|he|she|they|all|both) )?(?:(?:am|are|is|of us|got|came|climbed"
    r"|have|has) )*(?:back )?out(?: again| now| of (?:it|there))*(?= ,|$)"
    r"|^(?:ok )?(?:(?:ich|wir|er|sie|alle) )?(?:bin|sind|ist|schon|wieder)(?: (?:jetzt|schon|wieder"
    r"|alle))* (?:raus|draussen|heraussen)(?= ,|$)"
    r"|^(?:ya )?(?:sali|salio|salimos|salieron|he salido|hemos salido|ha salido|estoy fuera"
    r"|estamos fuera|esta fuera)(?: ya)?(?= ,|$)"
)
_ASHORE: Final = (
    r"(?:on|at|to|onto) the (?:bank|shore|dry land)|ashore|on dry land|am ufer|an land|ans ufer"
    r"|en la orilla|a la orilla|en tierra|en seco"
)
_DOWN: Final = (
    r"^(?:ok )?(?:(?:i|we|he|she) )?(?:(?:am|are|is|have|has|came|got|climbed) )*(?:safely )?"
    r"(?:back )?down(?: again| now| safely)+(?= ,|$)"
    r"|^(?:bin|sind|ist) (?:(?:wieder|jetzt|schon|heil) )+unten(?= ,|$)"
    r"|^ya (?:estoy|estamos|esta) abajo(?= ,|$)"
)
#: What leaves one kind of place, and no other.
OF_KIND: Final[Mapping[str, re.Pattern[str]]] = {
    kind.value: re.compile(rf"(?:\b(?:{_STEPPED})\b|{'|'.join(patterns)})")
    for kind, patterns in {
        DangerKind.LIP: (
            rf"\b(?:off|away from|back from|left|down from) (?:the |that )?{_EDGE}\b",
            rf"\b(?:weg von|runter von|zuruck von) der {_KANTE}\b",
            rf"\bvon der {_KANTE} (?:weg|zuruck)\b",
            r"\b(?:lejos|fuera|apartad\w|alejad\w) del (?:borde|filo)\b",
        ),
        DangerKind.WADING: (
            rf"\b(?:out of|off|away from|left) the {_WET}\b|\b(?:{_ASHORE})\b",
            rf"\b(?:aus|raus aus) (?:dem|der) {_BACH}(?: raus| heraus)?\b",
            rf"\b(?:fuera|sali|salimos|salido) del (?:{_RIO})\b|{_OUT}",
        ),
        DangerKind.ICE: (
            rf"\b(?:off|away from|left) the ice\b|\b(?:{_ASHORE})\b",
            r"\brunter vom eis\b|\bvom eis (?:runter|weg|herunten)\b",
            r"\bfuera del hielo\b|\b(?:baje|sali) del hielo\b",
        ),
        DangerKind.UNDER: (
            rf"\b(?:out from|away from|out of)(?: (?:behind|under))? {_OVER}\b",
            r"\b(?:raus|weg|hervor) (?:hinter|unter|von) (?:da|dort|dem \w+|der \w+)\b",
            rf"\bfuera de (?:ahi|alli|debajo|detras)\b|{_OUT}",
        ),
        DangerKind.CLIMB: (_DOWN,),
        DangerKind.BARRIER: (
            r"\b(?:came|climbed|got|am|are|is) back over\b",
            r"\bwieder (?:druben|zuruck)\b",
            r"\b(?:volvi|volvimos) a pasar\b",
        ),
    }.items()
}
#: Words of a way, a time and people's own things that came along.
_BESIDE_WORDS: Final = """
    returned retreated headed zuruckgekehrt zuruckgelaufen regrese regresamos regresado vuelvo
    moved went walked stepped climbed come down stay stays staying stayed keep gone got left
    reached safely below again both three those kid over haha hahaha this morning earlier
    today boots feet shoes far all called him he gegangen gelaufen gekommen geklettert bin
    heruben heut heute fruh morgen vorhin unten beide fusse stiefel bleib bleibe bleiben
    bleibt davon hin jetzt gerufen hab hemos ha bajado bajamos baje subido llegado llegamos
    llegue quedo quedamos queda ido fui fuimos manana hoy antes abajo esta ya otra vez
    volvimos vuelto pies botas los las llame
"""
BESIDE: Final = frozenset(_BESIDE_WORDS.split())
WITH_THINGS: Final = re.compile(
    r"\b(?:with|and) (?:(?:all|the|my|our|of) )*(?:tripod|camera|gear|kit|stuff|bags?|backpack"
    r"|everything|dog|equipment)\b|\b(?:tripod|camera|gear|dog)(?: (?:is|are|and all))?"
    r" (?:too|as well|also|with (?:me|us)|packed)\b"
    r"|\b(?:mit|samt|und) (?:(?:dem|der|das|die|den|allen|allem|meinem|meiner|ganzen) )*(?:stativ"
    r"|kamera|ausrustung|sachen|zeug|rucksack|hund)\b|\b(?:stativ|kamera|hund)(?: ist)? (?:auch"
    r"|dabei|eingepackt)\b"
    r"|\b(?:con|y) (?:(?:el|la|mi|todo|toda|los|las|todas|mis) )*(?:tripode|camara|equipo|mochila"
    r"|cosas|perro)\b|\b(?:tripode|camara|perro) (?:tambien|conmigo|incluid[oa])\b"
)
#: Another one, where who writes is there, too: that one's path is none of theirs.
ANOTHER: Final = re.compile(
    r"\b(?:he(?! (?:vuelto|bajado|subido|salido|ido|regresado|llegado)\b)"
    r"|she|hes|shes|my (?!self\b|tripod\b|camera\b|gear\b)\w+ is|er ist|sie ist"
    r"|mein\w* \w+ ist|mi \w+ esta|el esta|ella esta)\b"
)
#: Who asks for themselves, or stands there, whoever else is named.
FOR_ONESELF: Final = re.compile(
    r"\b(?:(?:can|may|could|should|shall|do|if) (?:i|we)|(?:i|we) (?:want|wanna|go|climb|stand|sit"
    r"|will|would|can|could)|(?:kann|darf|soll|konnen|durfen|sollen) (?:ich|wir)|(?:ich|wir)"
    r" (?:steh\w*|will|wollen|geh\w*|kletter\w*)|puedo|podemos|quiero|queremos|voy|vamos|estoy"
    r"|estamos)\b"
)
WHO_WRITES: Final = re.compile(r"\b(?:i|im|ive|me|ich|bin|yo|estoy|me he|he vuelto|volvi)\b")
SELF: Final = re.compile(
    r"\b(?:i|im|ive|me|we|weve|were|us|both|all|nobody|no|ich|mir|wir|uns|alle|beide|niemand|nein"
    r"|yo|estoy|estamos|conmigo|nosotros|todos|todas|nadie|no)\b"
)
OTHERS: Final = re.compile(
    r"\b(?:we|were|both|all|he|she|they|hes|shes|theyre|him|her|them|my \w+|the \w+ (?:is|are|came)"
    r"|nobody|no one|wir|alle|beide|er|sie|ihn|niemand|keiner|mein\w* \w+|estamos|todos|todas|nadie"
    r"|esta|estan|el|ella|ellos|mi \w+|volvio|volvieron|volvimos)\b"
)
#: Nobody is there any more.
NO_MORE: Final = re.compile(
    r"\b(?:not|no(?:body| one)?)(?: (?:is|am|are|one|out|over|up|there|standing))*"
    r"(?: (?:on|at|in|by|near|under|behind) (?:it|the \w+))? (?:any ?more|longer)\b"
    r"|^no longer\b"
    r"|\b(?:nicht|niemand)(?: (?:ist|steht))? mehr(?: (?:da|dort|draussen|(?:am|auf|an|im|unter"
    r"|hinter) (?:(?:dem|der) )?\w+))*(?= ,|$)"
    r"|\bya no (?:hay nadie|(?:estoy|estamos|esta)(?: (?:ahi|alli|(?:en|sobre|bajo|detras del?)"
    r" (?:(?:el|la) )?\w+))?)\b"
)
