"""What people tell while an emergency is held: they go, they found a way, a lead, louder water."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded


class Move(Enum):
    """What a message tells of it, the gravest first."""

    #: The water roars more, or has changed: a sign of a flood.
    LOUDER = "louder"
    #: Where somebody who is missing may be.
    LEAD = "lead"
    #: A track, a road or a bridge that may lead out.
    WAY = "way"
    #: They are on their way up and out.
    GOING = "going"


_WATER: Final = r"(?:water|creek|stream|river|fall|falls|it|wasser|bach|fluss|fall|agua|rio|arroyo)"
_PLACE: Final = (
    r"(?:car|cars|van|bus|hut|toilet|toilets|loo|parking|car park|trailhead|shelter|path|bridge"
    r"|viewpoint|hotel|auto|wagen|parkplatz|hutte|klo|toilette|brucke|weg|coche|carro|refugio|bano"
    r"|aparcamiento|puente|sendero|mirador)"
)
_WAYS: Final = (
    r"(?:track|road|lane|path|trail|bridge|footbridge|farm track|forstweg|feldweg|strasse|weg|pfad"
    r"|steg|brucke|pista|carretera|camino|sendero|puente)"
)
_MOVES: Final = {
    Move.LOUDER: (
        rf"\b{_WATER}\b.*\b(?:louder|lauter|mas fuerte)\b|\b(?:louder|lauter)\b.*\b{_WATER}\b"
        r"|\b(?:new roar|roars?|roaring|rauscht starker|ruge)\b"
    ),
    Move.LEAD: (
        r"\b(?:he|she|they|her|his|my|buddy|sie|er|freund\w*|ella|el|amig\w*|dijo|fue|iba)\b.*?"
        r"\b(?:went|gone|goes|walked|wanted|said|says|seen|saw|think|maybe|probably|perhaps|ging"
        r"|gegangen|wollte|sagt|sagte|gesehen|vielleicht|wohl|iba|queria|dice|vio|vieron|fue"
        rf"|quizas?|seguramente)\b.*\b{_PLACE}\b"
    ),
    Move.WAY: (
        rf"\b(?:there is|theres|there are|i see|we see|i can see|found|up here|above|leads|goes"
        rf"|es gibt|da ist|sehe|sehen|gefunden|oben|fuhrt|geht|hay|veo|vemos|arriba|lleva|va)\b"
        rf".*\b{_WAYS}\b"
    ),
    Move.GOING: (
        r"\b(?:going|heading|walking|climbing|moving|running|on (?:my|our|the) way)\b.*"
        r"\b(?:up|out|away|higher|back|shelter|car|cars|hut|slope|path|trail|road|safe)\b"
        r"|\b(?:leaving|we left|packed up|on our way|off we go)\b"
        r"|\b(?:geh\w*|lauf\w*|steig\w*|klett\w*|sind unterwegs)\b.*"
        r"\b(?:hoch|rauf|raus|weg|hohe\w*|hutte|auto|oben|zuruck)\b"
        r"|\b(?:subo|subimos|subiendo|vamos|voy|salimos|saliendo|nos vamos|de camino)\b"
    ),
}
_FOUND: Final = {move: re.compile(pattern) for move, pattern in _MOVES.items()}
#: What turns a move round: nobody goes, or the way leads through the water.
_NOT: Final = re.compile(
    r"\b(?:not|cant|cannot|wont|dont|no|never|nicht|kein\w*|nunca|tampoco|if|wenn|si|should|can"
    r"|shall|soll\w*|kann|debo|puedo|across|cross|wade|through|other side|ford|stuck|trapped|durch"
    r"|furt|cruz\w*|vad\w*|atrapad\w*)\b"
)
#: What one leaves behind: what comes out of the gorge is not in it.
_LEFT: Final = re.compile(
    r"\b(?:out of|away from|off|above|clear of|(?:raus|heraus|weg) (?:aus|von|vom)|aus|oberhalb"
    r"|fuera de|lejos de|(?:salimos|saliendo|salgo) de)(?: (?:the|this|that|der|dem|la|el|here))*"
    r" \w+"
)
#: Where nobody goes in a flood or a storm, and what tells of somebody hurt: no move is right then.
_TO_DANGER: Final = re.compile(
    r"\b(?:water|creek|streams?|river|falls?|gorge|canyon|bed|bank|pool|rocks?|ridge|crest|summit"
    r"|tree|cliff|wall|lip|edge|swim\w*|fell|fallen|limp\w*|hurt|injured|bach\w*|fluss\w*|wasser|schlucht"
    r"|klamm|ufer|kante|grat|gipfel|baum|wand|gesturzt|gefallen|verletzt|hinkt|agua|rio|arroyo|cauce"
    r"|cascada|garganta|barranco|orilla|borde|cresta|cumbre|arbol|herid\w*|cojea|cayo)\b"
)
#: What nobody goes back for, and who is not with them.
_FOR_GEAR: Final = re.compile(
    r"\b(?:tripod|camera|lens|bags?|backpack|gear|filters?|batter\w*|frames?|shots?|pictures?"
    r"|one last|running out|(?:he|she|they|who) (?:went|goes|is|stay\w*)|stativ|kamera|rucksack"
    r"|tasche|akku|ausrustung|bild|tripode|camara|mochila|bolsa|foto|equipo"
    r"|bateria)\b"
)
#: A way that goes down leads to the water.
_DOWN: Final = re.compile(r"\b(?:down|along|runter|unten|entlang|abajo|bajo|baja)\b")
_QUIETER: Final = re.compile(
    r"\b(?:not|no|isnt|kein\w*|nicht) (?:\w+ )?(?:louder|lauter|mas fuerte)\b"
)


def move_of(text: str) -> Move | None:
    """What a message in a held emergency tells that people do or see; None for anything else.

    Args:
        text: as typed, in any of Linn's languages. A question tells of no move but louder water.
    """
    said = folded(text)
    if _FOUND[Move.LOUDER].search(said) and not _QUIETER.search(said):
        return Move.LOUDER
    if "?" in text or _TO_DANGER.search(_LEFT.sub(" ", said)):
        return None
    if _FOUND[Move.LEAD].search(said):
        return Move.LEAD
    if _NOT.search(said) or _FOR_GEAR.search(said):
        return None
    if _FOUND[Move.WAY].search(said) and not _DOWN.search(said):
        return Move.WAY
    return Move.GOING if _FOUND[Move.GOING].search(said) else None
