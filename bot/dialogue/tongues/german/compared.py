"""German words by which two values are weighed against each other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Between two values of which nothing is told: they are weighed.
    "compared.against": r"oder|gegen(?:über|uber|ueber)?|statt|anstatt|anstelle von",
    # Between two values where another word says that they are weighed.
    "compared.joins": r"mit|und|zu|als|bis",
    # Words that say so.
    "compared.weighs": r"vergl[ei]+ch\w*|unterschied\w*|unterscheid\w*|besser|welche[rsn]?",
    # How a message begins that tells: nothing is asked by the values in it.
    "compared.tells": r"ich|es|wir|hatte|hab['’]?s?|habe|war|mein\w*",
    # What stands for the settings of now: "vergleich das mit f/16", glossed "the".
    "compared.now": r"the|das|dies|es|die|meins|deins",
    "compared.compare": r"vergl[ei]+ch\w*",
}
