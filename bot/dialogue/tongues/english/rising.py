"""English words: water that is browner or higher than it was."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "rising.water": r"water|stream|creek|river|beck|brook|burn|gh?yll|level|flow|pool",
    "rising.more": (
        r"browner|muddier|murkier|cloudier|higher|deeper|more (?:brown|muddy|murky|cloudy)"
    ),
    "rising.than": (
        r"than (?:before|earlier|at first|at the (?:start|beginning)|this morning"
        r"|(?:it was )?(?:when|as) (?:we|i) (?:first )?(?:got|came|arrived|started|began|set up)"
        r"|(?:it was )?(?:an?|half an|one|two|\w+) (?:hours?|minutes?|min|mins|while) ago"
        r"|(?:it was )?just now|it was (?:before|earlier))"
        r"|since (?:we|i) (?:got|came|arrived|started)"
    ),
    # What takes it back, or only asks or supposes it.
    "rising.denied": (
        r"not|no|isnt|aint|doesnt|hasnt|never|hardly|nor|neither|if|whether|should|would|unless"
        r"|(?:is|was|are|does|did) (?:it|that|the|this)(?= (?:\w+ ){0,2}(?:browner|muddier|murkier"
        r"|cloudier|higher|deeper|more)\b)"
    ),
    "rising.picture": r"screen|histogram|polari[sz]er|pola|cpl|jpe?g|raw|exposure|camera|lens",
}
