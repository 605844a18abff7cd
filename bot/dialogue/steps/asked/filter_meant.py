"""The polariser as what is asked about where a clause only says "it": "what will it cost me?"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from bot.dialogue.reading.inventory import ND, POLARISER
from bot.dialogue.tongues import in_any, whole_words

_POLARISER: Final = re.compile(rf"\b(?:{POLARISER})\b")
_OTHER: Final = re.compile(rf"\b(?:{ND})\b|\bnd ?\d|\bfilters?\b")
_HOW_MUCH: Final = whole_words("time_sum.how_much")
_IT: Final = re.compile(rf"\b{in_any('filter_meant.it')}\b")


def named(clauses: Sequence[str]) -> list[str]:
    """The clauses of a message, with the polariser in the place of "it" where its cost is asked.

    Args:
        clauses: in English, in the message's order.
    """
    found: list[str] = []
    spoken_of = False
    for clause in clauses:
        said = clause.casefold()
        if _POLARISER.search(said):
            spoken_of = True
        elif _OTHER.search(said):
            spoken_of = False
        cost = spoken_of and said.rstrip().endswith("?") and _HOW_MUCH.search(said)
        named_here = _POLARISER.search(said) is not None
        it = cost and not named_here
        found.append(_IT.sub("the polariser", said, count=1) if it else clause)
    return found
