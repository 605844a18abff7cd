"""English words that tell of a picture's edges apart from those that tell of people at an edge."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # Who looks at a picture, and stands nowhere in it.
    "frame_edges.looks": (
        r"i(?:'d| would)? (?:think|guess|see|say|said|mean|meant|have|got|can see)|i've got"
        r"|as i said|it seems to me"
    ),
    # What a body does or has; where one is named, nothing is of the frame.
    "frame_edges.body": (
        r"(?:stand|stood|sit|sat\b|lean(?!s? (?:in|into)\b|ing (?:in|into)\b)|climb|walk|step|crawl"
        r"|kneel|lying|lie\b|jump|balanc|perch|fall (?!touch)|fell\b|slip|slid|go(?:ing)?"
        r" (?:up|out|over|near|close)|went\b|feet\b|foot\b|toes?\b|boots?\b|shoes?\b|hands?\b"
        r"|below me"
        r"|somebody|someone|people|kids?\b|child|son\b|daughter|friend|help\b)"
    ),
    "frame_edges.hangs": r"(?:hang|dangl|cling)",
    "frame_edges.it_hangs": NOTHING,
    # Without anybody named, who is placed there is who writes: "out on the log over the edge".
    "frame_edges.placed": (
        r"(?:(?:out|right|up|down|now|just|still|over|back|here|ok|so) )*(?:on|onto|at|along)"
        r" (?:(?:the|an?|this|that|my|its) )?(?:(?!top)\w+ )?(?:log|trunk|tree|branch|lip|crest"
        r"|edge|ledge|slab|rock|brink|rim)\b"
    ),
}
