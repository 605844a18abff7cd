"""When the sun sets, by the clock, in digits or words."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft

_CLOCK: Final = r"(?P<hour>\d{1,2})[:.h]?(?P<minute>\d\d)? ?(?P<half>[ap]\.?m\b)?"
_SUNSET_WORDS: Final = (
    r"(?:sunset(?: time)?|sundown"
    r"|sun(?:'s| is| will)? (?:goes down|going down|go down|sets?|down|setting))"
)
_LINK: Final = r"(?: (?:is|today|tonight|at|around|about|will be|'s)|'s)*[ :=]*"
_SUNSET: Final = re.compile(rf"\b{_SUNSET_WORDS}\b{_LINK}{_CLOCK}")
_CLOCK_SUNSET: Final = re.compile(
    r"\b(?P<hour>\d{1,2})[:.](?P<minute>\d\d) ?(?P<half>[ap]\.?m\b)? (?:is |for )?"
    r"(?:sunset|sundown)\b"
)
#: The answer to when the sun sets, alone.
_ALONE: Final = re.compile(
    r"(?:at |around |about |it's |its )*(?P<hour>\d{1,2})[:.h ]?(?P<minute>\d\d)? ?"
    r"(?P<half>[ap]\.?m\b\.?)?\W*"
)
_HOURS: Final = {
    "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8,
    "nine": 9, "ten": 10, "eleven": 11, "twelve": 12,
}  # fmt: skip
#: Minutes from the full hour that is named.
_OFFSETS: Final = {
    "quarter to": -15, "quarter past": 15, "half past": 30, "half": 30, "ten to": -10,
    "ten past": 10, "twenty to": -20, "twenty past": 20, "five to": -5, "five past": 5,
    "quarter after": 15, "quarter before": -15, "20 to": -20, "20 past": 20, "": 0,
}  # fmt: skip
_HOUR: Final = rf"(?P<hour>{'|'.join(_HOURS)}|1[0-2]|[1-9])"
_IN_WORDS: Final = re.compile(
    rf"\b{_SUNSET_WORDS}\b{_LINK}(?:an? )?"
    rf"(?P<offset>{'|'.join(offset for offset in _OFFSETS if offset)}) {_HOUR}\b(?![.:/]\d| ?[a-z])"
    rf"|\b{_SUNSET_WORDS}\b{_LINK}(?P<full>{'|'.join(_HOURS)})(?: o'? ?clock)\b"
)


def _clock(match: re.Match[str]) -> str | None:
    """A time of day in 24 hours; a bare hour is none, and 25:00 neither."""
    if not (match["minute"] or match["half"]):
        return None
    hour, minute = int(match["hour"]), int(match["minute"] or 0)
    if match["half"] and match["half"].startswith("p") and hour < 12:
        hour += 12
    return f"{hour:02d}:{minute:02d}" if hour < 24 and minute < 60 else None


def _in_words(match: re.Match[str]) -> str:
    """`quarter to five`: the sun sets in the second half of the day."""
    named = match["full"] or match["hour"]
    hour = int(named) if named.isdigit() else _HOURS[named]
    minutes = (12 * 60 + hour % 12 * 60 + _OFFSETS[match["offset"] or ""]) % (24 * 60)
    return f"{minutes // 60:02d}:{minutes % 60:02d}"


def read_sunset(draft: Draft) -> None:
    """The time of sunset as typed, in 24 hours; `7:05 pm` is 19:05, `quarter to five` 16:45."""
    match = _SUNSET.search(draft.text) or _CLOCK_SUNSET.search(draft.text)
    if match is None and draft.expecting == {"sunset"}:
        match = _ALONE.fullmatch(draft.text)
    worded = _IN_WORDS.search(draft.text)
    clock = _clock(match) if match else None
    if clock is None and worded:
        match, clock = worded, _in_words(worded)
    if match is None or clock is None:
        return
    draft.note("sunset", clock)
    for quantity in draft.free():
        if match.start() <= quantity.start < match.end():
            draft.claim(quantity)
