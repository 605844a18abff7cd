"""German words for a filter of which nobody knows the strength, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_unknown.filter": r"\w*filter\w*|nd|aufsteck\w*|clip\w*",
    "filter_unknown.unknown": (
        r"(?:weiss|keine ahnung|kein plan)(?: \w+){0,5} (?:stark|zahl|nummer|stufen|blenden|dunkel"
        r"|dichte)|welche (?:zahl|nummer|starke|staerke)(?: \w+){0,3} (?:filter|er)"
        r"|wie (?:stark|dunkel)(?: ist| is)? (?:der|er|mein|dieser)"
        r"|(?:steht|stehen|is|ist) (?:nix|nichts|keine (?:zahl|nummer)) (?:drauf|dran)"
        r"|(?:nix|nichts|keine zahl|keine nummer) (?:drauf|dran|draufgestanden)"
    ),
    "filter_unknown.asks": (
        r"wie|find\w*|rauskrieg\w*|raus ?find\w*|herausfind\w*|mess\w*"
        r"|welche|keine ahnung|weiss nicht|weiss ned|weiss net"
    ),
    "filter_unknown.dark": (
        r"(?:dunkle\w*|schwarze\w*|aufsteck\w*|clip\w*"
        r"|billig\w*)(?: \w+){0,2}? ?(?:filter\w*|glas|ding)"
    ),
    "filter_unknown.bring": (
        r"(?:soll|muss|kann|nehm) (?:ich|i|wir)(?: \w+){0,4} (?:mit"
        r"|mitnehmen|einpacken)|mitnehmen|einpacken"
    ),
}
