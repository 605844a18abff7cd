"""English words of a bare call for help."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Nobody looks up what can be typed with these.
    "cry.of_need": r"sos|mayday|emergency|save (?:me|us)|(?:it is an|its an) emergency",
    "cry.help": r"(?:i|we) need(?: your| some)? help|need help|send help|get help|help(?: me| us)?",
    "cry.hurry": r"now|quick|quickly|fast|oh god",
    "cry.beside": (
        r"please|pls|plz|now|quick|quickly|fast|linn|hey|oh|god|and|a|somebody|someone|anybody"
        r"|anyone|can|you|oh no"
    ),
}
