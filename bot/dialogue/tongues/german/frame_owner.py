"""German words of whose a frame is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FREUND: Final = (
    r"(?:freund\w*|kolleg\w*|frau|mann|bruder|schwester|kumpel|sohn|tochter|vater|mutter|lehrer\w*"
    r"|schüler\w*|teilnehmer\w*|begleit\w*|nachbar\w*|jemand\w*(?: ander\w+)?|and(?:e)?re[mnrs]?)"
)
_BILD: Final = r"(?:bild|foto|aufnahme|versuch)\w*"

WORDS: Final[Mapping[str, str]] = {
    "frame_owner.theirs": (
        rf"von (?:mein\w+|dein\w+|ein\w+|der|dem|unser\w+)? ?{_FREUND}|(?:sein|ihr)e? {_BILD}"
        rf"|(?:nicht|ist nicht|war nicht) (?:von mir|mein(?:e[snr]?|s)?(?: {_BILD})?)(?!\w)"
        rf"|kein\w* {_BILD} von mir"
        r"|aus (?:dem|einem|der) (?:netz|internet|buch|reiseführer|kalender|zeitschrift)"
    ),
    "frame_owner.of_a_frame": rf"{_BILD}|von mir|netz|buch",
    # Kit that is lent is used all the same.
    "frame_owner.lent": r"geliehen\w*|objektiv|kamera|stativ",
    "frame_owner.lent_from": r"von",
    # The frame before, not one to come.
    "frame_owner.the_last": r"das|dies\w*|es war|nicht",
}
