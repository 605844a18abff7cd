"""English words of slick ground beside who writes, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Where a step could go.
    "slick_side.step": (
        r"(?:i|we)(?: (?:can|could|might|may|would|only|just|still|also))+ (?:go|move|step|shift)"
        r"(?: (?:a|bit|little|step|few|some|slightly|further|feet|to|the|my|one|two))*"
        r" (?:left|right|side|sideways|back|over)"
        r"|(?:to|on) (?:the|my) (?:left|right|side)|(?:left|right) of (?:me|us|the tripod)"
    ),
    "slick_side.slick": (
        r"algae|slippery|slimy|slick|greasy|slippy"
        r"|(?:wet|mossy|muddy) (?:ground|stones?|rocks?|slabs?)"
        r"|(?:ground|stones?|rocks?|slabs?|it|its)(?: (?:is|are|gets|get|all|very|quite|there|a|bit"
        r"|really|pretty|turns))* (?:wet|mossy|muddy)"
    ),
    "slick_side.ground": """
        but and though only then there theres is are it its gets get turns the a bit little of all
        very quite really pretty so on too where ground stones stone rocks rock slabs slab algae
        slippery slimy slick greasy slippy wet mossy moss muddy mud green with has have some yes as
        i said well that s""",
}
