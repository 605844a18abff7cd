"""English words of frames that came out dull or blue, and are to be mended at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The picture as a whole; sky, rock and light may be so.
    "home_edits.dull": (
        r"(?:gr[ae]y(?:ish)?|dull|flat|lifeless|drab|hazy|murky|washed out"
        r"|no (?:punch|contrast|pop)|without (?:punch|contrast))\b"
        r"(?! (?:light|sky|skies|rocks?|stones?|cards?|day|clouds?|weather"
        r"|filter|water ?fall|gravel))"
    ),
    "home_edits.blue": r"blue(?:ish)?\b(?! (?:sky|skies|hour|jacket|light|channel))",
    # Who wants to do something about it.
    "home_edits.wants": (
        r"fix|edit\w*|rescue|save|improve|process\w*|sliders?"
        r"|bring (?:it|them|that) (?:up|back|out)"
        r"|where (?:do|should) i (?:even )?(?:start|begin)"
        r"|what (?:do|can|should) (?:i|we) (?:do|change)"
        r"|how (?:do|can|would) (?:i|we)|can (?:i|we|that|it)"
    ),
}
