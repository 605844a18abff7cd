"""Where people are: out of their shelter in a storm, or already at a place that is planned."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.folding import folded

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
