"""English words: somebody is asleep, sleepy or confused, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "drowsy.sign": (
        r"asleep|sleepy|drowsy|dozing|passed out|unconscious|(?:wont|doesnt|not) wak(?:e|ing)"
        r"|cant wake (?:him|her|them)(?: up)?|confused|mumbl\w+|slur\w*|babbl\w+|falling asleep"
    ),
    # Before a sign, that it is none.
    "drowsy.denied": r"not|no|isnt|arent|wasnt|never|nobody|neither|longer",
}
