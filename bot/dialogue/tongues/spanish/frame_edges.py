"""Spanish words that tell of a picture's edges apart from those that tell of people at an edge."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Who looks at a picture, and stands nowhere in it.
    "frame_edges.looks": r"(?:yo )?(?:creo|veo|tengo|diría|digo|pienso)(?: que)?",
    # What a body does or has; where one is named, nothing is of the frame.
    "frame_edges.body": (
        r"(?:estoy|estamos|parad[oa]|sentad[oa]|subid[oa]|asomad[oa]|me asom|trep|camin|pis|arrastr"
        r"|arrodill|salt|caí|cay[oó]|resbal|pies?\b|botas?\b|alguien|gente|niñ|hij[oa]|amig|ayuda)"
    ),
    "frame_edges.hangs": r"(?:cuelg|colg)",
    # Where the verb comes first, it is of one thing: "cuelga una rama".
    "frame_edges.it_hangs": r"(?:cuelga|cuelgan)",
    # Without anybody named, who is placed there is who writes.
    "frame_edges.placed": (
        r"(?:(?:ahora|justo|aquí|arriba|ya) )*(?:en|sobre|al) (?:(?:el|la|un|una) )?(?:\w+ )?"
        r"(?:tronco|rama|árbol|labio|filo|borde de la cascada|cornisa|roca)\b"
    ),
}
