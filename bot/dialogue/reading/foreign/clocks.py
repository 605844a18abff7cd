"""Times of day as Germans and Spaniards say them, as `20:30`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.foreign.numerals import VALUE, value_of

_DAY_MINUTES: Final = 24 * 60
_HOUR: Final = r"(?:1\d|2[0-4]|[1-9]|one|two|three|four|five|six|seven|eight|nine|ten)"
_NO_UNIT: Final = (
    r"(?![\d.,/]|\.\d| ?(?:m|cm|km|mm|s|sek\w*|seg\w*|metern?|metros?|blenden?|pasos?|prozent|%)\b)"
)
_EVENING: Final = r"(?P<evening> (?:uhr )?(?:abends|am abend|heute abend)| de la (?:tarde|noche))?"
#: "Halb neun", "fünf vor halb neun".
_HALF: Final = re.compile(
    rf"\b(?:(?P<minutes>{VALUE}) (?:minuten )?(?P<way>vor|nach) )?halb (?P<hour>{_HOUR})\b"
    rf"{_NO_UNIT}(?: uhr)?{_EVENING}"
)
#: "Viertel vor acht", "dreiviertel acht", in the south and east "viertel acht".
_QUARTER: Final = re.compile(
    rf"\b(?<!ein )(?<!eine )(?P<part>dreiviertel|viertel|1/4|3/4)(?: (?P<way>vor|nach|über))?"
    rf" (?P<hour>{_HOUR})\b{_NO_UNIT}(?: uhr)?{_EVENING}"
)
#: "Zehn nach acht".
_MINUTES: Final = re.compile(
    rf"\b(?P<minutes>[1-5]?\d|five|ten|two|three) (?:minuten )?(?P<way>vor|nach)"
    rf" (?P<hour>{_HOUR})\b{_NO_UNIT}(?: uhr)?{_EVENING}"
)
#: "19 Uhr 12", "acht Uhr abends", "19.12 Uhr".
_O_CLOCK: Final = re.compile(
    rf"\b(?P<hour>{_HOUR})(?:[.:](?P<typed>[0-5]\d))? ?(?:uhr|h)\b"
    rf"(?: ?(?P<minutes>[0-5]\d|five|ten))?"
    rf"(?! ?(?:m|cm|min\w*|sek\w*)\b){_EVENING}"
)
#: "Las siete y media", "las ocho menos cuarto", "las 7 y 20", "diez y cuarto de la noche".
_SPANISH: Final = re.compile(
    rf"\b(?:(?P<las>a? ?las? )(?P<hour>{_HOUR}|una)|(?P<bare>{_HOUR})(?= (?:y|menos) \w+ de la))"
    rf"(?: (?P<way>y|menos|con) (?P<part>media|cuarto|1/4|five|ten|[1-5]?\d))?"
    rf"(?P<hours> horas| hrs| h)?\b{_NO_UNIT}{_EVENING}"
)
#: "Un cuarto para las ocho", "diez para las ocho".
_SPANISH_TO: Final = re.compile(
    rf"\b(?:un |1/)?(?P<part>cuarto|4|five|ten|[12]?\d) para las? (?P<hour>{_HOUR}|una)\b{_EVENING}"
)
_PARTS: Final = {
    "viertel": 15, "1/4": 15, "4": 15, "cuarto": 15, "media": 30, "dreiviertel": 45, "3/4": 45,
}  # fmt: skip


def _clock(minutes: float, *, evening: bool) -> str:
    hour, minute = divmod(int(minutes) % _DAY_MINUTES, 60)
    late = evening and 0 < hour < 12
    return f"{hour + 12 * late:02d}:{minute:02d}"


def _hour(said: str) -> float:
    return 60 * (1.0 if said == "una" else value_of(said))


def _half(match: re.Match[str]) -> str:
    offset = value_of(match["minutes"]) if match["minutes"] else 0.0
    sign = -1 if match["way"] == "vor" else 1
    total = _hour(match["hour"]) - 30 + sign * offset
    return _clock(total, evening=bool(match["evening"]))


def _quarter(match: re.Match[str]) -> str:
    part = _PARTS[match["part"]]
    offset = {"vor": -part, "nach": part, "über": part}.get(match["way"], part - 60)
    return _clock(_hour(match["hour"]) + offset, evening=bool(match["evening"]))


def _minutes(match: re.Match[str]) -> str:
    sign = -1 if match["way"] == "vor" else 1
    total = _hour(match["hour"]) + sign * value_of(match["minutes"])
    return _clock(total, evening=bool(match["evening"]))


def _o_clock(match: re.Match[str]) -> str:
    said = match["typed"] or match["minutes"]
    total = _hour(match["hour"]) + (value_of(said) if said else 0.0)
    return _clock(total, evening=bool(match["evening"]))


def _spanish(match: re.Match[str]) -> str:
    if not (match["way"] or match["hours"] or match["evening"]):
        return match.group()
    part = match["part"]
    offset = 0.0 if part is None else float(_PARTS[part] if part in _PARTS else value_of(part))
    sign = -1 if match["way"] == "menos" else 1
    total = _hour(match["hour"] or match["bare"]) + sign * offset
    return f"{match['las'] or ''}{_clock(total, evening=bool(match['evening']))}"


def _spanish_to(match: re.Match[str]) -> str:
    part = match["part"]
    offset = _PARTS[part] if part in _PARTS else value_of(part)
    return _clock(_hour(match["hour"]) - offset, evening=bool(match["evening"]))


def with_clocks(text: str, language: str) -> str:
    """The message with its spoken times of day in digits.

    Args:
        text: in lower case, its numbers as `number_words.in_english` leaves them.
        language: "de" or "es".
    """
    if language == "de":
        text = _QUARTER.sub(_quarter, _HALF.sub(_half, text))
        return _O_CLOCK.sub(_o_clock, _MINUTES.sub(_minutes, text))
    return _SPANISH.sub(_spanish, _SPANISH_TO.sub(_spanish_to, text))
