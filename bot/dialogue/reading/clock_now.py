"""What time it is, as a message tells it: `its 2:20`, `it's 2.45 now`, `es ist 14 Uhr 20`."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from bot.dialogue.reading.day_times import SPOKEN, in_half, in_words
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any

_IS: Final = rf"\b{in_any('day_asked.it_is')}(?: {in_any('day_asked.about')})* "
#: A number with one of these behind it is no hour.
_UNIT: Final = (
    r"(?:km|cm|mm|m|met\w+|mi|miles?|ft|feet|yards?|min\w*|h|hours?|stunden?|horas?|s|secs?|seconds?"
    r"|deg\w*|grad|grados|stops?|people|f|c|k|of|more|kilomet\w+|meter|pasos|each|%|°)"
)
_TYPED: Final = re.compile(
    rf"{_IS}(?P<hour>\d{{1,2}})(?:[:.h](?P<minute>[0-5]\d)| uhr (?P<behind>[0-5]\d))?"
    rf"(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\w/:%°]|[.,]\d| ?{_UNIT}(?!\w))"
    rf"(?P<now> {in_any('day_asked.now')}\b)?"
)
_SPOKEN: Final = re.compile(
    rf"\b(?:it's|its|it is|now)(?: (?:about|already|just|now|gone|only|nearly))* {SPOKEN}"
)
#: "Quarter to five on my watch".
_ON_WATCH: Final = re.compile(rf"\b{SPOKEN}(?= (?:on|by) (?:my|the|our) (?:watch|clock|phone)\b)")
#: A time of day that stands by itself: "made it to the falls, 11:50".
_PLAIN: Final = re.compile(
    rf"(?<![\w.:/])(?P<hour>\d{{1,2}})(?:[:.h](?P<minute>[0-5]\d)| uhr (?P<behind>[0-5]\d))"
    rf"(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\w/:%°]|[.,]\d| ?{_UNIT}(?!\w))"
)
_NOON_H: Final = 12
#: An hour below this that is told as now, without its half of the day, is one after noon (own
#: rule: nobody photographs a fall before it).
AFTERNOON_BELOW_H: Final = 6


@dataclass(frozen=True)
class ClockNow:
    """A time of day that is told as now.

    Args:
        hour: 0 to 23.
        minute: 0 to 59.
        either: its half of the day was not told: it may be twelve hours later.
    """

    hour: int
    minute: int
    either: bool


def clock_now(text: str) -> ClockNow | None:
    """What time a message says it is; None where it does not.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    match = _TYPED.search(said)
    if match is not None and (match["minute"] or match["behind"] or match["half"] or match["now"]):
        return _typed(match)
    spoken = _SPOKEN.search(said) or _ON_WATCH.search(said)
    told = None if spoken is None else in_words(spoken, _hour)
    if spoken is None or told is None:
        return None
    hour, minute = (int(part) for part in told.split(":"))
    return ClockNow(hour, minute, either=not spoken["half"] and 0 < hour < _NOON_H)


def clock_in(text: str) -> ClockNow | None:
    """The first time of day, to the minute, in a message that tells where somebody is now."""
    match = _PLAIN.search(plain(text))
    return None if match is None else _typed(match)


def _hour(hour: int, half: str | None) -> int:
    return in_half(hour, half) if half else hour


def _typed(match: re.Match[str]) -> ClockNow | None:
    hour, half = _hour(int(match["hour"]), match["half"]), match["half"]
    if hour >= 2 * _NOON_H:
        return None
    minute = int(match["minute"] or match["behind"] or 0)
    either = not half and 0 < hour < _NOON_H and not match["hour"].startswith("0")
    return ClockNow(hour, minute, either)
