"""Times of day as people type and say them: `19:40`, `7.40 pm`, `quarter to five`."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue.reading.spoken_numbers import SIMPLE

#: From the number of an hour and "am" or "pm" (None: not told) to the hour that is meant.
HourOf = Callable[[int, str | None], int]

#: Times of day as typed: `19:40`, `7.40 pm`, `8pm`.
TYPED: Final = re.compile(
    r"(?<![\w.:/])(?P<hour>[01]?\d|2[0-3])(?:[:h](?P<minute>[0-5]\d)"
    r"|\.(?P<dotted>[0-5]\d)(?! ?(?:m|km|ft|s)\b)(?=\W|$))?"
    r"(?: ?(?P<half>[ap]\.?m)\b)?(?![\w/:]|\.\d)"
)
HOURS: Final = {word: hour for word, hour in SIMPLE.items() if 1 <= hour <= 12}
#: Minutes in words, as they stand before "to" and "past".
_PARTS: Final = {"quarter": 15, "half": 30, "five": 5, "ten": 10, "twenty": 20}
#: `quarter to five`, `half six`, `7 40`, `seven o'clock`, `eight pm`; dictated tens are digits.
SPOKEN: Final = (
    rf"(?:an? )?(?:(?P<minutes>{'|'.join(_PARTS)}|\d{{1,2}}) ?(?:minutes? |mins? )?"
    r"(?P<way>to|till|before|past|after) |(?P<half_hour>half) )?"
    rf"(?P<hour>{'|'.join(HOURS)}|1\d|2[0-3]|[1-9])"
    r"(?! ?(?:m|km|ft|feet|met\w+|min\w*|h|hours?)\b)"
    r"(?: (?P<rest>[0-5]\d|oh [1-9])(?! ?(?:m|km|ft|feet|met\w+|min\w*|iso|mm|%)\b))?"
    r"(?P<clock> o'? ?clock| hours)?(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\w/:]|[.,]\d)"
)


def in_half(hour: int, half: str) -> int:
    """An hour with "am" or "pm" behind it in 24 hours; 13 pm is 13.

    Args:
        hour: as told.
        half: begins with "a" or "p".
    """
    return hour % 12 + 12 * half.startswith("p") if hour <= 12 else hour


def typed(match: re.Match[str], hour_of: HourOf) -> str | None:
    """A typed time of day in 24 hours; a bare hour is none, and 25:00 neither.

    Args:
        match: with groups `hour`, `minute` or `dotted`, and `half`.
        hour_of: the hour that is meant by a number and the half of the day, where it is told.
    """
    dotted = match.groupdict().get("dotted")
    typed, half = match["minute"] or dotted, match["half"]
    if not (typed or half):
        return None
    hour, minute = hour_of(int(match["hour"]), half), int(typed or 0)
    return f"{hour:02d}:{minute:02d}" if hour < 24 and minute < 60 else None


def in_words(match: re.Match[str], hour_of: HourOf) -> str | None:
    """A spoken time in 24 hours: `quarter to five`, `seven 40`; a bare hour tells too little.

    Args:
        match: of `SPOKEN`.
        hour_of: as above.
    """
    if not any(match[part] for part in ("way", "half_hour", "rest", "clock", "half")):
        return None
    named = match["hour"]
    hour = hour_of(int(named) if named.isdigit() else HOURS[named], match["half"])
    offset = 30 if match["half_hour"] else int((match["rest"] or "0").removeprefix("oh "))
    if match["way"]:
        part = match["minutes"]
        minutes = _PARTS[part] if part in _PARTS else int(part)
        offset = minutes if match["way"] in {"past", "after"} else -minutes
    total = (60 * hour + offset) % (24 * 60)
    return f"{total // 60:02d}:{total % 60:02d}"
