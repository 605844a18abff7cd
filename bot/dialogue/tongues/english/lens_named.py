"""English words that choose a lens of the bag by its number."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What stands before the number of a lens that is taken.
    "lens_named.taken": (
        r"(?:go(?:ing)? (?:with|for)|went (?:with|for)|stick(?:ing)? (?:with|to)|stuck with|using"
        r"|take|taking|took|shoot(?:ing)?(?: (?:it|this|that|all|everything))? (?:on|with)"
        r"|shot(?: (?:it|this|that|all|everything))? (?:on|with)|put|have|got|use|grab(?:bed)?"
        r"|i'm on|im on|we're on|switch(?:ed|ing)? to|chang(?:e|ed|ing) to|swap(?:ped|ping)? to"
        r"|now(?= (?:the|my))|back to|on|with)"
    ),
    # What stands before the lens that is on from now.
    "lens_named.put_on": (
        r"(?:switch(?:ed|ing)? (?:over |back )?to|chang(?:e|ed|ing) (?:over |back )?to"
        r"|swap(?:ped|ping)? (?:over |back )?to|back (?:on|to|with)|now (?:on|with|using|at|it's)"
        r"|i'm (?:now )?(?:on|at)|im (?:now )?on|i am (?:now )?on|put (?:on )?|mounted|set"
        r"|going to)"
    ),
    "lens_named.the": r"the|my|that|this",
    # What stands behind the number of a lens that is enough.
    "lens_named.enough": (
        r"(?:does|will do|would do|it is|fits|works|is (?:on|fine|enough|plenty|the one)"
        r"|for (?:this|that|it|me|now)|then)"
    ),
    "lens_named.not": r"(?:not|never|no|without|if|would|could|instead of|rather than|don't|won't)",
}
