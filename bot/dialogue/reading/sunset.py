"""When the sun sets, by the clock, in digits or words."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.answers import tells_sunset
from bot.dialogue.reading.draft import BORDER, Draft
from bot.dialogue.reading.spoken_numbers import SIMPLE

_CLOCK: Final = r"(?P<hour>\d{1,2})[:.h]?(?P<minute>\d\d)? ?(?P<half>[ap]\.?m\b)?"
_SUNSET_WORDS: Final = (
    r"(?:sun[ -]?set(?:ting)?(?: time)?|sundown|sun down"
    r"|lose the sun|(?:it|that)'s when (?:the sun sets|it sets)"
    r"|sun(?:'s| is| will)? (?:goes under|goes off|drops|dipping|vanishes|slips|hides|goes down"
    r"|going down|go down|sets?|down|setting|disappears?|dips"
    r"|gone|be gone|goes(?= at)))"
)
_LINK: Final = (
    r"(?:,? (?:is|it's|today|tonight|here|at|by|around|about|roughly|approx|ca"
    r"|will be|should be|says|comes|'s)|'s)*[ :=@,-]*"
)
_SUNSET: Final = re.compile(rf"\b{_SUNSET_WORDS}\b{_LINK}{_CLOCK}")
_CLOCK_SUNSET: Final = re.compile(
    r"\b(?P<hour>\d{1,2})[:.](?P<minute>\d\d) ?(?P<half>[ap]\.?m\b)? (?:is |for )?"
    r"(?:sunset|sundown)\b"
)
#: Times of day as typed: `19:40`, `7.40 pm`, `8pm`.
_TIME: Final = re.compile(
    r"(?<![\w.:/])(?P<hour>[01]?\d|2[0-3])(?:[:h](?P<minute>[0-5]\d)"
    r"|\.(?P<dotted>[0-5]\d)(?! ?(?:m|km|ft|s)\b)(?=\W|$))?"
    r"(?: ?(?P<half>[ap]\.?m)\b)?(?![\w/:]|\.\d)"
)
#: "According to the app the sun goes down today at": words between sunset and its time.
_BETWEEN: Final = re.compile(r"\??(?!.*\b(?:yesterday|was|before|after|until)\b)[^;!?\d]{0,40}")
_ABOUT: Final = re.compile(rf"\b{_SUNSET_WORDS}\b")
#: The answer to when the sun sets, alone; "1915" too.
_ALONE: Final = re.compile(
    r"(?:at |around |about |it's |its )*(?P<hour>\d{1,2})[:.h ]?(?P<minute>\d\d)? ?"
    r"(?P<half>[ap]\.?m\b\.?)?\W*"
)
_HOURS: Final = {word: hour for word, hour in SIMPLE.items() if 1 <= hour <= 12}
#: Minutes in words, as they stand before "to" and "past".
_PARTS: Final = {"quarter": 15, "half": 30, "five": 5, "ten": 10, "twenty": 20}
#: `quarter to five`, `half six`, `7 40`, `seven o'clock`, `eight pm`; dictated tens are digits.
_SPOKEN: Final = (
    rf"(?:an? )?(?:(?P<minutes>{'|'.join(_PARTS)}|\d{{1,2}}) ?(?:minutes? |mins? )?"
    r"(?P<way>to|till|before|past|after) |(?P<half_hour>half) )?"
    rf"(?P<hour>{'|'.join(_HOURS)}|1\d|2[0-3]|[1-9])"
    r"(?! ?(?:m|km|ft|feet|met\w+|min\w*|h|hours?)\b)"
    r"(?: (?P<rest>[0-5]\d|oh [1-9])(?! ?(?:m|km|ft|feet|met\w+|min\w*|iso|mm|%)\b))?"
    r"(?P<clock> o'? ?clock| hours)?(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\w/:]|[.,]\d)"
)
_IN_WORDS: Final = re.compile(rf"\b{_SUNSET_WORDS}\b{_LINK}{_SPOKEN}")
_WORDS_BEFORE: Final = re.compile(
    rf"\b{_SPOKEN}(?: (?:in the evening|tonight|this evening|today|or so))*"
    rf"(?:,| is when| is| for)? ?(?:the )?{_SUNSET_WORDS}"
)
_ALONE_IN_WORDS: Final = re.compile(
    rf"(?:at |around |about |it's |its )*{_SPOKEN}(?: tonight| this evening| today)?\W*"
)


def _clock(match: re.Match[str]) -> str | None:
    """A time of day in 24 hours; a bare hour is none, and 25:00 neither."""
    dotted = match.groupdict().get("dotted")
    typed, half = match["minute"] or dotted, match["half"]
    if not (typed or half):
        return None
    hour, minute = _in_the_evening(int(match["hour"]), half), int(typed or 0)
    return f"{hour:02d}:{minute:02d}" if hour < 24 and minute < 60 else None


#: Until then the sun may set after midnight, in the far north [h] (own rule).
_LATEST_H: Final = 2


def _in_the_evening(hour: int, half: str | None) -> int:
    """The sun sets in the second half of the day, or after midnight, whoever leaves that out."""
    if half:
        return hour % 12 + 12 * half.startswith("p") if hour <= 12 else hour
    return hour + 12 if _LATEST_H < hour < 12 else hour


def _in_words(match: re.Match[str]) -> str | None:
    """`quarter to five`, `seven 40`; a bare hour tells too little."""
    if not any(match[part] for part in ("way", "half_hour", "rest", "clock", "half")):
        return None
    named = match["hour"]
    hour = _in_the_evening(int(named) if named.isdigit() else _HOURS[named], match["half"])
    offset = 30 if match["half_hour"] else int((match["rest"] or "0").removeprefix("oh "))
    if match["way"]:
        part = match["minutes"]
        minutes = _PARTS[part] if part in _PARTS else int(part)
        offset = minutes if match["way"] in {"past", "after"} else -minutes
    total = (60 * hour + offset) % (24 * 60)
    return f"{total // 60:02d}:{total % 60:02d}"


def _nearby(draft: Draft) -> re.Match[str] | None:
    """The one time of day of a message that speaks of sunset, or where it was asked for."""
    times = [match for match in _TIME.finditer(draft.text) if _clock(match)]
    if len(times) != 1:
        return None
    time, about = times[0], _ABOUT.search(draft.text)
    if about is None:
        before = BORDER.split(draft.text[: time.start()])[-1]
        after = BORDER.split(draft.text[time.end() :], maxsplit=1)[0]
        asked = "sunset" in draft.expecting and tells_sunset(before, after)
        return time if asked else None
    between = draft.text[about.end() : time.start()] or draft.text[time.end() : about.start()]
    return time if _BETWEEN.fullmatch(between) else None


def read_sunset(draft: Draft) -> None:
    """The time of sunset as typed, in 24 hours; `7:05 pm` is 19:05, `quarter to five` 16:45."""
    match = _SUNSET.search(draft.text) or _CLOCK_SUNSET.search(draft.text)
    if match is None and draft.expecting == {"sunset"}:
        match = _ALONE.fullmatch(draft.text)
    if match is None or _clock(match) is None:
        match = _nearby(draft) or match
    worded = _ALONE_IN_WORDS.fullmatch(draft.text) if draft.expecting == {"sunset"} else None
    worded = worded or _IN_WORDS.search(draft.text) or _WORDS_BEFORE.search(draft.text)
    clock = _clock(match) if match else None
    if clock is None and worded:
        match, clock = worded, _in_words(worded)
    if match is None or clock is None:
        return
    draft.note("sunset", clock)
    for quantity in draft.free():
        if match.start() <= quantity.start < match.end():
            draft.claim(quantity)
