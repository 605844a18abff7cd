"""What a message tells of place, light and kit around a question about numbers."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import is_asking
from bot.dialogue.reading import read
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.asked.question_words import topic_named

#: Looks and settings beside a question are of the question.
_SCENE: Final = KIT_SLOTS | frozenset(
    {"fall_height_m", "distance_m", "nearest_m", "farthest_m", "section_height_m"}
    | {"water_speed_mps", "light", "polariser_on", "nd_on_stops"}
)
#: A look that is wished in a clause of its own is no part of the question.
_WISH: Final = re.compile(r"\b(?:i|we)(?:'d)? (?:want|like|love|need|prefer|would like|am after)\b")
_CLAUSE: Final = re.compile(r"(?<=[.!?;:])\s+|,\s+|\n")


def rest_of(around: str) -> str:
    """The clauses that tell of the scene, and those that ask something else in known words.

    Args:
        around: what a message says beside the question, in English.
    """
    return ". ".join(piece for piece in _CLAUSE.split(around) if _counts(piece))


def _counts(piece: str) -> bool:
    told = read(piece)
    if told.known().keys() & _SCENE and not told.unread:
        return True
    if told.look is not None and _WISH.search(piece.casefold()) and not is_asking(piece):
        return True
    return is_asking(piece) and topic_named(piece.casefold()) is not None


def scene_in(told: Facts) -> Facts:
    """The facts of place, light and kit among those of a message."""
    return told.only(told.known().keys() & _SCENE)
