"""A forecast by its hours: `partly cloudy til noon, then overcast, light rain after 3`."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from bot.dialogue.reading.day_times import in_half
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.trip import Sky, Spell

#: The more special stand first: "partly cloudy" holds "cloudy".
_KINDS: Final[tuple[Sky, ...]] = ("partly", "storm", "rain", "overcast", "cloud", "sun")
_SKY: Final = "|".join(rf"(?P<{kind}>{in_any(f'sky_hours.{kind}')})" for kind in _KINDS)
#: From when and until when parts of the day are (own rule).
_PARTS: Final[dict[str, tuple[str, str | None]]] = {
    "evening": ("17:00", None),
    "noon": ("12:00", None),
    "afternoon": ("12:00", "17:00"),
    "morning": ("", "12:00"),
}
_PART: Final = "|".join(rf"(?P<{name}>{in_any(f'sky_hours.{name}')})" for name in _PARTS)
_LINK: Final = rf"(?:(?P<until>{in_any('sky_hours.until')})|(?P<since>{in_any('sky_hours.since')}))"
_HOUR: Final = (
    r"(?:(?:about|around|around|etwa|ca|las?|the|los|gegen) )*"
    r"(?P<hour>\d{1,2})(?:[:.h](?P<minute>[0-5]\d))?"
    rf"(?: ?(?P<half>[ap])\.?m\b\.?| ?{in_any('sky_hours.oclock')}\b)?"
    r"(?![\w/:°%]|[.,]\d| ?(?:km|m|mi|miles?|ft|feet|min\w*|mm|deg\w*|grad|grados|days?|tagen?"
    r"|días|stops?|%|°)(?!\w))"
)
_EVENT: Final = re.compile(
    rf"(?<!\w)(?:(?:{_LINK} (?:the )?)?(?:(?:{_PART})(?!\w)|(?<=\s){_HOUR})|(?:{_SKY})(?!\w))"
)
#: A clause ends, too, before "and" with a time behind it: "overcast and after 3 rain".
_BORDER: Final = re.compile(
    rf"[,;!?]|\.(?=\s|$)|\b{in_any('sky_hours.then')}\b"
    rf"|\b{in_any('sky_hours.and')}\b(?= (?:{_LINK} (?:the )?)?(?:{_PART}|\d{{1,2}})(?!\w))"
)
_NO: Final = re.compile(rf"\b{in_any('sky_hours.no')} (?:\w+ )?$")
_OTHER: Final = whole_words("sky_hours.other")
_RAIN: Final = whole_words("sky_hours.rain")
_COLD: Final = whole_words("sky_hours.cold")
#: An hour below this, told without its half of the day, is one after noon (own rule: the hours
#: of a day's walk).
_AFTERNOON_BELOW_H: Final = 7
_LAST_H: Final = 23


@dataclass(frozen=True)
class _Time:
    """From when, and until when, where it is told; "" is the beginning of the day."""

    since: str | None
    until: str | None
    start: int
    end: int


@dataclass(frozen=True)
class _Seen:
    """A kind of sky."""

    sky: Sky


_Event = _Time | _Seen


def spells_in(text: str) -> tuple[Spell, ...]:
    """The spells of a day's sky in their order; () where a message tells none by the hour.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    spells: list[Spell] = []
    timed = False
    since: str | None = ""
    for segment in _segments(said):
        found, since = _spells_of(segment, since)
        timed = timed or any(isinstance(event, _Time) for event in segment if found)
        spells += found
    return tuple(sorted(spells, key=lambda spell: spell.since)) if timed else ()


def without_hours(text: str) -> str:
    """A message without the hours of its forecast, which elsewhere may be read as lengths.

    Args:
        text: in English; only where it tells spells.
    """
    said = plain(text)
    if not spells_in(said):
        return text
    hours = [event for segment in _segments(said) for event in segment if isinstance(event, _Time)]
    for hour in sorted(hours, key=lambda one: -one.start):
        said = said[: hour.start] + said[hour.end :]
    return said


def tells_rain(text: str) -> bool:
    """Whether a message tells of rain, and does not deny it."""
    return _tells(_RAIN, text)


def tells_cold(text: str) -> bool:
    """Whether a message tells of cold, and does not deny it."""
    return _tells(_COLD, text)


def _tells(words: re.Pattern[str], text: str) -> bool:
    said = plain(text)
    return any(not _NO.search(said[: match.start()]) for match in words.finditer(said))


def _segments(said: str) -> Iterator[list[_Event]]:
    """The events of each clause; a clause about a start or a bus tells of no sky."""
    start = 0
    for end in [*(match.start() for match in _BORDER.finditer(said)), len(said)]:
        clause = said[start:end]
        if not _OTHER.search(clause):
            yield [event for match in _EVENT.finditer(clause) for event in _event(match, start)]
        start = end


def _event(match: re.Match[str], offset: int) -> Iterator[_Event]:
    found = match.groupdict()
    kind = next((kind for kind in _KINDS if found[kind]), None)
    if kind is not None:
        if not _NO.search(match.string[: match.start()]):
            yield _Seen(kind)
        return
    time = _time(found)
    if time is not None and (found["until"] or found["since"] or not found["hour"]):
        start, end = match.span()
        yield _Time(*time, start + offset, end + offset)


def _time(found: dict[str, str | None]) -> tuple[str | None, str | None] | None:
    """From when and until when an hour or a part of the day tells; None for no hour."""
    part = next((name for name in _PARTS if found[name]), None)
    if part is not None:
        begins, ends = _PARTS[part]
        return (None, begins or ends) if found["until"] else (begins, ends)
    hour = int(found["hour"] or 0)
    if found["half"]:
        hour = in_half(hour, found["half"])
    elif 0 < hour < _AFTERNOON_BELOW_H:
        hour += 12
    at = f"{hour:02d}:{int(found['minute'] or 0):02d}"
    if hour > _LAST_H:
        return None
    return (None, at) if found["until"] else (at, None)


def _spells_of(events: list[_Event], since: str | None) -> tuple[list[Spell], str | None]:
    """The spells of one clause, and from when the next one is where it does not say.

    A time that stands first belongs to the sky behind it, any other to the one before it.
    """
    spells: list[Spell] = []
    ahead = events[0] if events and isinstance(events[0], _Time) else None
    for place, event in enumerate(events):
        if isinstance(event, _Time):
            continue
        behind = events[place + 1] if place + 1 < len(events) else None
        time = ahead or (behind if isinstance(behind, _Time) else None)
        ahead = None
        begins = time.since if time is not None and time.since is not None else since
        since = time.until if time is not None else None
        if begins is not None:
            spells.append(Spell(since=begins, sky=event.sky))
    return spells, since
