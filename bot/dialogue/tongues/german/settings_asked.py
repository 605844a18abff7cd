"""German words by which somebody asks outright for settings, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SETTINGS: Final = r"(?:einstellung(?:en)?|werte|zeit|belichtung(?:szeit)?|zahlen?|verschlusszeit)"

WORDS: Final[Mapping[str, str]] = {
    # Anywhere in a message.
    "settings_asked.outright": (
        r"was (?:stell\w*|soll) (?:ich|i|ma|man) (?:\w+ ){0,3}?(?:ein|einstellen)"
        r"|was muss ich (?:\w+ ){0,2}?einstellen|(?:welche|was fur) (?:einstellung(?:en)?|werte)"
        rf"|(?:gib|sag|nenn) (?:mir|ma) (?:\w+ ){{0,4}}?{_SETTINGS}"
        r"|(?:welche|was fur ne|was fur eine) (?:zeit|blende|belichtung\w*)"
        r"(?: und (?:welche )?(?:zeit|blende|iso|belichtung\w*))* (?:stell|nehm|soll|brauch)\w*"
    ),
    # As the last words of it.
    "settings_asked.at_end": (
        rf"welche {_SETTINGS}(?: (?:dann|jetzt|denn|nun))?|{_SETTINGS} bitte"
    ),
    # As a sentence of its own, with a question's mark.
    "settings_asked.alone": rf"(?:und |also )?(?:die )?{_SETTINGS}",
}
