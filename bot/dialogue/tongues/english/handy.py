"""English words of worries at the water: shoes, stones, a coat, what caused it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "handy.shoes": r"(?:shoe|sneaker|trainer|sole|boot|welly|wellie|sandal)s?|barefoot",
    "handy.stones": r"(?:stone|rock|boulder|slab)s?|leaves|foliage|moss\w*",
    "handy.beside": (
        r"(?:beside|by|along|next to|near|at|on|at the side of) the (?:\w+ )?(?:water|bank|shore"
        r"|creek|stream|brook|river|beck|pool|edge)"
    ),
    # What lies on stones at a stream.
    "handy.litter": r"leaves|foliage",
    # What tells of a height beside "at the edge": then it is no water's edge.
    "handy.drop": (
        r"lip|brink|drop\w*|cliff\w*|above|top|over|ledges?|down\w*|\w*falls?|chasm|rim|crest"
        r"|railing|look\w*"
    ),
    "handy.coat": r"(?:rain)?coat|jacket|anorak|poncho|dress|jumper|sweater|hat",
    "handy.cause": (
        r"causes?|why|how come|what(?:'?s| is| was) (?:that|it|this|wrong|up|the reason)"
        r"|what went wrong|reason"
    ),
}
