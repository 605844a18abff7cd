"""Words for a place in a list of frames, in the languages of the dialogue: one place for all."""

from __future__ import annotations

from typing import Final

FIRST: Final = r"first|erste[nmrs]?|primer[oa]?s?"
LAST: Final = r"last|final|letzte[nmrs]?|ultim[oa]s?"
#: From the second on, by the place that they name: in English, and in German and Spanish.
ENGLISH: Final = {2: "second", 3: "third", 4: "fourth", 5: "fifth", 6: "sixth", 7: "seventh"}
FOREIGN: Final = {
    2: "zweite[nmrs]?|segund[oa]",
    3: "dritte[nmrs]?|tercer[oa]?",
    4: "vierte[nmrs]?|cuart[oa]",
    5: "fünfte[nmrs]?|quint[oa]",
    6: "sechste[nmrs]?|sext[oa]",
    7: "siebte[nmrs]?|septim[oa]",
}
