"""English words of what people wonder about: a tilt, two looks in one frame, a filter's doing."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_TILT: Final = r"tilt\w*|(?:camera|lens) (?:up|angled)"
_LEVEL: Final = r"(?:dead )?level|horizontal"
_WATER: Final = r"water|drops?|droplets|foam|spray|fall(?:ing)?"

WORDS: Final[Mapping[str, str]] = {
    # Whether a level camera is better than a tilted one, and what a tilt costs.
    "wondered.tilt": (
        rf"\b(?:{_LEVEL})\b[^?]*\b(?:or|than|better|instead)\b[^?]*\b(?:{_TILT})\b"
        rf"|\b(?:{_TILT})\b[^?]*\b(?:or|than|better|instead)\b[^?]*\b(?:{_LEVEL})\b"
        rf"|\bwhy (?:is it |the |a )?(?:{_TILT})\b|\bwhat (?:does|do|would|will) (?:a |the |that )?"
        rf"(?:{_TILT}) (?:cost|do|harm)"
    ),
    # The fall crisp and the pool smooth, in one exposure or in two.
    "wondered.two_looks": (
        r"\b(?:fall|drop|water)\b[^?]*\b(?:pool|foot|stream|below)\b[^?]*\b(?:one|single|same)\b"
        r"[^?]*\b(?:two|both)\b|\bone (?:exposure|frame|shot)\b[^?]*\bor\b[^?]*\btwo\b"
    ),
    # Of light, not of motion.
    "wondered.contrast": (
        r"bracket\w*|sun\w*|shad\w*|sky|bright\w*|dark\w*|contrast|white|stone|rock"
    ),
    # Whether a filter changes the water itself.
    "wondered.polariser_water": (
        r"\b(?:polari\w+|cpl|filter)\b[^?]*\b(?:alter|chang|affect|touch)\w*\b[^?]*"
        rf"\b(?:{_WATER})\b|\b(?:{_WATER})\b[^?]*\b(?:alter|chang|affect|touch)\w*\b[^?]*"
        r"\b(?:polari\w+|cpl|filter)\b"
    ),
    # Why a long time at all.
    "wondered.why_long": (
        r"\bwhy\b[^?]*\b(?:(?:such )?(?:a )?(?:so )?long (?:exposure|time|shutter)"
        r"|expose (?:so )?long"
        r"|slow shutter)\b|\bwhy not (?:just |simply )?(?:a )?(?:short|fast|quick)\w*\b"
    ),
    # Whether it is normal that all is darker behind the polariser.
    "wondered.filter_dark": (
        r"\b(?:polari\w+|cpl|filter)\b[^?]*\bdark\w*\b[^?]*\b(?:normal|right|ok(?:ay)?|supposed)\b"
    ),
    # Where a long exposure is made on a phone.
    "wondered.long_mode": (
        r"\b(?:where|how)\b[^?]*\b(?:long[ -]?exposure|night|live)(?: (?:mode|thing|setting"
        r"|button))?\b"
    ),
}
