"""German words that choose a lens of the bag by its number, where the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before the number of a lens that is taken.
    "lens_named.taken": (
        r"(?:nehm(?:e|en)?|nimm|bleib(?:e|en)? beim|mit|auf|beim|zum|wechsle (?:auf|zum)|hab(?:e)?)"
    ),
    # What stands before the lens that is on from now.
    "lens_named.put_on": (
        r"(?:(?:wechsle|wechsel|gewechselt|zurück|umgestiegen) (?:auf|at|zum|to)|wieder (?:auf"
        r"|mit|das|dem)"
        r"|again)"
    ),
    "lens_named.the": r"das|dem|mein|meinem|die|der",
    # What stands behind the number of a lens that is enough.
    "lens_named.enough": r"(?:reicht|passt|genügt|ist drauf|drauf|tut's|tuts)",
    "lens_named.not": r"(?:nicht|kein|keine|nie|ohne|wenn|würde|könnte|statt)",
}
