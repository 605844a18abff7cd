"""English words for a filter of which nobody knows the strength, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_unknown.filter": r"filters?|nds?|clip ?on|glass",
    "filter_unknown.unknown": (
        r"(?:dont know|do not know|no idea|idk|not sure|no clue)(?: \w+){0,4}"
        r" (?:number|strength|strong|dark|stops|density)"
        r"|(?:what|which) (?:number|strength|density)(?: \w+){0,2} (?:filter|it|nd)"
        r"|how (?:strong|dark|many stops)(?: is)? (?:it|that|this|(?:the|my) (?:filter|nd|glass))"
        r"|(?:nothing|no number|no markings?|not) (?:is |s )?(?:written|printed|marked|on it)"
    ),
    "filter_unknown.asks": (
        r"how (?:do|can|could|to|would|should|strong|dark|many)|find out"
        r"|find that out|work (?:it )?out|tell how|measure|what number|which number|idk|no idea"
        r"|dont know"
    ),
    "filter_unknown.dark": (
        r"(?:dark|black|clip ?on|cheap|screw ?on)(?: \w+){0,2} (?:filters?"
        r"|glass|thing|one|nd)"
    ),
    "filter_unknown.bring": (
        r"(?:do|should|shall|must|can) (?:i|we) (?:also |even )?(?:bring"
        r"|take|pack|carry)(?! first)|worth (?:bringing|taking|packing)|(?:bring|take|pack) it\b"
    ),
}
