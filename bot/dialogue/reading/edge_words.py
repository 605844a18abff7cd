"""Words for what stands at the edges of a frame, and where."""

from __future__ import annotations

from typing import Final

COVER: Final = r"(?:leaves|leaf|branches|trees?|canopy|foliage|rock|moss|ferns?|bushes|green)"
#: What comes in from a side.
THING: Final = (
    r"(?:branch|twig|trunk|stick|log|fern|tree|root|bush|grass|leaf|bough|limb|frond|stalk|stem"
    r"|holly|ivy|bramble|sapling|shrub|weed|reed|vine|nettle)"
)
THINGS: Final = rf"{THING}(?:e?s)?"
#: How the lip stands at the edge of the frame, and names of that.
TOUCHES: Final = r"(?:just )?(?:touch|kiss|meet|hit|graz|brush|reach)(?:es|ing|ed|s)?"
FRAME: Final = r"(?:the )?(?:very )?(?:top|edge|border|frame|picture|photo|image|shot)"
