"""English words by which settings are told as what the meter gives, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "metered.gives": (
        r"(?:light ?)?meter(?:s| is| has|ing)?(?: now| just)*(?: gives?| gave| says?"
        r"| said| reads?| shows?| wants?| suggests?)(?: me)?"
        r"|camera(?: now| just)* (?:reads?|meters?)"
        r"|metered(?: it)?(?: at)?|(?:i|it|we) (?:now )?meters?|(?:meter )?reading (?:is|of)"
    ),
}
