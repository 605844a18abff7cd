"""Own words for a visit: the day to come, the place, who goes, the car and where it stands."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import any_of, plain
from bot.dialogue.tongues import TONGUES, in_any, whole_words
from bot.dialogue.tongues.pieces import NAME

#: From Monday on.
_DAYS: Final = tuple(
    in_any(f"visit_words.{day}")
    for day in ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
)
_DAY: Final = "|".join(_DAYS)
#: "Heute Morgen" and "por la mañana" are no tomorrow.
TOMORROW: Final = in_any("visit_words.tomorrow")
AFTER_TOMORROW: Final = in_any("visit_words.after_tomorrow")
_SOMEDAY: Final = rf"{in_any('visit_words.coming')} {in_any('visit_words.week')}"
_TO_COME: Final = any_of(AFTER_TOMORROW, TOMORROW, _SOMEDAY, _DAY)
#: What is said of a visit to come, and not only of a day.
_VISIT: Final = whole_words("visit_words.visit")
#: A wish for such a day, whatever it is for; who does it already does not wish it.
_WISHED: Final = whole_words("visit_words.wished")
_DOING: Final = whole_words("visit_words.doing")
_ANOTHER_DAY: Final = any_of(AFTER_TOMORROW, TOMORROW, _SOMEDAY)
_PAST: Final = whole_words("visit_words.past")


def speaks_of_day_to_come(text: str) -> bool:
    """Whether a message speaks of a visit on a day to come.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    if _PAST.search(said):
        return False
    return _TO_COME.search(said) is not None and _VISIT.search(said) is not None


def wishes_for_day_to_come(text: str) -> bool:
    """Whether a message wishes something for tomorrow or later, and is about nothing of now.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = plain(text)
    if _PAST.search(said) or _DOING.search(said):
        return False
    return _ANOTHER_DAY.search(said) is not None and _WISHED.search(said) is not None


def days_ahead(text: str, weekday: int) -> int | None:
    """In how many days a visit is that a message speaks of; None where it names no day.

    Args:
        text: as typed.
        weekday: of today, Monday is 0.
    """
    said = plain(text)
    if re.search(rf"\b{AFTER_TOMORROW}\b", said):
        return 2
    if re.search(rf"\b{TOMORROW}\b", said):
        return 1
    named = re.search(rf"\b(?:{_DAY})\b", said)
    if named is None:
        return None
    number = next(n for n, day in enumerate(_DAYS) if re.fullmatch(day, named.group()))
    return (number - weekday - 1) % 7 + 1


_NAMES: Final = (
    rf"(?P<name>{NAME}(?: (?:{in_any('visit_words.in_a_name')} )*{NAME}){{0,3}}"
    rf"(?: {in_any('visit_words.kind_of_place')})?)"
)
_PLACES: Final = tuple(
    re.compile(rf"\b(?:{words[name]}){_NAMES}")
    for words in TONGUES.values()
    for name in ("visit_words.to_place", "visit_words.plan_of_place")
)
#: Names of no place.
_NO_PLACE: Final = re.compile(in_any("visit_words.no_place"))
_MONTHS_AND_DAYS: Final = re.compile(
    rf"(?:{_DAY}|{in_any('visit_words.no_place_of_time')})\b", re.IGNORECASE
)
#: Longest piece of a person's own words in a text to hand on [characters] (own rule).
_LONGEST: Final = 80


def place_in(text: str) -> str:
    """The name of the place to go to, "" where none is told.

    Args:
        text: as typed.
    """
    for pattern in _PLACES:
        for match in pattern.finditer(text):
            name = match["name"]
            if not (_NO_PLACE.fullmatch(name) or _MONTHS_AND_DAYS.match(name)):
                return name[:_LONGEST]
    return ""


_PARTY: Final = re.compile(rf"\b{in_any('visit_words.party')}")
#: Who stays at home, or is written to.
_WAITS: Final = whole_words("visit_words.waits")
#: Things that somebody carries.
_NO_PARTY: Final = whole_words("visit_words.no_party")


def party_in(text: str) -> str:
    """Who goes, in the person's words: `me and my father`; "" where they do not say.

    Args:
        text: as typed.
    """
    match = _PARTY.search(text)
    if match is None or _WAITS.search(plain(text)) or _NO_PARTY.search(plain(match.group())):
        return ""
    return re.sub(r"^(?:taking|bringing) ", "", match.group())[:_LONGEST]


_KIND: Final = rf"(?:\w+ )?{in_any('visit_words.car')}(?: {in_any('visit_words.colour')})?"
_STANDS: Final = rf"(?:{in_any('visit_words.is')}? ?{in_any('visit_words.stands')}?)"
_AT: Final = in_any("visit_words.at")
#: "At half past nine" is no place.
_NO_HOUR: Final = rf"(?!\d|{in_any('visit_words.hour')}\b)"
_CAR: Final = re.compile(
    rf"\b(?:{in_any('visit_words.mine')} )?(?P<kind>{_KIND})\b{_STANDS}"
    rf"(?: (?P<where>{_AT} {_NO_HOUR}[^,.;!?]+)|(?P<lot>, {in_any('visit_words.lot')}\b[^,.;!?]*))",
    re.IGNORECASE,
)
_PARKED: Final = re.compile(
    rf"\b{in_any('visit_words.we_park')}(?P<where> {_AT} {_NO_HOUR}[^,.;!?]+)", re.IGNORECASE
)
#: What may follow: colour, make, plate; no clause with a verb of its own, no measure.
_FOLLOWS: Final = re.compile(rf", (?P<more>(?!{in_any('visit_words.clause')}\b)[^,.;!?]+)")
_MEASURED: Final = re.compile(rf"\d ?(?:{in_any('visit_words.measure')}|:\d)\b", re.IGNORECASE)
#: Kit and clothes in a car say nothing of where it stands.
_IN_CAR: Final = whole_words("visit_words.in_car")
#: Words that say nothing of how a car looks.
_ANY_CAR: Final = re.compile(in_any("visit_words.any_car"), re.IGNORECASE)


def _placed(match: re.Match[str]) -> str:
    """Where it stands, behind what it is where that says more than "car"."""
    told = match.groupdict()
    where = (told.get("where") or "").strip()
    kind = told.get("kind") or ""
    if told.get("lot"):
        return f"{kind}{told['lot']}"
    return where if not kind or _ANY_CAR.fullmatch(kind) else f"{kind} {where}"


def car_in(text: str) -> str:
    """Where the car stands and how it looks, in the person's words; "" where it is not told.

    Args:
        text: as typed.
    """
    if _IN_CAR.search(plain(text)):
        return ""
    match = _CAR.search(text) or _PARKED.search(text)
    if match is None:
        return ""
    where = _placed(match)
    more = _FOLLOWS.match(text, match.end())
    plain_more = more is not None and not _MEASURED.search(more["more"])
    told = f"{where}, {more['more'].strip()}" if more is not None and plain_more else where
    return told[:_LONGEST].strip(" ,")
