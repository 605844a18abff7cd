"""Densities of ND filters that are told without their name: "I have a 0.6 and a 1.2"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity

#: Densities that filters are sold under (common practice), and those of them that no lens has for
#: its widest aperture.
_DENSITIES: Final = frozenset(
    {"0.3", "0.6", "0.9", "1.2", "1.5", "1.8", "2.1", "2.4", "2.7", "3.0"}
)
_NO_APERTURES: Final = frozenset({"0.3", "0.6", "0.9", "1.5", "2.1", "2.4", "2.7", "3.0"})
_FILTER_SAYS: Final = re.compile(
    r"\bfilter'?s?\b[^.;,]{0,16}\b(?:says|reads|is|marked|bears|shows)(?: an?)? ?$"
)
_OWNED_BARE: Final = re.compile(
    r"\b(?:own|have|got|bought|brought|carry)(?: only| just| both)? (?:an?|the|my) ?$"
)
_AND_ANOTHER: Final = re.compile(r" ?(?:,|and|&|\+|plus)(?: an?| the| my)? ?")


def bare_densities(draft: Draft) -> list[Quantity]:
    """What a filter says of itself, and pairs of which one is no aperture of a lens.

    Args:
        draft: of the message.
    """
    found: list[Quantity] = []
    for quantity in draft.free(""):
        earlier = draft.neighbour(quantity, -1)
        if quantity.text.strip() not in _DENSITIES:
            continue
        if _FILTER_SAYS.search(draft.before(quantity)):
            found.append(quantity)
        elif (
            earlier is not None
            and earlier.text.strip() in _DENSITIES
            and {earlier.text.strip(), quantity.text.strip()} & _NO_APERTURES
            and _OWNED_BARE.search(draft.before(earlier))
            and _AND_ANOTHER.fullmatch(draft.before(quantity))
        ):
            found += [earlier, quantity]
    return found
