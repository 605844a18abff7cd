"""When something was, as a message tells it: `at 14:10 it was`, `an hour ago`, `this morning`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.day_times import in_half
from bot.dialogue.reading.spoken_numbers import SIMPLE
from bot.dialogue.when_told import When, WhenKind

_COUNT_WORDS: Final = r"one|two|three|four|five|six|seven|ten|twenty|thirty|forty"
_COUNTS: Final = {
    "a": 1.0, "an": 1.0, "couple": 2.0, "few": 3.0, "half": 0.5, "quarter": 0.25,
} | {word: float(SIMPLE[word]) for word in _COUNT_WORDS.split("|")}  # fmt: skip
_AMOUNT: Final = (
    r"(?P<amount>\d+(?:[.,]\d+)?|(?:an? )?(?:half|quarter|couple|few)(?: of)?"
    rf"|{_COUNT_WORDS}|an?)"
)
_UNIT: Final = r"(?P<unit>h|hrs?|hours?|min|mins|minutes?)"
_HALF: Final = r"(?: and a half|(?<=\d)½)"
_AGO: Final = re.compile(
    rf"\b{_AMOUNT}(?P<before>{_HALF})?(?: an?)?(?: |(?<=\d)){_UNIT}(?P<behind>{_HALF})?"
    r"(?: (?:and )?(?P<more>\d+) ?(?:min|mins|minutes?))? (?:ago|earlier|before now)\b",
    re.IGNORECASE,
)

#: A clock time is one of the past when the message speaks of what was, not of what is planned.
_WAS: Final = re.compile(
    r"\b(?:was|were|had|took|taken|shot|made|got|gave|did|blinked|clipped|showed|looked"
    r"|frames?|photos?|pictures?|images?|shots?|one (?:from|of))\b",
    re.IGNORECASE,
)
_PLANNED: Final = re.compile(
    r"\b(?:sunset|sundown|sunrise|sun|leave|leaving|meet|meeting|until|till|will|going to|by"
    r"|turn(?:ing)?[ -]?back|clos(?:es?|ing|ed)|opens?|bus|train|shuttle|return|home|back"
    r"|head(?:ing)?|start(?:ing)?|set(?:ting)? (?:off|out)|thinking (?:of|about|start\w*|leav\w*)"
    r"|planning|shuts?|locks?)\b",
    re.IGNORECASE,
)
_TIME: Final = r"(?P<hour>[01]?\d|2[0-3])(?:[:h](?P<minute>[0-5]\d))?(?: ?(?P<half>[ap])\.?m\b\.?)?"
_CLOCK: Final = re.compile(
    rf"(?:\b(?:at|around|about|from|of|taken)|@) ?{_TIME}(?![\w/.:])", re.IGNORECASE
)
#: "14:10: patches", a note that was typed where there was no signal; "2:15 min" is none.
_NOTED: Final = re.compile(
    rf"^\s*(?:(?:at|around|about) )?{_TIME}(?=[ ,;:-])"
    r"(?! ?(?:min|sec|s\b|h\b|exposure|ratio|crop))",
    re.IGNORECASE,
)
_PART: Final = re.compile(
    r"\b(?:(?:earlier |early |late |later )?this (?P<this>morning|afternoon|evening)"
    r"|(?:at|around|from|before) (?P<at>noon|midday|lunch|dawn|sunrise|daybreak))\b",
    re.IGNORECASE,
)
_DAYS: Final = re.compile(
    r"\b(?:(?P<one>yesterday(?:['’]s)?|last (?:night|evening|afternoon)(?:['’]s)?)"
    rf"|(?P<amount>\d+|an?|{_COUNT_WORDS}|(?:a )?(?:few|couple(?: of)?)) "
    r"(?P<unit>day|week|month|year)s? (?:ago|back)"
    r"|the other day|last (?:time|week|weekend|month|season|year|\w+day)(?:['’]s)?)(?!\w)",
    re.IGNORECASE,
)
_EARLIER: Final = re.compile(
    r"\b(?:(?:from |a bit )?(?<!same as )(?<!like )(?<!than )earlier(?: on)?(?: today)?(?! than)"
    r"|(?:a|some) (?:while|time) (?:ago|back)|from before"
    r"|(?=an? old(?:er)? (?:frame|shot|picture|photo|image|one)))\b",
    re.IGNORECASE,
)
#: What is said of now is not said of then.
_NOW: Final = re.compile(
    r"\b(?:now|just took|just taken|at the moment|currently|at present|still)\b", re.IGNORECASE
)

_DAY_UNITS: Final = {"day": 1.0, "week": 7.0, "month": 30.0, "year": 365.0}
#: "Last week" and its like: longer ago than anybody stays at the water [days] (own rule).
_SOME_DAYS: Final = 2.0
_EDGES: Final = " ,;:-\t"

_Found = tuple[re.Match[str], When] | None


def split_moment(text: str) -> tuple[str, When | None]:
    """A message without the words that tell when it was, and what they tell.

    Args:
        text: the message as typed.

    Returns:
        The rest, and the moment; the whole message and None where it tells of now or no time.
    """
    if _NOW.search(text):
        return text, None
    for find in (_days, _ago, _clock, _part, _earlier):
        found = find(text)
        if found is not None:
            match, when = found
            before, behind = text[: match.start()].rstrip(_EDGES), text[match.end() :]
            return f"{before} {behind.strip(_EDGES)}".strip(), when
    return text, None


def _days(text: str) -> _Found:
    match = _DAYS.search(text)
    if match is None:
        return None
    days = 1.0 if match["one"] else _SOME_DAYS
    if match["amount"]:
        days = _number(match["amount"]) * _DAY_UNITS[match["unit"].casefold()]
    return match, When(WhenKind.DAYS, match.group().casefold(), days)


def _ago(text: str) -> _Found:
    match = _AGO.search(text)
    if match is None:
        return None
    amount = _number(match["amount"]) + (0.5 if match["before"] or match["behind"] else 0.0)
    hours = match["unit"].casefold().startswith("h")
    minutes = amount * (60.0 if hours else 1.0) + float(match["more"] or 0.0)
    return match, When(WhenKind.AGO, match.group().casefold(), minutes)


def _number(words: str) -> float:
    """A count in digits or words; `half an`, `a couple of` too."""
    if words[0].isdigit():
        return float(words.replace(",", "."))
    return _COUNTS[[word for word in words.casefold().split() if word in _COUNTS][-1]]


def _clock(text: str) -> _Found:
    past = bool(_WAS.search(text)) and not _PLANNED.search(text)
    noted = None if _PLANNED.search(text) else _NOTED.match(text)
    match = noted or (_CLOCK.search(text) if past else None)
    if match is None or not (match["minute"] or match["half"]):
        return None
    hour, half = int(match["hour"]), (match["half"] or "").casefold()
    either = not half and 1 <= hour < 12 and not match["hour"].startswith("0")
    if half and hour:
        hour = in_half(hour, half)
    minute = int(match["minute"] or 0)
    words = f"{hour:02d}:{minute:02d}"
    return match, When(WhenKind.CLOCK, words, 60.0 * hour + minute, either)


def _part(text: str) -> _Found:
    match = _PART.search(text)
    if match is None or text.rstrip().endswith("?") or (match["at"] and not _WAS.search(text)):
        return None
    return match, When(WhenKind.PART, (match["this"] or match["at"]).casefold())


def _earlier(text: str) -> _Found:
    match = None if text.rstrip().endswith("?") else _EARLIER.search(text)
    return None if match is None else (match, When(WhenKind.EARLIER, "earlier"))
