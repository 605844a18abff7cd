"""Spanish words by which two values are weighed against each other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Between two values of which nothing is told: they are weighed.
    "compared.against": r"o|u|frente a|contra|en vez de|en lugar de",
    # Between two values where another word says that they are weighed.
    "compared.joins": r"con|y|que|a",
    # Words that say so.
    "compared.weighs": r"compar\w+|diferencias?|difieren?|mejor|cu[aá]l(?:es)?",
    # How a message begins that tells: nothing is asked by the values in it.
    "compared.tells": r"era|fue|hice|uso|usé|tiro|tiré|saqu[eé]|tengo|mi",
    # What stands for the settings of now: "compáralo con f/16".
    "compared.now": r"eso|esto|lo|ese|este",
    "compared.compare": r"comp[aá]r\w*",
}
