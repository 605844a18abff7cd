"""German words: a time that is told by how many times the last one it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_factor.twice": (
        r"doppelt so lange?|(?:die )?doppelte (?:zeit|belichtungszeit|belichtung)"
        r"|zeit (?:ver)?doppel[nt]"
        r"|verdopp(?:le|el|elt) (?:ich )?(?:die )?(?:zeit|belichtung)"
    ),
    "time_factor.half": (
        r"halb so lange?|(?:die )?halbe (?:zeit|belichtungszeit|belichtung)|zeit halbier\w+"
        r"|halbier\w* (?:ich )?(?:die )?(?:zeit|belichtung)"
    ),
    "time_factor.only": (
        r"(?:ok|gut|also|dann|ich|was wenn|was passiert wenn|wenn|falls|angenommen|nehm\w*"
        r"|mach\w*|probier\w*|mit|jetzt|und|mal|bitte|die|eben"
        r"|halt|so|ja"
        r"|stell\w*|hab\w*|genommen|gemacht|noch|einmal|belichte)"
    ),
}
