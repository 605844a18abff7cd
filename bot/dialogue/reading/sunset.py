"""When the sun sets, by the clock, in digits or words."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.answers import tells_sunset
from bot.dialogue.reading.day_times import SPOKEN, TYPED, in_half, in_words, typed
from bot.dialogue.reading.draft import BORDER, Draft

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
#: "According to the app the sun goes down today at": words between sunset and its time.
_BETWEEN: Final = re.compile(r"\??(?!.*\b(?:yesterday|was|before|after|until)\b)[^;!?\d]{0,40}")
_ABOUT: Final = re.compile(rf"\b{_SUNSET_WORDS}\b")
#: The answer to when the sun sets, alone; "1915" too.
_ALONE: Final = re.compile(
    r"(?:at |around |about |it's |its )*(?P<hour>\d{1,2})[:.h ]?(?P<minute>\d\d)? ?"
    r"(?P<half>[ap]\.?m\b\.?)?\W*"
)
_IN_WORDS: Final = re.compile(rf"\b{_SUNSET_WORDS}\b{_LINK}{SPOKEN}")
_WORDS_BEFORE: Final = re.compile(
    rf"\b{SPOKEN}(?: (?:in the evening|tonight|this evening|today|or so))*"
    rf"(?:,| is when| is| for)? ?(?:the )?{_SUNSET_WORDS}"
)
_ALONE_IN_WORDS: Final = re.compile(
    rf"(?:at |around |about |it's |its )*{SPOKEN}(?: tonight| this evening| today)?\W*"
)


#: Until then the sun may set after midnight, in the far north [h] (own rule).
_LATEST_H: Final = 2


def _in_the_evening(hour: int, half: str | None) -> int:
    """The sun sets in the second half of the day, or after midnight, whoever leaves that out."""
    if half:
        return in_half(hour, half)
    return hour + 12 if _LATEST_H < hour < 12 else hour


def _nearby(draft: Draft) -> re.Match[str] | None:
    """The one time of day of a message that speaks of sunset, or where it was asked for."""
    times = [match for match in TYPED.finditer(draft.text) if typed(match, _in_the_evening)]
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
    if match is None or typed(match, _in_the_evening) is None:
        match = _nearby(draft) or match
    worded = _ALONE_IN_WORDS.fullmatch(draft.text) if draft.expecting == {"sunset"} else None
    worded = worded or _IN_WORDS.search(draft.text) or _WORDS_BEFORE.search(draft.text)
    clock = typed(match, _in_the_evening) if match else None
    if clock is None and worded:
        match, clock = worded, in_words(worded, _in_the_evening)
    if match is None or clock is None:
        return
    draft.note("sunset", clock)
    for quantity in draft.free():
        if match.start() <= quantity.start < match.end():
            draft.claim(quantity)
