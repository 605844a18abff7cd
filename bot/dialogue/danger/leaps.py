"""Who wishes to jump, dive or slide into the water from a height, or has friends who do."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import each_once, in_any, whole_words

_WISH: Final = whole_words("leaps.wish")
_LEAP: Final = whole_words("leaps.leap")
_NOUN: Final = whole_words("leaps.noun")
#: "Nobody jumps off it"; in the clause up to the leap.
_DENIED: Final = whole_words("leaps.denied")
#: Who goes in after somebody plays no game, and water and tripods slide, too.
_ELSE: Final = whole_words("leaps.after", "leaps.else", "standing.thing")
_SMALL: Final = rf"(?:{each_once('leaps.before_wild')} )*"
#: An animal, a leaf or light, of which alone a clause tells: not so "my son and the ducks".
_WILD: Final = re.compile(rf"{_SMALL}(?:{in_any('leaps.caught')} {_SMALL})?{in_any('leaps.wild')} ")
_CLAUSES: Final = re.compile(rf" [.,] | {in_any('leaps.joint')} ")


def wishes_to_leap(text: str) -> bool:
    """Whether somebody is about to jump in from a height, wants to, or asks leave.

    Args:
        text: as typed, in any of Linn's languages; who did it already is meant elsewhere.
    """
    return any(map(_wishes, _CLAUSES.split(folded(text))))


def _wishes(clause: str) -> bool:
    leap = _NOUN.search(clause) or (_LEAP.search(clause) if _WISH.search(clause) else None)
    if leap is None or _ELSE.search(clause) or _WILD.fullmatch(clause[: leap.start()].lstrip()):
        return False
    return _DENIED.search(clause[: leap.end()]) is None
