"""Times of day as Germans and Spaniards say them, as `20:30`."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue.reading.foreign.numerals import NO_UNIT, SMALL, VALUE, value_of

_DAY_MINUTES: Final = 24 * 60
_HOUR: Final = rf"(?:1\d|2[0-4]|[1-9]|{'|'.join(SMALL[1:])})"
_NO_UNIT: Final = rf"(?![\d/]|[.,]\d){NO_UNIT}"
_EVENING: Final = r"(?P<evening> (?:uhr )?(?:abends|am abend|heute abend)| de la (?:tarde|noche))?"
#: The hour that ends a German time.
_GERMAN_HOUR: Final = rf" (?P<hour>{_HOUR})\b{_NO_UNIT}(?: uhr)?{_EVENING}"
#: "Halb neun", "fünf vor halb neun".
_HALF: Final = re.compile(
    rf"\b(?:(?P<minutes>{VALUE}) (?:minuten )?(?P<way>vor|nach) )?halb{_GERMAN_HOUR}"
)
#: "Viertel vor acht", "dreiviertel acht", in the south and east "viertel acht".
_QUARTER: Final = re.compile(
    rf"\b(?P<part>dreiviertel|1/4|3/4)(?: (?P<way>vor|nach|über))?{_GERMAN_HOUR}"
)
#: "Zehn nach acht".
_MINUTES: Final = re.compile(
    rf"\b(?P<minutes>[1-5]?\d|five|ten|two|three) (?:minuten )?(?P<way>vor|nach){_GERMAN_HOUR}"
)
#: "19 Uhr 12", "acht Uhr abends", "19.12 Uhr".
_O_CLOCK: Final = re.compile(
    rf"\b(?P<hour>{_HOUR})(?:[.:](?P<typed>[0-5]\d))? ?(?:uhr|h)\b"
    rf"(?: ?(?P<minutes>[0-5]\d|five|ten))?"
    rf"(?! ?(?:m|cm|min\w*|sek\w*)\b){_EVENING}"
)
_SUNSET: Final = r"(?:puesta|ocaso|atardecer)(?: [a-z]+){0,3} "
#: "Las siete y media", "las ocho menos cuarto", "las 7 y 20", "diez y cuarto de la noche".
_SPANISH: Final = re.compile(
    rf"\b(?:(?P<las>a? ?las? |{_SUNSET})(?P<hour>{_HOUR}|una)"
    rf"|(?P<bare>{_HOUR})(?= (?:y|menos) \w+ de la))"
    rf"(?: (?P<way>y|menos|con) (?P<minutes>media|cuarto|1/4|five|ten|[1-5]?\d))?"
    rf"(?P<hours> horas| hrs| h)?\b{_NO_UNIT}{_EVENING}"
)
#: "Un cuarto para las ocho", "diez para las ocho".
_SPANISH_TO: Final = re.compile(
    rf"\b(?P<minutes>cuarto|1/4|five|ten|[12]?\d) para las? (?P<hour>{_HOUR}|una)\b{_EVENING}"
)
_PARTS: Final = {"1/4": 15, "cuarto": 15, "media": 30, "dreiviertel": 45, "3/4": 45}
_BEFORE: Final = frozenset({"vor", "menos"})


def _minutes(match: re.Match[str], name: str = "minutes") -> float:
    """The minutes that are told, negative before the hour; none are 0."""
    said = match[name]
    if said is None:
        return 0.0
    minutes = float(_PARTS[said]) if said in _PARTS else value_of(said)
    return -minutes if match.groupdict().get("way") in _BEFORE else minutes


def _clock(match: re.Match[str], minutes: float) -> str:
    """The time so many minutes after the hour that is told."""
    said = match["hour"] or match["bare"]
    total = 60 * (1.0 if said == "una" else value_of(said)) + minutes
    hour, minute = divmod(int(total) % _DAY_MINUTES, 60)
    late = match["evening"] and 0 < hour < 12
    return f"{hour + 12 * bool(late):02d}:{minute:02d}"


def _quarter(match: re.Match[str]) -> str:
    """`Viertel acht` is a quarter of the hour that ends at eight."""
    part = _minutes(match, "part")
    return _clock(match, part if match["way"] else part - 60)


def _spanish(match: re.Match[str]) -> str:
    if not (match["way"] or match["hours"] or match["evening"]):
        return match.group()
    return f"{match['las'] or ''}{_clock(match, _minutes(match))}"


_GERMAN_TIMES: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...]] = (
    (_HALF, lambda match: _clock(match, _minutes(match) - 30)),
    (_QUARTER, _quarter),
    (_MINUTES, lambda match: _clock(match, _minutes(match))),
    (_O_CLOCK, lambda match: _clock(match, _minutes(match, "typed") or _minutes(match))),
)
_SPANISH_TIMES: Final[tuple[tuple[re.Pattern[str], Callable[[re.Match[str]], str]], ...]] = (
    (_SPANISH_TO, lambda match: _clock(match, -_minutes(match))),
    (_SPANISH, _spanish),
)


def with_clocks(text: str, language: str) -> str:
    """The message with its spoken times of day in digits.

    Args:
        text: in lower case, its numbers as `number_words.in_english` leaves them.
        language: "de" or "es".
    """
    for pattern, told in _GERMAN_TIMES if language == "de" else _SPANISH_TIMES:
        text = pattern.sub(told, text)
    return text
