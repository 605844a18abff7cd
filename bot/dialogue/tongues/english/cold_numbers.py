"""English words of the cold: air and wind, cold water, hands in it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cold_numbers.minus": r"minus",
    "cold_numbers.degrees": r"degrees?",
    "cold_numbers.below_zero": r"below(?: zero)?",
    "cold_numbers.km_an_hour": r"kilomet\w+ (?:per|an) hour",
    "cold_numbers.knots": r"knots?",
    "cold_numbers.wind": r"wind\w*|gusts?|breeze",
    "cold_numbers.chill_asked": r"wind ?chill|(?<!\bi )(?<!\bwe )feels? like|how cold",
    "cold_numbers.water": r"water|creek|stream|river|pool",
    # "How long can hands …", "hands in there, how long".
    "cold_numbers.how_long": r"how long|how many minutes",
    "cold_numbers.how_long_behind": r"how long",
    "cold_numbers.hands": r"hands?|fingers?",
    "cold_numbers.cold_water": (
        r"(?:cold|icy|freezing|ice cold) (?:water|creek|stream|river|pool)|(?:water"
        r"|creek) is (?:cold|icy)"
    ),
}
