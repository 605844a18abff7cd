"""What people tell while an emergency is held: they go, they found a way, a lead, louder water."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words


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


_WATER: Final = rf"\b{in_any('moves.water')}\b"
_LOUDER: Final = rf"\b{in_any('moves.louder')}\b"
_MOVES: Final = {
    Move.LOUDER: rf"{_WATER}.*{_LOUDER}|{_LOUDER}.*{_WATER}|\b{in_any('moves.roar')}\b",
    Move.LEAD: (
        rf"\b{in_any('moves.who')}\b.*?\b{in_any('moves.went_or_said')}\b"
        rf".*\b{in_any('moves.place')}\b"
    ),
    Move.WAY: rf"\b{in_any('moves.found')}\b.*\b{in_any('moves.way')}\b",
    Move.GOING: rf"\b{in_any('moves.going')}\b",
}
_FOUND: Final = {move: re.compile(pattern) for move, pattern in _MOVES.items()}
#: What turns a move round: nobody goes, or the way leads through the water.
_NOT: Final = whole_words("moves.turned_round")
#: What one leaves behind: what comes out of the gorge is not in it.
_LEFT: Final = re.compile(rf"\b{in_any('moves.out_of')}(?: {in_any('moves.the')})* \w+")
#: Where nobody goes in a flood or a storm, and what tells of somebody hurt: no move is right then.
_TO_DANGER: Final = whole_words("moves.to_danger")
#: What nobody goes back for, and who is not with them.
_FOR_GEAR: Final = whole_words("moves.for_gear")
#: A way that goes down leads to the water.
_DOWN: Final = whole_words("moves.down")
_QUIETER: Final = re.compile(rf"\b{in_any('moves.not')} (?:\w+ )?{_LOUDER}")


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
