"""Numbers as they stand in a message once its number words were turned."""

from __future__ import annotations

import re
from typing import Final, TypeAlias

#: Patterns and what is put in their place, in this order.
Rules: TypeAlias = tuple[tuple[re.Pattern[str], str], ...]
#: Up to ten numbers stay words, which the reader takes for measures beside a unit alone.
SMALL: Final = (
    *("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"),
)
#: A number as it stands after the number words were turned.
VALUE: Final = rf"(?:\d+(?:\.\d+)?|{'|'.join(SMALL)})"
#: Lengths by the names of both languages.
LENGTH: Final = r"(?:m|cm|km|metern?|metros?|zentimetern?|centimetros?|kilometern?|kilometros?)"
#: Centimetres behind metres: "ein Meter zwanzig".
TENS_OF_CM: Final = r"([1-9]\d)(?![\d/:]|[.,]\d)"
#: What no centimetre stands before: "zwei Meter 50 mm".
NO_UNIT: Final = rf"(?! ?(?:{LENGTH}|mm|s|sek\w*|seg\w*|iso|grad|prozent|hm|blenden?|pasos?)\b| ?%)"
#: From a fifth on a part of nothing named is one of a second.
SURE_TIME: Final = 5  # own rule
#: A third of nothing named is one of stops.
THIRD: Final = 3


def rules(*pairs: tuple[str, str]) -> Rules:
    """Patterns, compiled, with what is put in their place."""
    return tuple((re.compile(pattern), replacement) for pattern, replacement in pairs)


def shown(value: int) -> str:
    """A number as the message shows it from now on."""
    return SMALL[value] if value < len(SMALL) else str(value)


def digits(said: str) -> str:
    """The digits of a number as `VALUE` finds it."""
    return str(SMALL.index(said)) if said in SMALL else said


def value_of(said: str) -> float:
    """The value of a number as `VALUE` finds it."""
    return float(digits(said))
