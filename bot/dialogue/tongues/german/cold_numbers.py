"""German words of the cold: air and wind, cold water, hands in it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cold_numbers.minus": r"minus",
    "cold_numbers.degrees": r"grad",
    "cold_numbers.below_zero": r"unter null",
    "cold_numbers.km_an_hour": r"stundenkilometer\w*",
    "cold_numbers.knots": r"knoten",
    "cold_numbers.wind": r"boen?|boig",
    "cold_numbers.chill_asked": r"gefuhlt\w*|wie kalt",
    "cold_numbers.water": r"wasser\w*|\w*wasser|bach|fluss",
    # "How long can hands …", "hands in there, how long".
    "cold_numbers.how_long": r"wie lange?|wie viele minuten",
    "cold_numbers.how_long_behind": r"wie lange?",
    "cold_numbers.hands": r"hande?|finger",
    "cold_numbers.cold_water": (
        r"(?:kalte[mns]?|eiskalte[mns]?|eisige[mns]?) (?:wasser|bach|fluss)|(?:wasser|bach) (?:is "
        r"|ist )?(?:kalt|eiskalt)"
    ),
}
