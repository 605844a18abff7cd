"""Who asks for, or tells of, a place where nobody stands in words that need no weighing."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.folding import folded

#: Between who asks and the place: nothing that denies, and no end of the clause.
_GAP: Final = r"(?: (?!nicht\b|nie\b|kein|no\b|not\b|nunca\b|never\b)[^ ,.]+){0,5}?"
#: Talk of the picture: there an edge is an edge of the frame, or something to focus on.
_PICTURE: Final = re.compile(
    r"\b(?:im bild|ins bild|bildrand|bildkante|im foto|foto(?:s)? (?:lassen|haben)|scharf\w*"
    r"|fokus\w*"
    r"|belicht\w*|anschneid\w*|abschneid\w*|beschneid\w*|schneid\w*|weglass\w*|encuadr\w*|imagen"
    r"|enfoc\w*|recort\w*|cortar|nitid\w*|frame|picture|photo|focus\w*|crop\w*|sharp|exposed?"
    r"|meter(?:s|ed|ing)?|in the shot|messen|medir|mido)\b"
)

# German. The message is folded: "darf ich über" is "darf ich uber".
_DARF: Final = (
    r"(?:(?:darf|durfen|durfte|kann|konnen|konnte|soll|sollte|mochte|will|wollen|wurde)"
    r" (?:ich|wir|man|jemand|mein \w+|meine \w+|das model|er|sie)"
    r"|(?:ich|wir) (?:will|wollen|mochte|mochten|wurde gern|darf|durfen)"
    r"|ist es (?:ok|okay|erlaubt|sicher|moglich)|geht es)"
)
_AN: Final = r"(?:an|auf|uber|zu|zur|bis zur|bis an|bis auf|vor bis an|direkt an|ganz an)"
_KANTE: Final = (
    r"(?:die |der |den |dem )?(?:\w+ )?(?:abbruchkante|kante|fallkante|felskante|abrisskante"
    r"|oberkante|klippe|klippenrand|abgrund|abbruch|absturzkante)"
)
#: "Rand" is the frame's, too: only where somebody climbs, steps or stands there.
_RAND: Final = (
    r"(?=.*\b(?:rauf|rauf\w+|hoch|hoch\w+|hinauf\w*|klett\w+|kraxel\w*|steig\w*|stehen(?! lass)"
    r"|stellen|treten|setzen|hocken)\b)"
)
_AM_RAND: Final = (
    r"(?:zum|an den|bis zum|bis an den|auf den|am|auf dem)(?: (?:oberen|obersten|ausseren))? rand"
    r"(?! (?:vom|des|der|von|im) )"
)
_INS_WASSER: Final = (
    r"(?:ins wasser|in den (?:bach|fluss|wildbach)|in die (?:gumpe|stromung)|ins (?:becken"
    r"|bachbett)"
    r"|im (?:wasser|bach|fluss|bachbett) stehen)"
)
# Spanish.
_PUEDO: Final = (
    r"(?:puedo|podemos|podria|podriamos|se puede|puede uno|quiero|queremos|me dejan"
    r"|(?:es seguro|esta permitido|es posible|hasta donde|cuanto|como de cerca|que tan cerca))"
)
_IR: Final = (
    r"(?:ir|irme|subir\w*|llegar|poner\w*|acercar\w*|estar|sentar\w*|parar\w*|asomar\w*|caminar"
    r"|andar|pisar|pasar|colocar\w*|quedar\w*|cerca|avanzar|disparar)"
)
_BORDE: Final = (
    r"(?:al|del|hasta el|en el|sobre el|por el|hacia el|a la|en la|hasta la|sobre la)"
    r" (?:mismo |propio )?(?:borde|filo|labio|precipicio|abismo|cornisa|despenadero|acantilado)"
)
_AL_AGUA: Final = (
    r"(?:puedo|podemos|podria|podriamos|se puede|pueden?|dejo que)"
    r"(?: (?!no\b|nunca\b)[^ ,.]+){0,3}? (?:meter(?:me|te|se|nos)|entrar|banar(?:me|se|nos))"
    r"(?: [^ ,.]+){0,2}? (?:al|en el|en la|dentro del) (?:agua|rio|arroyo|poza|corriente)"
)
# English beside what the wordings know.
_BRINK: Final = r"(?:rim|edge|lip|brink|ledge|drop ?off|cliff ?top|crest)"
_OK: Final = r"(?:ok|okay|safe|allowed|alright|all right|fine|permitted|off limits)"

_FRAME: Final = r"(?! (?:of (?:the|my|a) (?:frame|picture|photo|image|shot|path|trail|pool|water)))"
#: Settings for there.
_THERE: Final = (
    r"(?:settings?|lens|shutter|exposure|iso|aperture|shoot|shooting|shots?|photos?|pictures?"
    r"|photograph|f \d+|view)(?: \w+)? (?:from|on|at) (?:the |that )?(?:very |actual )?"
    rf"(?:lip|brink|precipice|edge of the (?:fall|falls|drop|cliff))\b{_FRAME}"
)
_DORT: Final = (
    r"(?<!im )(?<!ins )(?:einstellung\w*|werte|blende|zeit|objektiv|fotos?|bild|aufnahme"
    r"|fotografier\w*)(?: \w+)?"
    r" (?:von|an|auf) der (?:kante|abbruchkante|fallkante|felskante|klippe)"
)
_ALLI: Final = (
    r"(?:ajustes?|foto|fotos|toma|disparar|objetivo|velocidad)(?: \w+)? (?:desde|en"
    r"|sobre) (?:el|la)"
    r" (?:labio|filo|precipicio|borde de la cascada|borde del (?:salto|precipicio))"
)
#: Somebody who is there.
_KIN: Final = (
    r"(?:kids?|child|children|son|daughter|friends?|wife|husband|brother|sister|mum|mom|dad|partner"
    r"|he|she|they|somebody|someone|people)"
)
_STANDS: Final = (
    rf"{_KIN} (?:is|are|hes|shes|stands?|sits?|plays?|walks?|runs?|went|goes)(?: (?!not\b"
    rf"|never\b)\w+)?"
    rf" (?:near|at|on|by|close to|over|to) the (?:very )?(?:edge|lip|brink|drop ?off"
    rf"|cliff edge)\b{_FRAME}"
)
_STEHT: Final = (
    r"(?:kind|kinder|sohn|tochter|freund\w*|frau|mann|bruder|schwester|er|sie|jemand|leute)"
    r" (?:ist|sind|steht|stehen|sitzt|spielt|spielen|turnt|lauft|geht)"
    rf"(?: (?!nicht\b)[^ ,.]+){{0,2}}? (?:an|auf|am|bei) {_KANTE}"
)
_ESTA: Final = (
    r"(?:hij\w|hijos|nin\w|ninos|amig\w|mujer|marido|hermano|hermana|el|ella|alguien|gente)"
    r" (?:esta|estan|juega|juegan|camina|se acerca|se asoma|se sento)(?: (?!no\b)[^ ,.]+)?"
    r" (?:cerca del|al|en el|junto al|sobre el) (?:borde|precipicio|labio|filo)"
    r"(?! (?:de la (?:foto|imagen)|del encuadre))"
)

_ASKED: Final = tuple(
    (kind, re.compile(rf"(?<!\w)(?:{pattern})(?!\w)"))
    for kind, pattern in (
        (DangerKind.LIP, rf"{_DARF}{_GAP} {_AN} {_KANTE}"),
        (
            DangerKind.LIP,
            (
                rf"wie (?:nah|nahe|weit|dicht) (?:darf|kann|durfen|konnen|soll) (?:ich|wir"
                rf"|man){_GAP}"
                rf" {_AN} {_KANTE}"
            ),
        ),
        (DangerKind.LIP, rf"{_RAND}{_DARF}{_GAP} {_AM_RAND}"),
        (DangerKind.LIP, rf"ist {_KANTE} (?:erlaubt|ok|okay|sicher|begehbar|betretbar|frei)"),
        (DangerKind.LIP, rf"{_PUEDO}{_GAP} {_IR}{_GAP} {_BORDE}"),
        (DangerKind.LIP, rf"cerca {_BORDE}{_GAP} (?:puedo|podemos|se puede)"),
        (
            DangerKind.LIP,
            (
                rf"(?:is|are) (?:the |that |this )?{_BRINK}(?: of the \w+)? {_OK}"
                r"(?: to (?:stand|shoot|sit|go|walk)(?: \w+)?)?"
            ),
        ),
        (DangerKind.WADING, rf"{_DARF}{_GAP} {_INS_WASSER}"),
        (DangerKind.WADING, _AL_AGUA),
        (DangerKind.LIP, rf"{_STANDS}|{_STEHT}|{_ESTA}"),
    )
)
_SETTINGS_THERE: Final = re.compile(rf"(?<!\w)(?:{_THERE}|{_DORT}|{_ALLI})(?!\w)")


def leave_asked(text: str) -> DangerKind | None:
    """The place where nobody stands for which a message asks leave, or where it tells of somebody.

    Args:
        text: as typed or dictated, in any of Linn's languages.

    Returns:
        The kind of place; None where no leave is asked, or where the picture is meant.
    """
    said = folded(text)
    if _SETTINGS_THERE.search(said):
        return DangerKind.LIP
    clauses = said.split(" . ")
    return next(
        (
            kind
            for kind, pattern in _ASKED
            for clause in clauses
            if pattern.search(clause) and not _PICTURE.search(clause)
        ),
        None,
    )
