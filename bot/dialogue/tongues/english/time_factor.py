"""English words: a time that is told by how many times the last one it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_factor.twice": (
        r"(?:double|twice|two times) (?:(?:the|that|this|my|your) )?(?:time|shutter(?: (?:time"
        r"|speed))?"
        r"|exposure(?: time)?)|(?:twice|double) as long|doubl(?:e|ed|ing) it"
    ),
    "time_factor.half": (
        r"half (?:of )?(?:(?:the|that|this|my|your) )?(?:time|shutter(?: (?:time|speed))?"
        r"|exposure(?: time)?)"
        r"|halv(?:e|ed|ing) (?:it|(?:the|that|my) (?:time|shutter|exposure))|half as long"
        r"|twice as (?:fast"
        r"|short)"
    ),
    "time_factor.only": (
        r"(?:ok(?:ay)?|all ?right|right|so|then|and|now|let s|lets|i ll|ill|i|we ll|we|what if"
        r"|what happens if|suppose|if|and if|try|trying"
        r"|go|going|take|took"
        r"|use|used|do|did|with|for|it is|it s|its|now|please|make|made|that|instead|set|to|it|at"
        r"|well|fine"
        r"|good|shoot|shot|again|one|yes|yeah)"
    ),
}
