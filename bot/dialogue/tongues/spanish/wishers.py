"""Spanish words: somebody else who wishes a look of the water, as the message names them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "wishers.who": (
        r"(?:mi|nuestr[oa]|el|la|una?) (?:[^\W\d]+ )?(?!l[oa]s?\b)[^\W\d]+"
        r"(?= (?:l[oa]s? )?(?:quiere|prefiere|desea|busca)\b)"
    ),
    # Nothing but a wish of the water's look, without accents: no place to be in.
    "wishers.whole": (
        r"(?:(?:mi|nuestr[oa]|el|la|una?) (?:\w+ )?\w+|ella|el) (?:l[oa]s? )?(?:quiere|prefiere"
        r"|desea|busca)"
        r"(?: (?:el|la|las|agua|cascada|gotas|gotitas|foto|que|se vea|quede|salga|mas|bien|como"
        r"|toda|todo|asi|lo|los|muy|super))*"
        r" (?:congelad[oa]s?|quiet[oa]s?|sedos[oa]s?|suaves?|brumos[oa]|nitid[oa]s?|cremos[oa])"
    ),
}
