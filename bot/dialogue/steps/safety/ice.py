"""Ice and frost, told of in passing: once, what they ask of feet, head and batteries."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.turn import Turn

#: Ice where people walk, in the three languages; a frozen look and a frozen screen are none.
_ICE: Final = re.compile(
    r"\b(?:icy|icicles?|black ice|verglas|ice (?:on|at|along|over|all|everywhere|under)"
    r"|(?:some|thin|thick|a bit of|lots? of|sheets? of) ice|iced(?: over)?|hard frost"
    r"|frozen (?:over|ground|spray|path|trail|edges?|rocks?)|below freezing"
    r"|eis(?:ig(?:e[rsnm]?)?|zapfen|platten?)|vereist\w*|glatteis|unter null|frost"
    r"|(?:hay|con|de) hielo|hielo (?:en|por|sobre)|helad[oa]s? (?:la|el|las|los)|carámbanos?"
    r"|carambanos?|bajo cero)\b",
    re.IGNORECASE,
)
_NONE: Final = re.compile(
    r"\b(?:no|without|kein\w*|ohne|sin)\s+(?:\w+\s+)?(?:ice|icicles|frost|eis\w*|hielo)\b",
    re.IGNORECASE,
)
#: A temperature with its scale: freezing is 0 °C and 32 °F.
_DEGREES: Final = re.compile(
    r"(?<![\d/.])(?P<below>-|[Mm]inus |[Mm]enos )?(?P<number>\d{1,2}) ?"
    r"(?:(?P<scale>°? ?[CF])\b|°|degrees\b|[Gg]rad\b|grados\b)"
)
_FREEZING_F: Final = 32


def warn(turn: Turn, typed: str) -> None:
    """Say the caution for ice, once on a walk.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
    """
    if (_ICE.search(typed) and not _NONE.search(typed)) or _is_freezing(typed):
        turn.caution("ice")


def _is_freezing(typed: str) -> bool:
    """Whether a temperature is told at which water freezes."""
    return any(_below(match) for match in _DEGREES.finditer(typed))


def _below(match: re.Match[str]) -> bool:
    number, scale = int(match["number"]), (match["scale"] or "")[-1:]
    if scale == "F":
        return match["below"] is not None or number <= _FREEZING_F
    return match["below"] is not None or (scale == "C" and number == 0)
