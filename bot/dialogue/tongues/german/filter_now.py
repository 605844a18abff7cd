"""German words by which is asked what filter is on, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "filter_now.asks": (
        r"(?:ist|is|war|gilt) das (?:jetzt |nun )?mit (?:dem |den "
        r"|der )?(?:\w+ ){0,2}?(?:\w*filter|nd|\d*er|pol|sechser|dreier)(?: oder| und)?\b"
        r"|mit welche[mn] (?:filter|nd|graufilter)"
        r"|mit oder ohne (?:den |dem )?(?:\w*filter|nd|pol)"
        r"|welcher (?:filter|nd) (?:ist|is) (?:da |jetzt )?(?:drauf|davor)"
    ),
}
