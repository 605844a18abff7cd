"""Where people are: out of a shelter, at a place that is planned, or at one that they deny."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.rules import PERSON
from bot.dialogue.folding import folded

#: Words of who left a shelter, and of what was struck: a house, a car and the like alone are one.
_OUTSIDE: Final = re.compile(
    r"\b(?:water|falls?|creek|stream|river|lake|gorge|canyon|out|outside|back|tripod|trees?|pine|oak"
    r"|forest|woods?|ridge|summit|peak|path|trail|meadow|field|walk\w*|hik\w*|climb\w*|left|hit"
    r"|struck|(?:on|under|at|near|by|beside) (?:the|an?|that|this) (?!(?:\w+ )?(?:car|van|bus|hut"
    r"|house|shelter|cafe|hotel|porch|roof|table|window|radio)\b)\w+"
    r"|wasser|bach|fluss|see|schlucht|draussen|zuruck|baum|wald|wiese|grat|gipfel|berg|weg|pfad"
    r"|geh\w*|lauf\w*|getroffen|eingeschlagen|agua|cascada|rio|arroyo|lago|garganta|fuera|arbol"
    r"|bosque|prado|cresta|cumbre|montana|camino|sendero|vamos|camin\w*|alcanz\w*)\b"
)
#: Words of who is at the place already, whatever is planned.
_THERE: Final = re.compile(
    r"\b(?:now|already|where i am|(?:im|i am|were|we are|hes|shes|theyre|they are|\w+ is)"
    r" (?:(?:here|already|up|just|still) )*(?:on|at|here|there|standing|under|behind|above|below"
    r"|climbing|playing|sitting|wading)|(?:my|our|he|she|they) (?:\w+ )?(?:stands?|climbs|sits)"
    r"|ich stehe|steht|(?:wir|sie) stehen|ich bin|wir sind|ist schon|klettert|sitzt|gerade|jetzt"
    r"|estoy|estamos|estan|esta (?:arriba|alli|ahi|en)|ahora|ya)\b"
)

#: Whom a "no" leaves out: "only my wife", "not me, my son".
_SOMEBODY: Final = (
    rf"(?:{PERSON}|(?:the )?(?:two|three|both) of us"
    r"|frau|mann|sohn|tochter|kind|kinder|kleine\w*|bruder|schwester|freund\w*|vater|mutter|papa"
    r"|opa|oma|gruppe|leute|ich(?= [.,]|$)|wir(?= [.,]|$)|wir (?:zwei|beide)"
    r"|mujer|marido|hij[oa]s?|nin[oa]s?|herman[oa]s?|amig[oa]s?|padre|madre|abuel[oa]|yo|nosotr[oa]s"
    r"|nosotros dos)"
)
_LEFT_OUT: Final = (
    r"(?:only|just|except|apart from|but|not me|nur|bloss|ausser|bis auf|nicht ich|aber"
    r"|solo|salvo|excepto|menos|yo no|pero)(?: ,)?"
    r"(?: (?:the|my|our|me and|tripod and|for|mein\w*|unser\w*|der|die|das|mi|mis|el|la|los|las))*"
)
#: What is said of a place by who is at it: it is dry, and they hold on.
_GOOD_THERE: Final = (
    r"(?:hold(?:ing)? (?:on|tight)|grips?|gripping|(?:being |am |im )careful"
    r"|(?:good|fine|safe|ok|okay|dry|stable|wide|flat|solid)(?: up| out| down)? here"
    r"|(?:its|it is)(?: \w+)? (?:dry|safe|wide|flat|stable|solid)|(?<!stay )(?:up|out) here"
    r"|(?:still|right|sit\w*|stand\w*|back|am|im|are|foot|feet)(?: \w+){0,2} (?:on|at|over|by|near)"
    r" (?:it|the (?:very )?(?:edge|lip|brink|ledge|rim|drop|ice))|(?:foot|feet|legs)(?: \w+)? over"
    r"|on the (?:edge|lip|brink|ledge|ice)"
    r"|steh\w* (?:gut|sicher|fest|stabil)|hier (?:oben|vorn\w*)|passt schon"
    r"|(?:ist|is)(?: \w+)? (?:trocken|breit|stabil)|vorsichtig"
    r"|(?:an|auf) der (?:\w+ )?(?:kante|klippe)|auf dem eis"
    r"|sujet[oa]s?|agarr\w*|esta(?: \w+)? (?:seco|seca|firme)|es (?:ancho|estable)|aqui arriba"
    r"|(?:en el|al) (?:borde|filo)|sobre el hielo|con cuidado)"
)
_DENIED: Final = re.compile(rf"(?<!\w)(?:{_LEFT_OUT} {_SOMEBODY}|{_GOOD_THERE})(?!\w)")


def tells_of_staying(text: str) -> bool:
    """Whether a reply that sounds like "nobody" tells of somebody who is at the place.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _DENIED.search(folded(text)) is not None


def tells_of_outside(text: str) -> bool:
    """Whether a message in a storm may tell of somebody out of shelter, or of a strike.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _OUTSIDE.search(folded(text)) is not None


def tells_of_being_there(text: str) -> bool:
    """Whether a message tells that somebody is at a place now, in spite of what is planned.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _THERE.search(folded(text)) is not None
