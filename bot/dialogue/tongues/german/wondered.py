"""German words of what people wonder about: a tilt, two looks in one frame, a filter's doing."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_TILT: Final = r"(?:ge|ver)?kipp\w*|schräg\w*"
_LEVEL: Final = r"gerade|waagrecht|waagerecht"
_WATER: Final = r"wasser|tropfen|schaum|gischt"

WORDS: Final[Mapping[str, str]] = {
    # Whether a level camera is better than a tilted one, and what a tilt costs.
    "wondered.tilt": (
        rf"\b(?:{_LEVEL})\b[^?]*\b(?:oder|als|besser|statt)\b[^?]*\b(?:{_TILT})\b"
        rf"|\b(?:{_TILT})\b[^?]*\b(?:oder|als|besser|statt)\b[^?]*\b(?:{_LEVEL})\b"
        rf"|\bw(?:arum|ieso) (?:\w+ )?(?:{_TILT})\b|\bwas (?:kostet|macht) (?:mich )?(?:das"
        rf"|die) (?:{_TILT})"
    ),
    # The fall crisp and the pool smooth, in one exposure or in two.
    "wondered.two_looks": (
        r"\b(?:fall|wasserfall)\b[^?]*\b(?:becken|gumpe|bach|unten|pool)\b[^?]*"
        r"\bein(?:em|er|e)?\b[^?]*\b(?:zwei|beide)\b"
        r"|\bein(?:em|er|e)? (?:bild|aufnahme|belichtung)\b[^?]*\boder\b[^?]*\bzwei\b"
    ),
    # Of light, not of motion.
    "wondered.contrast": (
        r"reihe|sonn\w*|schatt\w*|himmel|hell\w*|dunk\w*|kontrast\w*|weiß\w*|fels\w*"
    ),
    # Whether a filter changes the water itself.
    "wondered.polariser_water": (
        r"\b(?:veränder|änder|wirk|beeinfluss)\w*\b[^?]*\b(?:pol\w*|filter)\b[^?]*"
        rf"\b(?:{_WATER})\b|\b(?:pol\w*|filter)\b[^?]*\b(?:{_WATER})\b[^?]*"
        r"\b(?:veränder|änder|wirk|beeinfluss)\w*\b"
        rf"|\b(?:veränder|änder)\w*\b[^?]*\b(?:{_WATER})\b[^?]*\b(?:pol\w*|filter)\b"
    ),
    # Why a long time at all.
    "wondered.why_long": (
        r"\b(?:warum|wieso|weshalb|wozu)\b[^?]*\b(?:so )?lang\w* (?:belicht\w*|zeit\w*)\b"
        r"|\b(?:warum|wieso|weshalb)\b[^?]*\bnich?t? (?:einfach |nur )?(?:kurz|schnell)\w*\b"
    ),
    # Whether it is normal that all is darker behind the polariser.
    "wondered.filter_dark": (
        r"\b(?:pol\w*|filter)\b[^?]*\bdunk\w*\b[^?]*\b(?:normal|richtig|ok(?:ay)?|so sein)\b"
    ),
    # Where a long exposure is made on a phone.
    "wondered.long_mode": (
        r"\b(?:wo|wie)\b[^?]*\b(?:langzeit\w*|nachtmodus|live\w*|langzeitbelichtung)\b"
    ),
}
