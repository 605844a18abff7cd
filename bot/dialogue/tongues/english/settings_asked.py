"""English words by which somebody asks outright for settings, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SETTINGS: Final = r"(?:settings?|shutter(?: speed| time)?|exposure(?: time)?|numbers?|time)"

WORDS: Final[Mapping[str, str]] = {
    # Anywhere in a message.
    "settings_asked.outright": (
        r"what (?:do|should|shall|would|must) (?:i|we) (?:set|dial in|put in(?! (?:the|my"
        r"|a|our) (?!camera|dials?|settings?)))(?! up)"
        rf"|(?:give|tell) me (?:just )?(?:a|the|some|one|my|your) (?:\w+ ){{0,2}}?{_SETTINGS}"
        rf"|give me {_SETTINGS}|(?:what|which) (?:settings|shutter(?: speed)?|exposure)(?: time)?"
        r" (?:do|should|shall|would|now|then|here|for this)"
        r"|(?:can|could) (?:we|i) (?:do|have|get) (?:the |my |some )?(?:settings|numbers)"
        r"|how long (?:do|should|shall|would) (?:i|we) (?:set|leave|open|expose)"
        r"|what time (?:do|should|shall) (?:i|we) (?:set|use|take)|what numbers|so what do i set"
        r"|(?:do|should|shall) i set"
    ),
    # As the last words of it.
    "settings_asked.at_end": (
        rf"(?:what|which) {_SETTINGS}(?: (?:then|now|please|here))?|{_SETTINGS} please"
    ),
    # As a sentence of its own, with a question's mark.
    "settings_asked.alone": rf"(?:and |so |ok )?(?:the )?{_SETTINGS}",
}
