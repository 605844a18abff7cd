"""What speaks of danger without being in it: where nobody may stand, the note left at home."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded


class Talk(Enum):
    """What people do so that nothing happens; each is good practice."""

    #: Somebody at home knows where they are, until when, and whom to call.
    NOTE_HOME = "note_home"
    #: They ask where they may not stand.
    WHERE_NOT = "where_not"
    #: They say that nobody is hurt or out there.
    NOBODY = "nobody"
    #: They focus or meter on the lip, from wherever they stand.
    PICTURE = "picture"


_FEW: Final = r"(?: (?!and\b|but\b|und\b|aber\b|y\b|pero\b)[^ ,.]+)"

# Where nobody may stand. The message is folded: "can't" is "cant", "dónde" is "donde".
_BE: Final = (
    r"(?:stand|standing|go|walk|set(?: it| the \w+| my \w+)? ?up|put|sit|step|climb|be|wade|shoot"
    r"|photograph|enter|stay|place|tread)"
)
_ONE: Final = r"(?:i|we|you|one|people|anyone|anybody|a person)"
_OUGHT: Final = r"(?:can|may|must|should|shall|could|do|am|are|is|would)"
_OUGHT_NOT: Final = (
    r"(?:cant|cannot|mustnt|shouldnt|may not|must not|should not|can not|am not|are not|arent)"
)
_ALLOWED: Final = r"(?: (?:be|allowed|permitted|supposed|safe|ok|okay|to|ever|even))*"
_WHERE: Final = (
    r"(?:where(?: else| exactly)?|(?:what|which) (?:places?|spots?|rocks?|parts?|areas?)"
    r"|is there (?:any ?where|any place|a place|some ?where|any spot)(?: that| where)?"
    r"|are there (?:any )?(?:places?|spots?)(?: that| where)?)"
)
_ITS_PLACE: Final = (
    r"(?: (?:my|the|a) (?:tripod|camera|bag|kit))?"
    r"(?: (?:at|near|by|on|in|with|around|beside|below|above|under|behind)"
    r"(?: (?:the|a|an|my|our|this|that))? \w+){0,2}"
)
_BARRED: Final = r"(?:too dangerous|dangerous|forbidden|prohibited|unsafe|off limits)"
_ENGLISH_WHERE: Final = (
    rf"{_WHERE} {_OUGHT} (?:{_ONE} )?(?:not|never){_ALLOWED} {_BE}\b{_ITS_PLACE}",
    rf"{_WHERE} (?:{_ONE} )?{_OUGHT_NOT}(?: {_ONE})?{_ALLOWED} {_BE}\b{_ITS_PLACE}",
    rf"{_WHERE} {_OUGHT} (?:nobody|no one|noone) {_BE}\b{_ITS_PLACE}",
    (
        rf"{_WHERE} (?:is|are|would be|its)(?: it)? (?:{_BARRED}|not (?:allowed|safe|ok|permitted))"
        rf"(?: to)?(?: {_BE}\b)?{_ITS_PLACE}"
    ),
    (
        rf"{_WHERE} (?:is|are) (?:standing|going|walking|climbing|wading) (?:{_BARRED}|not \w+)"
        rf"{_ITS_PLACE}"
    ),
    (
        rf"{_WHERE} (?:{_OUGHT} )?{_ONE} (?:better )?(?:to )?(?:avoid|stay (?:off|away from|out of)"
        rf"|keep (?:off|away from|out of)){_ITS_PLACE}"
    ),
    rf"(?:{_OUGHT_NOT}|not)(?: allowed)?(?: to)? {_BE} where(?: exactly)?(?= [.,]|$)",
)
_STELLEN: Final = r"(?:wo|wohin|(?:an )?welche[nr]? (?:stellen?|platze[n]?|orte[n]?|felsen))"
_HIN: Final = (
    r"(?:(?:zu )?(?:hin|stehen|stellen|hinstellen|gehen|sein|hingehen|treten|betreten|aufstellen"
    r"|rein|rauf|drauf|steigen|sitzen|fotografieren))"
)
_VERBOTEN: Final = r"(?:verboten|gefahrlich|tabu|gesperrt|nicht (?:erlaubt|sicher))"
_GERMAN_WHERE: Final = (
    (
        rf"{_STELLEN} (?:darf|durfen|soll|sollen|sollte|sollten|kann|kannst|konnen|muss)"
        rf"(?: (?:ich|wir|man|mich|das|mein|stativ|denn|hier|da|am|beim|fall|wasserfall))*"
        rf" (?:lieber |besser |auf keinen fall )?(?:nicht|nie|niemals|niemand|keiner)"
        rf"(?: mit (?:dem|meinem) stativ)?(?: {_HIN})?(?= [.,]|$)"
    ),
    (
        rf"{_STELLEN} (?:ist es|ists|ist|sind|ware es|war es)(?: (?:hier|da|am|beim|fall|zu))*"
        rf" {_VERBOTEN}(?: (?:zu )?{_HIN})?"
    ),
)
_PONERSE: Final = (
    r"(?:poner\w*|parar\w*|estar|ir|pisar|colocar\w*|entrar|subir\w*|pasar|meter\w*|quedar\w*"
    r"|acercar\w*|sentar\w*|caminar|andar)"
)
_SITIOS: Final = (
    r"(?:a?donde|(?:en |a )?(?:que|cuales) (?:sitios?|lugares?|zonas?|rocas?)(?: son)?|hay algun "
    r"(?:sitio|lugar) (?:donde|en que|en el que))"
)
_SPANISH_WHERE: Final = (
    (
        rf"{_SITIOS} no (?:se )?(?:puedo|podemos|puede|puede uno|debo|debemos|debe|deberia\w*"
        rf"|hay que|esta permitido|es seguro)(?: uno)? {_PONERSE}{_FEW}{{0,3}}"
    ),
    rf"{_SITIOS} (?:esta|es|seria) (?:prohibido|peligroso|demasiado peligroso){_FEW}{{0,4}}",
)

# The note left at home: who is late, who calls whom; and that somebody knows where they are.
_IF: Final = (
    r"(?:(?:if|in case|when|unless|once|should) (?:i|we|im|were|ive|weve|you|she|he|they)"
    r"(?: (?!and\b|but\b)[^ ,.]+){0,3}? (?:not|havent|hasnt|arent|isnt|dont|doesnt|late|later"
    r"|overdue|back|home|down|nothing)(?: (?!and\b|but\b|call|ring)[^ ,.]+){0,8}?)"
)
_CALLS: Final = (
    r"(?:(?:then |please |to |you |she |he |they |should |must |will |can |my \w+ |the \w+ )*"
    r"(?:calls?|calling|rings?|alerts?|phones?|notify|notifies|tells?|contacts?|informs?)\b"
    r"(?: (?:the|my|our|mountain|a|local|park|emergency|for|\d+))*(?: [^ ,.]+)?)"
)
_TOLD: Final = (
    r"(?:(?:i|we|ive|weve) (?:(?:have|already|just|also|always) )*(?:told|tell|texted|text|wrote"
    r"|left|leave|sent|send|messaged|informed|write)\b"
    r"|(?:wife|husband|sister|brother|mum|mom|mother|dad|father|friend|partner|son|daughter"
    r"|hotel|hut|ranger|somebody|someone|she|he|they) (?:already )?knows?"
    r"|(?:a |the |my )?(?:note|letter|message|text|slip)\b)"
)
_ENGLISH_NOTE: Final = (
    rf"{_IF}(?: ,)?(?: then)? {_CALLS}",
    rf"{_CALLS} {_IF}(?= [.,]|$)",
    (
        rf"{_TOLD}(?: (?!not\b|no\b|nobody\b|none\b|idea\b|clue\b|\w+nt\b)[^ .]+){{0,8}}?(?:"
        rf" \.)? where (?:exactly )?(?:i am|im|we"
        r" are|were|i go|we go|ill be|well be|i will be|we will be|i parked|we parked)(?: going)?"
    ),
    (
        r"(?:when|whom|who|which number) (?:they |she |he |you )?(?:is |are |should )?(?:to )?"
        r"(?:call|calls|ring|alert)(?: for help| the \w+| if .{0,40})?(?= [.,]|$)"
    ),
)
_WENN: Final = (
    r"(?:(?:wenn|falls|sollte|sollten) (?:ich|wir|er|sie)(?: (?!und\b|aber\b)[^ ,.]+){0,8}?"
    r" (?:nicht|noch nicht|spater|uberfallig)(?: (?!und\b|aber\b|ruf|hol)[^ ,.]+){0,6}?"
    r"|bin ich (?:bis|um) [^ ]+(?: uhr)? nicht (?:zuruck|da|daheim))"
)
_RUFT: Final = (
    r"(?:(?:dann |bitte |sollst? |soll |sie |er |du |die |den |der |das |meine? \w+ |bergrettung "
    r"|bergwacht |rettung |notruf |polizei |112 )*(?:ruf\w*|anrufen|anruft|verstandig\w*"
    r"|alarmier\w*|gib|gebt|meld\w*|hol\w*|wahl\w*)\b"
    r"(?: (?:die|den|der|das|bei|bitte|bescheid|an))*(?: (?!und\b|aber\b)[^ ,.]+)?)"
)
_GERMAN_NOTE: Final = (
    rf"{_WENN}(?: ,)?(?: und)? {_RUFT}",
    rf"{_RUFT}(?: ,)? {_WENN}(?= [.,]|$)",
    (
        r"(?:zettel|nachricht|notiz|gesagt|geschrieben|bescheid|hinterlass\w+|(?:frau|mann|schwester"
        r"|bruder|mutter|vater|freund|freundin|hotel|hutte|jemand|sie|er) weiss)"
        r"(?: (?!nicht\b|niemand\b|kein|ahnung\b|weiss\b)[^ .]+){0,6}?(?: \.)? wo (?:ich|wir)"
        r"(?: (?:bin|sind|hingehen|hingehe|gehe|gehen|unterwegs))*"
    ),
)
_NO_VUELVO: Final = (
    r"(?:si (?:no (?:vuelvo|volvemos|he vuelto|hemos vuelto|estoy|estamos|llego|llegamos|aviso"
    r"|avisamos|regreso|regresamos|he llegado|hemos llegado|he regresado|llamo)|(?:me|nos)"
    r" retras\w+"
    r"|(?:llego|llegamos) tarde)(?: (?!y\b|pero\b|llam|avis)[^ ,.]+){0,7}?)"
)
_LLAMA: Final = (
    r"(?:(?:que |por favor |ella |el |tiene que |debe )*(?:llam\w+|avis\w+|alert\w+|contact\w+)"
    r"(?: (?:a|al|la|el|los|las|de))*(?: (?!y\b|pero\b)[^ ,.]+)?(?: de \w+)?)"
)
_SPANISH_NOTE: Final = (
    rf"{_NO_VUELVO}(?: ,)?(?: entonces)? {_LLAMA}",
    rf"{_LLAMA}(?: ,)? {_NO_VUELVO}(?= [.,]|$)",
    (
        r"(?:nota|mensaje|le dije|les dije|he dicho|le escribi|les escribi|avise|he avisado"
        r"|(?:mujer"
        r"|marido|hermana|hermano|madre|padre|amigo|amiga|hotel|alguien|ella|el) sabe)"
        r"(?: (?!no\b|nadie\b|ni\b|idea\b)[^ .]+){0,6}?(?: \.)? donde (?:estoy|estamos|voy|vamos"
        r"|estare|estaremos)"
    ),
)

#: English denials are the guards' matter; these are the other languages' and the plainest.
_NOBODY: Final = (
    (
        r"(?:nadie (?:esta|hay|resulto|ha resultado|se ha)|no hay nadie|ninguno (?:esta|resulto))"
        r"(?: ya)? (?:en (?:el|la) (?:agua|rio|arroyo|poza|orilla|borde|precipicio|filo)"
        r"|herid\w+|lastimad\w+|en peligro|(?:ahi|alli|alla)? ?fuera|perdid\w+|hecho dano)"
    ),
    (
        r"(?:niemand|keiner|keinem|niemandem)(?: von uns)? (?:ist|war|steht|wurde|hat sich|ging)"
        r"(?: (?:mehr|was|jetzt))*(?: (?:(?:im|in|am|an|auf)(?: (?:der|dem|den))? \w+|verletzt"
        r"|passiert|da draussen|weh getan|verloren|verirrt|reingefallen))"
    ),
    (
        r"(?:nobody|no one|noone)(?: of us)? (?:is|was|got)(?: (?:ever|even|really))*"
        r" (?:hurt|injured|missing|lost|in danger|out there|in the (?:water|river|creek)"
        r"|(?:near|at|on) (?:the|an) (?:edge|lip|water))"
    ),
)
_EDGE: Final = r"(?:lip|edge|brink|crest|rim|top)"
_PICTURE: Final = (
    (
        rf"(?:(?:spot ?)?(?:focus|meter|expose)(?:s|d|ed|ing)?)(?: \w+)? (?:on|at|for|off)"
        rf" (?:the |that )?{_EDGE}(?: of the \w+)?"
    ),
    (
        r"(?:auf|an) (?:die|der|den) (?:kante|oberkante|abbruchkante|fallkante|rand)"
        r" (?:scharf\w*|fokus\w*|mess\w*|belicht\w*)"
    ),
    (
        r"(?:enfoc\w+|medir|mido|midiendo|expon\w+)(?: (?:en|a|al|el|hacia|sobre))*"
        r" (?:borde|labio|filo)(?: de la cascada)?"
    ),
)
#: Words of which a message holds one where any of this can be found; that keeps reading quick.
_GATE: Final = re.compile(
    r"\b(?:where|what|which|there|if|unless|when|whom|who|should|in case|once|nobody|no one|noone"
    r"|wo|wohin|welche\w*|wenn|falls|sollte\w*|bin ich|niemand\w*|kein\w*|a?donde|que|cuales|hay"
    r"|si|nadie|ningun\w*|\w*(?:focus|meter|expos|scharf|fokus|mess|belicht|enfoc|medir|mid|expon)\w*)"
    r"\b"
)


def _any(patterns: Iterable[str]) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{'|'.join(patterns)})(?!\w)")


_TALK: Final[Mapping[Talk, re.Pattern[str]]] = {
    Talk.NOTE_HOME: _any((*_ENGLISH_NOTE, *_GERMAN_NOTE, *_SPANISH_NOTE)),
    Talk.WHERE_NOT: _any((*_ENGLISH_WHERE, *_GERMAN_WHERE, *_SPANISH_WHERE)),
    Talk.NOBODY: _any(_NOBODY),
    Talk.PICTURE: _any(_PICTURE),
}
#: So many words may stand beside such talk in a message that says nothing else (own rule).
_BESIDE: Final = 8


def without_talk(text: str) -> tuple[str, frozenset[Talk]]:
    """A message without what only speaks of danger.

    Args:
        text: as typed or dictated.

    Returns:
        What else it says, in plain letters where something was taken out; and what was.
    """
    said = folded(text)
    if _GATE.search(said) is None:
        return text, frozenset()
    found = set()
    for talk, pattern in _TALK.items():
        said, times = pattern.subn(" , ", said)
        if times:
            found.add(talk)
    return (said, frozenset(found)) if found else (text, frozenset())


def only_talk(text: str) -> frozenset[Talk]:
    """What a message speaks of when it says little else."""
    rest, found = without_talk(text)
    beside = [word for word in rest.split() if word.isalnum()]
    return found if len(beside) <= _BESIDE else frozenset()
