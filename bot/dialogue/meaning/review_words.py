"""What a message wants of a review at home: an intent, a choice, next time; in any language."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.visit_words import AFTER_TOMORROW, TOMORROW
from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.reading.spoken_numbers import SIMPLE
from bot.dialogue.tongues import in_any, whole_words

#: An intent is kept no longer than this [characters] (own rule: one line).
_LONGEST_INTENT: Final = 90
_INTENT: Final = re.compile(
    rf"\b{in_any('review_words.intent')}[ :,]*(?P<intent>[^\W\d][^.;!?\n]*)", re.IGNORECASE
)
_KEEP: Final = whole_words("review_words.keep")
_OF_TAKEN: Final = whole_words("review_words.of_taken")
_HOW: Final = whole_words("review_words.how")
_COPIED: Final = whole_words("review_words.copied")
_NOT_YET: Final = re.compile(rf"\b{in_any('review_words.not_yet')}\b[^.;!?]*$")
_EQUAL: Final = whole_words("review_words.equal")
_DROPPED: Final = any_of(rf"{in_any('review_words.dropped')}(?! me\b)")
_TAKEN: Final = whole_words("review_words.taken")
_NEXT_TIME: Final = whole_words("review_words.next_time")
_LOG: Final = whole_words("review_words.log")
_FOCUS: Final = re.compile(
    rf"\b{in_any('review_words.focus')}(?: {in_any('review_words.was')})?"
    rf" {in_any('review_words.on')} (?:about )?"
    rf"(?P<at>\d+(?:\.\d+)?|{'|'.join(SIMPLE)})\b(?P<unit> ?(?:m|met\w+|ft|feet|foot)\b)?"
    r"(?! ?(?:mm|the|rock|water))"
)
_PLACE: Final = re.compile(
    rf"\b(?:(?:[A-ZÄÖÜ][\w'-]+ ){{1,3}}{in_any('review_words.water_behind')}\b"
    rf"|{in_any('review_words.water_before')} [A-ZÁÉÍÓÚÑ]\w+)"
)
#: What opens a sentence is no part of a name.
_OPENS: Final = re.compile(rf"^{in_any('review_words.opens')} ")
_AHEAD: Final = any_of(AFTER_TOMORROW, rf"{TOMORROW}(?! war)", in_any("review_words.ahead"))


def intent_of(text: str) -> str | None:
    """What a message says that a picture was to show, in its own words; None where it does not.

    Args:
        text: as typed, in any of Linn's languages.
    """
    match = _INTENT.search(" ".join(text.replace("’", "'").split()))
    if match is None or "?" in text:
        return None
    said = match["intent"].strip(" ,:")
    return said if len(said) <= _LONGEST_INTENT else said[:_LONGEST_INTENT].rsplit(" ", 1)[0] + " …"


def asks_to_choose(text: str) -> bool:
    """Whether a message asks which of the frames to keep."""
    said = plain(text)
    wants = _KEEP.search(said) is not None or _HOW.search(said) is not None
    return wants and not _NEXT_TIME.search(said)


def speaks_of_taken(text: str) -> bool:
    """Whether a message speaks of frames that are taken, and not of times to set."""
    return _OF_TAKEN.search(plain(text)) is not None


def asks_how_to_choose(text: str) -> bool:
    """Whether a message asks by what a frame is chosen."""
    return _HOW.search(plain(text)) is not None


def tells_of_copies(text: str) -> bool:
    """Whether a message tells that the frames are copied, and not that they still are to be."""
    match = _COPIED.search(plain(text))
    return match is not None and not _NOT_YET.search(match.string[: match.start()])


def asks_for_equal(text: str) -> bool:
    """Whether a message asks how to make frames equally bright."""
    return _EQUAL.search(plain(text)) is not None


def drops(text: str) -> bool:
    """Whether a message takes frames back that were told, or tells that they are deleted."""
    return _DROPPED.search(plain(text)) is not None


def asks_for_next_time(text: str) -> bool:
    """Whether a message asks what to do differently another time."""
    return _NEXT_TIME.search(plain(text)) is not None


def asks_for_log(text: str) -> bool:
    """Whether a message asks for a line for the log."""
    return _LOG.search(plain(text)) is not None


#: How the water stood, as it is told for a log.
_CONDITIONS: Final = re.compile(
    r"\b(?:gauge|after (?:\w+ ){0,4}rain|(?:low|high) water|snow ?melt|in spate)\b[^;!?,]*?"
    r"(?=\s*(?:[;!?,]|\.(?!\d)|$))",
    re.IGNORECASE,
)


def conditions_of(text: str) -> str:
    """What a message tells of gauge, rain and level, in its own words."""
    return ", ".join(match.group().strip() for match in _CONDITIONS.finditer(text))


def tells_of_taken(text: str) -> bool:
    """Whether a message tells of frames that were taken, and of no walk to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    return _TAKEN.search(said) is not None and not looks_ahead(text)


def looks_ahead(text: str) -> bool:
    """Whether a message speaks of a walk that is still to come."""
    return _AHEAD.search(plain(text)) is not None


def focus_told(said: str) -> tuple[float, str] | None:
    """Where the lens was focused, as it was said: the number, and "m", "ft" or no unit.

    Args:
        said: the message in English, as `plain_times` leaves it.
    """
    match = _FOCUS.search(said)
    if match is None:
        return None
    unit = (match["unit"] or "").strip()
    return float(SIMPLE.get(match["at"], match["at"])), unit and ("ft" if unit[0] == "f" else "m")


def place_named(text: str) -> str | None:
    """The name of a fall or stream that stands in a message, as typed."""
    match = _PLACE.search(text)
    if match is None:
        return None
    return _OPENS.sub("", match.group())
