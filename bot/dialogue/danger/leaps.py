"""Who wishes to jump, dive or slide into the water from a height, or has friends who do."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

_WISH: Final = whole_words("leaps.wish")
_LEAP: Final = whole_words("leaps.leap")
_NOUN: Final = whole_words("leaps.noun")
#: "Nobody jumps off it"; in the clause up to the leap.
_DENIED: Final = whole_words("leaps.denied")
#: Who goes in after somebody plays no game, and water and tripods slide, too.
_ELSE: Final = whole_words("leaps.after", "leaps.else", "standing.thing")
_CLAUSES: Final = re.compile(rf" [.,] | {in_any('leaps.joint')} ")


def wishes_to_leap(text: str) -> bool:
    """Whether somebody is about to jump in from a height, wants to, or asks leave.

    Args:
        text: as typed, in any of Linn's languages; who did it already is meant elsewhere.
    """
    return any(map(_wishes, _CLAUSES.split(folded(text))))


def _wishes(clause: str) -> bool:
    leap = _NOUN.search(clause) or (_LEAP.search(clause) if _WISH.search(clause) else None)
    if leap is None or _ELSE.search(clause):
        return False
    return _DENIED.search(clause[: leap.end()]) is None
