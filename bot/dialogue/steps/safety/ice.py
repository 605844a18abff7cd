"""Ice and frost, told of in passing: once, what they ask of feet, head and batteries."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: Ice where people walk, in any language; a frozen look and a frozen screen are none.
_ICE: Final = re.compile(rf"\b{in_any('weather.ice')}\b", re.IGNORECASE)
_NONE: Final = re.compile(
    rf"\b{in_any('weather.no')}\s+(?:\w+\s+)?{in_any('weather.of_ice')}\b", re.IGNORECASE
)
#: A temperature with its scale: freezing is 0 °C and 32 °F.
_DEGREES: Final = re.compile(
    rf"(?<![\d/.])(?P<below>-|{in_any('weather.minus')} )?(?P<number>\d{{1,2}}) ?"
    rf"(?:(?P<scale>°? ?[CF])\b|°|{in_any('weather.degrees')}\b)"
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
