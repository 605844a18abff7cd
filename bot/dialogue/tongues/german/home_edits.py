"""German words of frames that came out dull or blue, and are to be mended at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The picture as a whole; sky, rock and light may be so.
    "home_edits.dull": (
        r"(?:grau(?:stichig)?|flau|matt|stumpf|leblos|trüb|fad|kontrastlos|ausgewaschen"
        r"|kein(?:en)? (?:kontrast|pepp|punch)|ohne (?:kontrast|pepp))\b"
        r"(?! (?:licht|himmel|fels\w*|stein\w*|karte\w*|tag))"
    ),
    "home_edits.blue": r"blau(?:stichig)?|blaustich",
    # Who wants to do something about it.
    "home_edits.wants": (
        r"retten|bearbeit\w*|aufpeppen|verbesser\w*|korrigier\w*|regler|hinkriegen|beheben|ändern"
        r"|wo fang\w* (?:ich|wir)|was (?:kann|soll|mach\w*|tu\w*) (?:ich|man|wir)"
        r"|wie (?:krieg\w*|bekomm\w*|mach\w*) (?:ich|man|wir)|kann (?:ich|man)"
    ),
}
