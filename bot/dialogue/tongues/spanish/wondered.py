"""Spanish words of what people wonder about: a tilt, two looks in one frame, a filter's doing."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_TILT: Final = r"inclin\w*"
_LEVEL: Final = r"nivelad\w*|recta|horizontal"
_WATER: Final = r"agua|gotas?|espuma|salpicaduras?"

WORDS: Final[Mapping[str, str]] = {
    # Whether a level camera is better than a tilted one, and what a tilt costs.
    "wondered.tilt": (
        rf"\b(?:{_LEVEL})\b[^?]*\b(?:o|que|mejor)\b[^?]*\b(?:{_TILT})\b"
        rf"|\b(?:{_TILT})\b[^?]*\b(?:o|que|mejor)\b[^?]*\b(?:{_LEVEL})\b"
        rf"|\bpor qu[eé] (?:\w+ )?(?:{_TILT})\b|\bqu[eé] (?:me )?cuesta (?:{_TILT})"
    ),
    # The fall crisp and the pool smooth, in one exposure or in two.
    "wondered.two_looks": (
        r"\b(?:cascada|ca[ií]da|salto)\b[^?]*\b(?:poza|charco|r[ií]o|abajo)\b[^?]*\bun[ao]?\b"
        r"[^?]*\b(?:dos|ambas)\b|\buna (?:toma|foto|exposici[oó]n)\b[^?]*\bo\b[^?]*\bdos\b"
    ),
    # Of light, not of motion.
    "wondered.contrast": (
        r"horquill\w*|sol\w*|sombra\w*|cielo|clar[oa]\w*|oscur\w*|contraste|blanc\w*|roca\w*"
    ),
    # Whether a filter changes the water itself.
    "wondered.polariser_water": (
        rf"\b(?:polari\w*|filtro)\b[^?]*\b(?:cambi|alter|afect)\w*\b[^?]*\b(?:{_WATER})\b"
        rf"|\b(?:{_WATER})\b[^?]*\b(?:cambi|alter|afect)\w*\b[^?]*\b(?:polari\w*|filtro)\b"
    ),
    # Why a long time at all.
    "wondered.why_long": (
        r"\bpor qu[eé]\b[^?]*\b(?:tanto tiempo|tan larg\w*|exponer tanto|larga exposici[oó]n)\b"
        r"|\bpor qu[eé] no\b[^?]*\b(?:cort|r[aá]pid)\w*\b"
    ),
    # Whether it is normal that all is darker behind the polariser.
    "wondered.filter_dark": (
        r"\b(?:polari\w*|filtro)\b[^?]*\boscur\w*\b[^?]*\b(?:normal|bien|correcto)\b"
    ),
    # Where a long exposure is made on a phone.
    "wondered.long_mode": (
        r"\b(?:d[oó]nde|c[oó]mo)\b[^?]*\b(?:larga exposici[oó]n|modo noche|live)\b"
    ),
}
