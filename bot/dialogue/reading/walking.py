"""When a walk starts, and how long its way takes, as people tell it."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.dialogue.reading.day_times import HOURS, SPOKEN, TYPED, HourOf, in_half, in_words, typed

#: Where a walk begins.
_CAR: Final = r"(?:car ?park|car|parking(?: lot)?|trail ?head|house|hotel|hut|lodge|camp(?:site)?)"
_ABOUT: Final = (
    r"(?: (?:at|around|about|by|from|not before|say|probably|maybe|roughly|just|on|the))*"
)
_STARTING: Final = (
    r"(?:start(?:ing)?(?: (?:out|off|walking|the (?:walk|hike)|time|from \w+(?: \w+)?))?"
    r"|set(?:ting)? (?:off|out)|head(?:ing)? (?:off|in)|departure|departing|depart"
    rf"|leav(?:e|ing) (?:(?:from )?(?:the |our |my )?{_CAR}|home|here)"
    r"|begin(?:ning)? (?:the )?(?:walk|hike|walking)|(?:walk|hik)(?:e|ing)? (?:in|from)"
    r"|off from the car"
    rf"|(?:be|are|arrive|arriving|park|parking) (?:at|in) the {_CAR})"
)
_BEFORE_TIME: Final = rf"\b{_STARTING}{_ABOUT}[ :,-]+"
_AFTER_TIME: Final = r"(?:,? (?:is (?:the|our|my) )?(?:start|departure|set ?off)\b)"
_START_TYPED: Final = re.compile(
    rf"{_BEFORE_TIME}(?P<hour>\d{{1,2}}|{'|'.join(HOURS)})\b(?:[:.h](?P<minute>[0-5]\d))?"
    r"(?: ?(?P<half>[ap])\.?m\b\.?)?(?![\d/:]|\.\d| ?(?:m|km|ft|mi|miles|min\w*|s)\b)"
)
_START_SPOKEN: Final = re.compile(rf"{_BEFORE_TIME}{SPOKEN}")
_TYPED_START: Final = re.compile(rf"{TYPED.pattern}(?= start\b|,? (?:is )?(?:the|our|my) start\b)")
_SPOKEN_START: Final = re.compile(rf"(?<![\d:.])\b{SPOKEN}{_AFTER_TIME}")
#: No start: what is asked, what was, what is not the walk.
_NO_START: Final = re.compile(
    r"\b(?:when|what time) (?:should|must|do|can|shall|could|would|is)\b[^,;.]*\bstart"
    r"|\b(?:started|rain|snow|storm|show|work|school|course) (?:will )?(?:starts?|at)\b"
)
#: A time of something else answers no question for the start.
_OTHER_TIME: Final = re.compile(
    r"\b(?:sun\w*|dark|dusk|home|back|bus|train|\d ?(?:km|mi|miles|m))\b"
)
_EVENING: Final = re.compile(r"\b(?:in the (?:afternoon|evening)|after lunch)\b")
#: A start named without its half of the day: before this hour it is one after noon (own rule).
_EARLIEST_H: Final = 4


def start_in(text: str, *, asked: bool = False) -> str | None:
    """The hour at which the walk starts, in 24 hours: `half past nine`, `we set off at 8`.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
        asked: the open question asks for it, so that the time may stand alone.
    """
    late = _EVENING.search(text) is not None
    if _NO_START.search(text):
        return None

    def hour_of(number: int, half: str | None) -> int:
        if half:
            return in_half(number, half)
        return number + 12 if 0 < number < (12 if late else _EARLIEST_H) else number

    alone = asked and not _OTHER_TIME.search(text)
    for pattern, told in (*_STARTS, *_ALONE) if alone else _STARTS:
        match = pattern.search(text)
        clock = told(match, hour_of) if match is not None else None
        if clock is not None:
            return clock
    return None


def _bare(match: re.Match[str], hour_of: HourOf) -> str | None:
    """`Start at 9`: behind these words an hour may stand alone."""
    named = match["hour"]
    hour = hour_of(int(named) if named.isdigit() else HOURS[named], match["half"])
    return f"{hour:02d}:{int(match['minute'] or 0):02d}" if hour < 24 else None


_Told = Callable[[re.Match[str], HourOf], str | None]
_STARTS: Final[tuple[tuple[re.Pattern[str], _Told], ...]] = (
    (_START_SPOKEN, in_words),
    (_SPOKEN_START, in_words),
    (_TYPED_START, typed),
    (_START_TYPED, _bare),
)
_ALONE: Final[tuple[tuple[re.Pattern[str], _Told], ...]] = (
    (re.compile(rf"\b{SPOKEN}"), in_words),
    (TYPED, typed),
    (
        re.compile(
            r"^\W*(?:at |around |about )*(?P<hour>1?\d|2[0-3])(?P<minute>(?!))?(?P<half>(?!))?\W*$"
        ),
        _bare,
    ),
)


#: A duration in hours and minutes: `1 h 20`, `an hour and a half`, `45 minute`, `half an hour`.
_DURATION: Final = (
    r"(?:(?P<part>half an|[13]/4 of an|a quarter of an) hour"
    r"|(?P<hours>\d+(?:[.,]\d+)?|an?|one|two|three|four|five)(?P<and_half> and a half)?"
    r"[ -]?(?:h|hrs?|hours?)\b(?:'s)?"
    r"(?: ?(?:and )?(?:(?P<rest>[0-5]?\d)(?: ?(?:min|mins|minutes?)\b)?"
    r"|(?P<half_more>a half|a quarter)))?"
    r"|(?P<minutes>\d+)[ -]?(?:min|mins|minutes?)\b(?:')?)"
)
#: Where a bus, a train or a boat stops: a way leads there, too.
_STOP: Final = r"(?:(?:bus ?|train )?stop|(?:bus |train )?station|pier|jetty|harbou?r|landing)"
_TO_CAR: Final = rf"(?:(?:back |out )?(?:to|from|till|until) (?:the |our |my )?(?:{_CAR}|{_STOP}))"
_WAY_BEHIND: Final = (
    r"(?: (?:of |on |more )?(?:each way|one way|on foot|walk\w*|hik\w+|(?:to|for) (?:walk|the walk)"
    rf"|(?:walk |hike )?{_TO_CAR}|for the way (?:back|in|out)|round trip|there and back"
    r"|(?:there|in|out|back)(?= ?(?:[,.;!?]|$))))"
)
_WAY: Final = (
    r"(?:the |our )?(?:walk|hike|way|path|trail|approach|it|walk-in|route)"
    r"(?: (?:in|out|up|back|there|each way|one way))?"
)
_TAKES: Final = (
    r"(?:(?:'s| is| takes?| took| will take| was| needs)"
    r"(?: (?:us|me|about|around|roughly|some|another|nearly|almost|only|just))*)"
)
_DURATION_OF_IT: Final = _DURATION.replace("(?P<", "(?P<b_")
_BEHIND: Final = re.compile(rf"\b{_DURATION}{_WAY_BEHIND}")
_BEFORE: Final = re.compile(
    rf"\b(?:{_WAY.replace('|it|', '|')}(?:{_TAKES}|:| of)? {_DURATION}"
    rf"|(?:it|that)(?: takes?| took) (?:us |me |about |around )*{_DURATION_OF_IT}"
    r" (?:to get|to walk|to come|to reach|walking|on foot))"
)
#: What a told length takes: "2 miles … now it is more like an hour and a quarter".
_OF_A_LENGTH: Final = re.compile(
    r"\b(?:mi|miles?|km|kilomet(?:re|er)s?)\b[^.;!?]{0,80}?"
    r"\b(?:takes? (?:me|us)|(?:is|takes?|needs)(?: now)? (?:more like|nearer|closer to))"
    rf"(?: (?:about|around|more like|now|nearly|a good))* {_DURATION}"
)
_BOTH_WAYS: Final = re.compile(
    r"\b(?:round[ -]?trip|there and back|out and back|both ways|return (?:trip|walk|hike))\b"
)
#: What takes as long and is no way.
_NO_WAY: Final = re.compile(
    r"\b(?:exposure|shutter|wait\w*|drive|driving|by car|by bus|ago|until sunset|till sunset|before"
    r" sunset|to sunset|of light)\b"
)
_SHORTEST_MIN: Final = 2.0  # own rule: less is no walk
_LONGEST_MIN: Final = 720.0  # own rule: half a day


def is_round_trip(text: str) -> bool:
    """Whether a length or a time is that of both ways together."""
    return _BOTH_WAYS.search(text) is not None


def way_min_in(text: str) -> float | None:
    """One way of the walk as told in time [min]; None where it is not.

    Args:
        text: a message in English, as `normal.normalise` leaves it.
    """
    match = _BEHIND.search(text) or _BEFORE.search(text) or _OF_A_LENGTH.search(text)
    if match is None or _NO_WAY.search(text):
        return None
    told = {name.removeprefix("b_"): said for name, said in match.groupdict().items() if said}
    total_min = _minutes(told) / (2 if is_round_trip(text) else 1)
    return total_min if _SHORTEST_MIN <= total_min <= _LONGEST_MIN else None


_PARTS: Final = {"half an": 30.0, "1/4 of an": 15.0, "a quarter of an": 15.0, "3/4 of an": 45.0}
_WORDS: Final = {
    "a": 1.0,
    "an": 1.0,
    "one": 1.0,
    "two": 2.0,
    "three": 3.0,
    "four": 4.0,
    "five": 5.0,
}


def _minutes(told: dict[str, str]) -> float:
    if "part" in told:
        return _PARTS[told["part"]]
    if "minutes" in told:
        return float(told["minutes"])
    said = told["hours"]
    hours = _WORDS[said] if said in _WORDS else float(said.replace(",", "."))
    more = {"a half": 30.0, "a quarter": 15.0}.get(told.get("half_more", ""), 0.0)
    return 60 * hours + (30.0 if "and_half" in told else 0.0) + more + float(told.get("rest", 0))
