"""By when somebody must be back: `be back at the car by 5`, `the last bus goes at 17:10`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.day_times import HOURS, SPOKEN, in_half, in_words

_WHERE: Final = (
    r"(?:car|van|car ?park|parking(?: lot)?|trail ?head|bus(?: stop)?|train|station|hotel|hut|lodge"
    r"|house|camp(?:site)?|village|town|meeting (?:point|place))"
)
_GATE: Final = r"(?:gates?|barrier|car ?park|parking(?: lot)?|lot|park|road|entrance)"
_BACK: Final = (
    rf"(?:(?:be|get|are|am|back)(?: back)? (?:at|to|in) (?:the |our |my )?{_WHERE}(?: again)?"
    r"|(?:be|get) (?:back|home|out|down)(?: (?:again|here|there|home))?"
    r"|back(?= (?:again )?by (?:\d|12:00)))"
)
#: What is fixed by somebody else.
_FIXED: Final = (
    r"(?:(?:bus|train|shuttle|ferry|boat)(?: home| back)? (?:leaves|goes|departs|is|runs)"
    r"|last (?:bus|train|shuttle|ferry|boat)(?: home| back)?"
    rf"|{_GATE}(?:'s)? (?:is |are |gets? |will be )?(?:closes?|shuts?|locks?|closed|locked|shut)"
    rf"|(?:they|he|she|rangers?) (?:will )?(?:closes?|shuts?|locks?) (?:up )?(?:the |our )?{_GATE}"
    r"|(?:picks?|collects?|picking|collecting) (?:me|us) up|picked up"
    r"|(?<=[,;] )(?:it )?(?:closes|shuts|locks))"
)
_RIDE: Final = r"(?:bus|train|shuttle|ferry|boat|tram|cable car)"
_NOON: Final = re.compile(r"\b(?:noon|midday)\b")
#: What must be, or is fixed; else it may be where the walk starts.
_MUST: Final = re.compile(
    r"\b(?:back|home|must|have to|has to|need to|got to|gotta|last (?:bus|train|shuttle|ferry|boat)"
    r"|closes?|shuts?|locks?|locked|closed|leaves|departs"
    r"|(?:picks?|collects?|picking|collecting) (?:me|us) up|(?:be|get|am|are) picked up)\b"
)
_AT: Final = (
    r"(?: (?:again|at|by|before|until|till|around|about|from|(?:the )?latest|no later than"
    r"|the hour))+ "
)
_HOUR: Final = (
    rf"(?P<hour>\d{{1,2}}(?!\d)|(?:{'|'.join(HOURS)})\b)(?:[:.h](?P<minute>[0-5]\d))?"
    r"(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\w/:]|\.\d| ?(?:m|km|ft|mi|miles|min\w*|h|hours?|s)\b)"
)
_TYPED: Final = re.compile(rf"\b(?:{_BACK}|{_FIXED}){_AT}{_HOUR}")
#: "The park shuts 5 pm", "last shuttle 5:15": an hour that can be nothing else.
_PLAIN: Final = re.compile(rf"\b{_FIXED} (?=\d{{1,2}}(?:[:.h][0-5]\d\b| ?[ap]\.?m\b))" + _HOUR)
_SPOKEN: Final = re.compile(rf"\b(?:{_BACK}|{_FIXED}){_AT}{SPOKEN}")
#: "To the bus at 17:20", "the 17:20 train": one that is still to come goes after noon (own rule:
#: one before it brought them there).
_RIDES: Final = (
    re.compile(rf"\b{_RIDE}(?: (?:home|back|stop|down))*(?: is)?{_AT}{_HOUR}"),
    re.compile(rf"\b(?:the|my|our|last|a) {_HOUR} {_RIDE}\b"),
    re.compile(
        rf"\b{_RIDE}(?: (?:home|back))?:? (?=\d{{1,2}}(?:[:.h][0-5]\d\b| ?[ap]\.?m\b))" + _HOUR
    ),
)
_RODE: Final = re.compile(
    r"\b(?:came|brought|dropped|rode"
    r"|took|arrived|caught|got (?:off|here)|was|were|missed|this morning|ago|there at)\b"
)
#: An hour below this, told without its half of the day, is one after noon (own rule: nobody is
#: due back from a fall at night).
_AFTERNOON_BELOW_H: Final = 9
_NOON_H: Final = 12


def _hour(number: int, half: str | None) -> int:
    if half:
        return in_half(number, half)
    return number + 12 if 0 < number < _AFTERNOON_BELOW_H else number


def back_by_in(text: str) -> str | None:
    """The hour by which somebody must be back, in 24 hours; None where none is told.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
    """
    text = _NOON.sub("12:00", text)
    if not _MUST.search(text):
        return _ride_in(text)
    spoken = _SPOKEN.search(text)
    told = in_words(spoken, _hour) if spoken is not None else None
    match = _TYPED.search(text) or _PLAIN.search(text)
    if told is not None or match is None:
        return told or _ride_in(text)
    hour = _hour_of(match)
    return _clock(hour, match) if hour < 24 else None


def _ride_in(text: str) -> str | None:
    """The hour at which a bus or a train goes that is named by it alone."""
    match = next((found for one in _RIDES if (found := one.search(text))), None)
    if match is None or _RODE.search(text):
        return None
    hour = _hour_of(match)
    return _clock(hour, match) if _NOON_H <= hour < 24 else None


def _hour_of(match: re.Match[str]) -> int:
    named = match["hour"]
    return _hour(int(named) if named.isdigit() else HOURS[named], match["half"])


def _clock(hour: int, match: re.Match[str]) -> str:
    return f"{hour:02d}:{int(match['minute'] or 0):02d}"
