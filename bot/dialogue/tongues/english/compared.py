"""English words by which two values are weighed against each other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Between two values of which nothing is told: they are weighed.
    "compared.against": r"or|vs|versus|against|rather than|instead of|over",
    # Between two values where another word says that they are weighed.
    "compared.joins": r"to|and|with|than|from",
    # Words that say so.
    "compared.weighs": (
        r"compar(?:e|ed|es|ing|ison)|differ(?:s|ence|ences|ent)?|better|worse|sharper|softer"
        r"|smoother|brighter|darker|which (?:one|is|of|would|do|should)"
    ),
    # How a message begins that tells: nothing is asked by the values in it.
    "compared.tells": r"i|it|we|took|shot|had|was|my|his|her",
    # What stands for the settings of now: "compare that to f/16".
    "compared.now": (
        r"that|this|it|these|those|them|mine|yours|what i have|the (?:current|last) one"
    ),
    "compared.compare": r"compar(?:e|ed|es|ing)",
}
