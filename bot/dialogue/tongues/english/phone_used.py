"""English words by which a phone is the camera, and not only carried."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_used.as_camera": (
        r"(?:shoot\w*|shot|photograph\w*|us(?:e|ing)|tak(?:e|ing)|took|with|switch\w*|chang\w*"
        r"|only|just|instead|now)\b[^,;.!?]{0,20}\b(?:smart ?)?phone\b"
        r"|(?:it'?s|this is|camera is) (?:a|the|my) phone\b"
        r"|phone(?:'s)? (?:only|now|instead|camera|[123]x|on (?:the|a) (?:\w+ )?tripod|propped"
        r"|clip\w*"
        r"|pictures?|photos?|shots?|this time)\b|^\W*(?:the |my |a )?phone(?= ?(?:[,;.!]|$))"
    ),
}
