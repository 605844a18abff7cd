"""English words by which is asked what filter is on, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_now.asks": (
        r"(?:is|was) (?:that|it|this) with (?:the |my |a )?(?:\w+ ){0,2}?(?:filters?|nds?"
        r"|stops?|pola\w*|cpl|six|three|ten|one) (?:or|and)"
        r"|(?:is|was) (?:that|it|this) with (?:the |my )?(?:filters?|nd|polari\w+|pola"
        r"|cpl)(?: on)?\b"
        r"|(?:with|which|what) (?:filters?|nds?|glass) (?:is|are|was) (?:that|it|this|on"
        r"|in front)(?! i)"
        r"|(?:with|using) which (?:filters?|nd|glass)"
        r"|(?:with|without) or with(?:out)? (?:the |a )?(?:filters?|nd|polari\w+|pola)"
        r"|does (?:that|it|this) (?:include|count)(?: in)? (?:the |my )?(?:filters?|nd"
        r"|polari\w+|pola)"
    ),
}
