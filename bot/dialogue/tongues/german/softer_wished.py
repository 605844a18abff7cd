"""German words of water that is too streaky, or is wished softer, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "softer_wished.streaky": (
        r"(?:zu|arg|viel zu|so|sehr|recht) (?:streifig|strahnig|faserig|fadig|drahtig)"
    ),
    "softer_wished.softer": r"weicher|seidiger|sanfter|geschmeidiger|fliessender",
    # As far as it may go.
    "softer_wished.limit": (
        r"(?:ohne|nicht|kein\w*|aber)(?: \w+){0,5} (?:watte\w*|brei\w*|matsch\w*|nebel|neblig"
        r"|suppe|milch\w*|pudding|zuckerwatte)"
    ),
    "softer_wished.other": (
        r"blatt|blatter|laub|farne?|aste?|fels\w*|steine?|himmel|sterne?|glas|linse|objektiv"
        r"|filter|display|armel|tuch|ecken?|rand|rander"
    ),
}
