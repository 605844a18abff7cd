"""Numbers of the cold as typed: air and wind, the temperature of water, hands in it."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.folding import folded
from bot.dialogue.reading.numbers import METRES_A_SECOND
from bot.dialogue.tongues import in_any, whole_words
from core.trip import celsius_of

#: A temperature with its word: "-3 degrees", "20 F", "8 °C", "5 unter Null". Folding drops signs.
_DEGREES: Final = re.compile(
    rf"(?<![\w/.,-])(?P<below>[-−–]|{in_any('cold_numbers.minus')} )?"
    r"(?P<number>\d{1,2}(?:[.,]\d)?) ?"
    rf"(?P<scale>°? ?[cf]\b(?![/\d])|°|{in_any('cold_numbers.degrees')}\b"
    r"(?: ?(?:celsius|fahrenheit|[cf]\b))?"
    rf"|(?P<zero>{in_any('cold_numbers.below_zero')}\b)|(?(below)(?![\w/.])|(?!)))"
    rf"(?P<after> {in_any('cold_numbers.below_zero')})?"
)
_KNOT_MPS: Final = 1852 / 3600  # exact: the international knot
_WINDS: Final = METRES_A_SECOND | {"knots": _KNOT_MPS}
_WIND: Final = re.compile(
    r"(?<![\w/.,-])(?P<number>\d{1,3}(?:[.,]\d)?) ?"
    rf"(?:(?P<kmh>km ?/ ?h|kmh|kph|{in_any('cold_numbers.km_an_hour')})|(?P<mph>mph)"
    rf"|(?P<mps>m/s|mps)|(?P<knots>kn|kts?|{in_any('cold_numbers.knots')}))(?!\w)"
)
_UNITS: Final = {"kmh": "km/h", "mph": "mph", "mps": "m/s", "knots": "knots"}
_WIND_WORD: Final = whole_words("cold_numbers.wind")
_CHILL_ASKED: Final = whole_words("cold_numbers.chill_asked")
_WATER: Final = whole_words("cold_numbers.water")
_HANDS: Final = rf"\b{in_any('cold_numbers.hands')}\b"
_HANDS_ASKED: Final = re.compile(
    rf"\b{in_any('cold_numbers.how_long')}\b.*{_HANDS}"
    rf"|{_HANDS}.*\b{in_any('cold_numbers.how_long_behind')}\b"
)
_COLD_WATER: Final = whole_words("cold_numbers.cold_water")
#: Where the formula ends.
_MOST_WIND_KMH: Final = 320.0
_COLDEST_C: Final = -75.0
#: No stream is colder or warmer (own rule) [degC].
_STREAM_C: Final = (-2.0, 45.0)


class Air(NamedTuple):
    """Air and wind, and whether they were told in °F or mph."""

    air_c: float
    wind_kmh: float
    fahrenheit: bool


class Water(NamedTuple):
    """Cold water; its temperature where it was told."""

    water_c: float | None
    fahrenheit: bool


def air_and_wind(text: str) -> Air | None:
    """The temperature and the wind that a message tells; None where one of them is missing."""
    said = text.casefold()
    degrees, wind = _DEGREES.search(said), _WIND.search(said)
    if degrees is None or wind is None or not _of_wind(said):
        return None
    unit = next(_UNITS[name] for name in _UNITS if wind[name])
    wind_kmh = min(_number(wind["number"]) * _WINDS[unit] * 3.6, _MOST_WIND_KMH)
    fahrenheit = _is_fahrenheit(degrees, bare=unit == "mph")
    return Air(max(_celsius(degrees, fahrenheit=fahrenheit), _COLDEST_C), wind_kmh, fahrenheit)


def without_degrees(text: str) -> str:
    """A message without its temperature, which elsewhere may be read as something else."""
    return _DEGREES.sub(" ", text.casefold())


def _of_wind(said: str) -> bool:
    plain = folded(said)
    return _WIND_WORD.search(plain) is not None or _CHILL_ASKED.search(plain) is not None


def asks_of_chill(text: str) -> bool:
    """Whether a message asks how cold it feels in the wind."""
    said = folded(text)
    return _CHILL_ASKED.search(said) is not None and _of_wind(said)


def cold_water(text: str) -> Water | None:
    """Water whose temperature is told, or in which hands are; None where no water is named so."""
    said = folded(text)
    degrees = _DEGREES.search(text.casefold())
    hands = _HANDS_ASKED.search(said) is not None
    if _WATER.search(said) is None or not (hands or (degrees and _is_short(said))):
        return None
    if degrees is None:
        return Water(None, fahrenheit=False) if _COLD_WATER.search(said) else None
    fahrenheit = _is_fahrenheit(degrees, bare=False)
    water_c = _celsius(degrees, fahrenheit=fahrenheit)
    return Water(water_c, fahrenheit) if _STREAM_C[0] <= water_c <= _STREAM_C[1] else None


def asks_of_hands(text: str) -> bool:
    """Whether a message asks how long hands are of use."""
    return _HANDS_ASKED.search(folded(text)) is not None


#: "The water has 6 degrees, is that cold?" is of the water; in more words it may be of much (own
#: rule) [words].
_SHORT: Final = 12


def _is_short(said: str) -> bool:
    return len(said.split()) <= _SHORT


def _number(said: str) -> float:
    return float(said.replace(",", "."))


def _is_fahrenheit(degrees: re.Match[str], *, bare: bool) -> bool:
    scale = degrees["scale"]
    if scale.endswith(("f", "fahrenheit")):
        return True
    return bare and not scale.endswith(("c", "celsius"))


def _celsius(degrees: re.Match[str], *, fahrenheit: bool) -> float:
    below = degrees["below"] or degrees["zero"] or degrees["after"]
    value = -_number(degrees["number"]) if below else _number(degrees["number"])
    return celsius_of(value) if fahrenheit else value
