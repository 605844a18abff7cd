"""Which language is being spoken: laid around an answer, as `decimal` does with its context."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from types import MappingProxyType
from typing import Final

from babel import Locale
from babel.numbers import get_decimal_symbol

ENGLISH: Final = "en"

#: Languages by their codes (ISO 639-1), with the locale of the Unicode CLDR whose numbers and
#: dates are used. English follows Britain's: the day stands before its month.
LANGUAGES: Final[Mapping[str, str]] = MappingProxyType({ENGLISH: "en_GB", "de": "de", "es": "es"})

_SPOKEN: Final[ContextVar[str]] = ContextVar("language", default=ENGLISH)
#: Whether times of day are told in halves of the day, am and pm.
_HALVES: Final[ContextVar[bool]] = ContextVar("halves", default=False)


def spoken_language() -> str:
    """The code of the language that is being spoken, English where nobody said otherwise."""
    return _SPOKEN.get()


@contextmanager
def speaking(language: str, *, halves: bool = False) -> Iterator[None]:
    """Speak a language until the end of the block; English in place of one that is not known.

    Args:
        language: its code.
        halves: times of day are told with am and pm.
    """
    token = _SPOKEN.set(language if language in LANGUAGES else ENGLISH)
    halves_token = _HALVES.set(halves)
    try:
        yield
    finally:
        _HALVES.reset(halves_token)
        _SPOKEN.reset(token)


def speaks_of_halves() -> bool:
    """Whether times of day are told with am and pm."""
    return _HALVES.get()


#: The second half of the day begins.
_NOON_H: Final = 12
#: A time of day in a text, as it is written there: an example of what may be typed.
_WRITTEN: Final = re.compile(r"(?<![\d:])([01]?\d|2[0-3]):([0-5]\d)(?![\d:])")


def in_halves(hour: int, minute: int) -> str:
    """A time of day with am or pm: `6:40 pm`."""
    return f"{hour % 12 or 12}:{minute:02d} {'pm' if hour >= _NOON_H else 'am'}"


def with_hours_spoken(text: str) -> str:
    """A text with the times of day that stand in it as the person tells times."""
    if not _HALVES.get():
        return text
    return _WRITTEN.sub(lambda time: in_halves(int(time[1]), int(time[2])), text)


#: A time as a dial shows it, with parts of a second: `0.3 s`.
_DIAL_TIME: Final = re.compile(r"(?<![\d/.,])(\d+)\.(\d+)(?= s\b)")


def with_times_spoken(text: str) -> str:
    """A text with parts of a second behind the decimal sign of the language: `0,3 s`."""
    sign = get_decimal_symbol(spoken_locale())
    return text if sign == "." else _DIAL_TIME.sub(rf"\1{sign}\2", text)


def go_on_in(language: str) -> None:
    """Speak another language for the rest of the block that `speaking` opened."""
    _SPOKEN.set(language)


@cache
def locale_of(language: str) -> Locale:
    """The locale whose numbers and dates go with a language."""
    return Locale.parse(LANGUAGES[language])


def spoken_locale() -> Locale:
    """The locale whose numbers and dates go with the language that is being spoken."""
    return locale_of(spoken_language())
