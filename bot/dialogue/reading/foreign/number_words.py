"""Numbers of German and Spanish messages in digits, small ones in English words."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue.reading.foreign import german_numbers, spanish_numbers
from bot.dialogue.reading.foreign.numerals import LENGTH, SMALL, VALUE, Rules, digits

#: "2,8", but neither "f8,11" nor "iso 100,24mm".
_DECIMAL: Final = re.compile(
    r"(?<![\d.,/])(\d{1,3}),(\d{1,2})"
    r"(?:(?![\d/]|,\d|[^\W\d_]|\w* ?mm\b)|(?= ?(?:m|cm|km|s|sek)\b))"
)
_SAID_POINT: Final = re.compile(rf"\b({VALUE}) (?:komma|coma|punkt|punto) ({VALUE})\b(?! de )")
#: "Uno entre ocho", "eins durch sechzig".
_SAID_OVER: Final = re.compile(
    rf"\b(?:one|1|eins|ein|uno?) (?:durch|entre|partido(?: por| entre)?|sobre) ({VALUE})\b"
    rf"(?! ?(?:{LENGTH}|y)\b)"
)
_BEFORE_POINT: Final = re.compile(rf"\b({'|'.join(SMALL)})(?=\.\d| \d/\d)")
#: "Acht bis zehn Meter", "entre ocho y diez metros".
_RANGE: Final = re.compile(
    rf"\b(?:(?:de|von) )?({VALUE}) (?:bis|a|o|oder) ({VALUE})(?= ?(?:{LENGTH}|feet)\b)"
    rf"|\b(?:entre|zwischen) ({VALUE}) (?:y|und) ({VALUE})(?= ?(?:{LENGTH}|feet)\b)"
)
_TURN: Final[Mapping[str, tuple[Callable[[str], str], Rules]]] = {
    "de": (german_numbers.german_words, german_numbers.JOINTS),
    "es": (spanish_numbers.spanish_words, spanish_numbers.JOINTS),
}


def in_english(text: str, language: str) -> str:
    """The message with its number words as digits, or as English words up to ten.

    Args:
        text: in lower case; Spanish without accents.
        language: "de" or "es".
    """
    turn, joints = _TURN[language]
    text = turn(_DECIMAL.sub(r"\1.\2", text))
    text = _RANGE.sub(_ranged, _SAID_POINT.sub(_pointed, text))
    text = _SAID_OVER.sub(lambda match: f"1/{digits(match[1])} s", text)
    for pattern, replacement in joints:
        text = pattern.sub(replacement, text)
    return _BEFORE_POINT.sub(lambda match: digits(match.group()), text)


def _pointed(match: re.Match[str]) -> str:
    return f"{digits(match.group(1))}.{digits(match.group(2))}"


def _ranged(match: re.Match[str]) -> str:
    low, high = (digits(said) for said in match.groups() if said)
    return f"{low}-{high}"
