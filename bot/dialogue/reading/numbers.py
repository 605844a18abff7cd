"""Numbers with their units, found once in a message; each is claimed by one reader at most."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from bot.dialogue.reading.unit_words import CENTIMETRE, FOOT, INCH, KILOMETRE, MILE, YARD


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number of the message with what stands before or behind it as its unit.

    `unit` is one of: "" (bare), "f", "iso", "nd", "mm", "s", "min", "h", "m", "cm", "ft", "in",
    "yd", "km", "mi", "stop", "click", "mp", "m/s", "ft/s", "km/h", "mph", "x".
    """

    value: float
    unit: str
    start: int
    end: int
    text: str
    high: float | None = None  # upper end of a range; None: no range
    signed: bool = False
    fraction: bool = False

    @property
    def is_range(self) -> bool:
        """Whether two numbers were typed as one range."""
        return self.high is not None


#: Metres a second per unit (exact by definition).
METRES_A_SECOND: Final = {"m/s": 1.0, "ft/s": 0.3048, "km/h": 1 / 3.6, "mph": 0.44704}

_SECOND: Final = r"(?:s|secs?|sek|seconds?(?![ -]hand))"
#: Marks of the ISO series: "24-105 iso 100" is not 105 ISO.
_ISO_MARK: Final = (
    r"25|32|40|50|64|80|100|125|160|200|250|320|400|500|640|800|1000|1250|1600|2000|2500|3200"
    r"|4000|5000|6400|8000|10000|12800|25600"
)
_LINK: Final = (
    r"(?: (?:of|is|at|on|to|down to|about|around|back to|now|set|landed|picked|chose|went"
    r"|diall?ed|in|was|still|left|stuck|sitting|wide|open|fully)|'s| ?[=:])*"
)
#: Spelling of each unit; earlier ones win. Misspellings that were seen are listed, no others.
_UNITS: Final[tuple[tuple[str, str], ...]] = (
    ("m/s", rf"(?:m|met(?:er|re)s?)(?: ?/ ?| per | a ){_SECOND}|mps"),
    ("ft/s", rf"(?:ft|feet|foot)(?: ?/ ?| per | a ){_SECOND}|fps"),
    ("km/h", r"km ?/ ?h|kmh|kph|km per hour"),
    ("mph", r"mph|miles (?:per|an) hour"),
    ("mm", r"mm|millimet(?:er|re)s?|mills?|mils?"),
    ("mp", r"mp|mpx|mpix|mega ?pix(?:els?)?|megs?(?! ?(?:file|of|each|per|jpe?g|raw))"),
    ("min", r"mins?|minutes?"),
    ("h", r"h|hrs?|hours?"),
    ("s", rf"{_SECOND}|of an? {_SECOND}|th of an? {_SECOND}"),
    ("cm", CENTIMETRE),
    ("km", KILOMETRE),
    ("mi", rf"mi|{MILE}"),
    ("m", r"m|mtrs?|met(?:er|re)s|met(?:er|re)(?! (?:says|reads|at|is|shows|wants)\b)|metr"),
    ("ft", FOOT),
    ("in", rf"{INCH}|in(?= (?:away|from|deep|off|high)\b)"),
    ("yd", YARD),
    ("stop", r"f-?stops?|stop(?:pers?|s)?|ev|of a stop"),
    ("click", r"clicks?"),
    ("nd", r"nds?"),
    ("iso", rf"(?:iso|asa)(?!{_LINK}[ -]*(?:{_ISO_MARK})\b)"),
    ("x", r"x"),
)
_UNIT: Final = "|".join(f"(?:{spelling})" for _, spelling in _UNITS)
#: The bare "in" is known by what follows it; cut out, nothing does.
_UNIT_NAMES: Final = (
    *((re.compile(rf"(?:{spelling})"), name) for name, spelling in _UNITS),
    (re.compile("in"), "in"),
)

_DECIMAL: Final = r"\d+\.\d+|(?<!\d,)\d+,\d{1,2}(?![\d/,])|\.\d+|\d+"
#: f-numbers have one decimal, ISO has none: "f/11,24mm" and "iso100,24mm" are two numbers each.
_F_NUMBER: Final = r"\d+\.\d+|\d,\d(?![\d/.]| ?(?:m|cm|ft|feet|s|secs?)\b)|\d+"
_WHOLE: Final = r"\d+\.\d+|\d+"
_FRACTION: Final = r"\d{1,2}/\d{1,5}(?:\.\d)?(?![\d/])"
_THOUSANDS: Final = r"\d{1,3},\d{3}(?![\d,])"
#: "1 1/3 stops": whole and fraction are one number only before a unit, and only when small,
#: so that "8 1/4 100" stays an f-number, a time and an ISO.
_MIXED: Final = (
    r"[1-4] [1-3]/[2-4](?=[ -]*(?:stops?|ev|m|ft|feet|met(?:er|re)s?|mi|miles?|km|h|hours?|min"
    r"|minutes?|days?|under|over|too|less|more|dark\w*|bright\w*)\b)"
    r"|[1-3] [1-3]/[2-4](?= ?(?:s|secs?|seconds?)\b)"
    r"|\d{1,3} (?:[13]/4|1/2)(?= ?(?:m|met(?:er|re)s?|ft|feet|foot|yards?|miles?|km)\b)"
    r"|[1-4] [12]/3(?![\d/])|(?<=[+-])[1-4] [1-3]/[2-4](?![\d/]| ?s\b| ?sec| of a s)"
)
_NUMBER: Final = rf"(?:{_MIXED}|{_FRACTION}|{_THOUSANDS}|{_DECIMAL})"
#: In "24mm -1/3 ev" the dash is the sign of what follows.
_DASH: Final = r"(?! -(?:\d/\d|[0-5](?:\.\d)?(?![\d.]))) ?- ?(?![a-z])"
_MONTH: Final = (
    r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?"
    r"|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)"
)

#: What holds digits and is no measure: links, names, dates, coordinates, phone numbers, shares.
_IGNORED: Final = (
    r"https?://\S+|[@#!]\S+:\S+"
    r"|\d{4}-\d\d-\d\d|\b\d+(?:/\d+){2,}"
    rf"|\d{{1,2}}(?:st|nd|rd|th)?(?: of)? {_MONTH}\b(?: \d{{4}})?"
    rf"|\b{_MONTH} \d{{1,2}}(?:st|nd|rd|th)?\b"
    r"|-?\d{1,3}\.\d{3,} ?,? ?-?\d{1,3}\.\d{3,}"
    r"|\b0\d{2,}(?:[ /-]\d{2,})*\b|\b\d{1,2} ?h ?[0-5]\d\b(?: ?min)?"
    r"|\b(?:call|dial|ring|phone|number|tel)(?: me| us)?(?: at| on| is)? \d{3,}(?:[ -]\d{2,})+"
    r"|\+\d[\d -]{7,}\d|\b\d{3}-\d{4}\b|\b\d{3}-\d{3}-\d{4}\b|\b\d{6,}\b"
    r"|(?!\d\d-\d{2,3} ?l\b)(?:[+-]|\b(?:minus|plus) )?(?:\d+(?:[.,]\d+)? ?- ?)?\d+(?:[.,]\d+)? ?"
    r"(?:%|°|(?:percent|degrees?|deg|kelvin|k|c|kg|lbs?|l|[ap]\.?m)\b)"
    r"|[$€£] ?\d+(?:[.,]\d+)?|\b(?:half|quarter) (?:past|to) \d{1,2}\b(?! ?(?:m|ft)\b|/)"
    r"|\d+(?:[.,]\d+)? ?(?:[$€£]|(?:euros?|eur|dollars?|bucks|usd|chf|francs?|franken|pesos?|quid"
    r"|pounds?|cents?|rappen)\b|o'? ?clock\b|years? old\b)"
    r"|\b(?:1[89]|20)\d0s\b|(?:(?<=year )|(?<=years )|(?<=those )|(?<=these )|(?<=in the )"
    r"|(?<=mid )|(?<=mid-)|(?<=low )|(?<=lower )|(?<=high )|(?<=upper )|(?<=low-)"
    r"|(?<=lower-)|(?<=high-)|(?<=upper-))\d{1,2}s\b"
    r"|\b[2-9]\d ?f(?:ahrenheit)?\b(?! ?[/.]? ?\d| ?-?stop| ?-?number)"
    r"|\b(?:16:9|16:10|21:9|[1-5]:[1-5])(?![\d:.])"
    r"|\(\d{1,2}\)|(?:(?<=^)|(?<=; ))\d[.)](?= [a-z])"
    r"|\b\d+(?:st|nd|rd|th)\b|\b\d{1,2}:\d\d(?: ?[ap]\.?m)?\b"
    r"|(?:(?<=leaves at )|(?<=leaving at )|(?<=departs at )|(?<=closes at )|(?<=opens at )"
    r"|(?<=\bby )|(?<=until )|(?<=till )|(?<=there at )|(?<=back at )|(?<=leave at )"
    r"|(?<=meet at ))"
    r"(?:[01]?\d|2[0-3])\.[0-5]\d\b(?! ?[a-z])"
)
#: "plus 40-150" lists a lens; a sign stands before a lone number.
_SIGN: Final = r"(?<![\w)])[+-]|\b(?:plus|minus) (?![\d.,/]*\d ?(?:-|mm|m\b|ft|x|to \d))"
_TOKEN: Final = re.compile(
    rf"(?P<ignored>{_IGNORED})"
    r'|(?P<clock>(?<![\w.])\d{1,2}"\d(?!\d))'
    r"|(?P<feet>\d+ ?(?:'|ft|feet|foot) ?\d+(?:\.\d+)? ?(?:\"|''|in\b|inch(?:es)?\b)"
    r"|\b\d+'\d{1,2}(?![\d\"])|\b\d+ ?(?:ft|feet|foot) (?:1[01]|\d)"
    r"(?=\s*(?:$|[,;!)]|\.(?!\d)|(?:on|from|away|tall|high|off|above|over|wide|deep|back|up|to"
    r"|and|in front)\b)))"
    r"|(?P<metres>(?<![\w.])\d{1,2}m\d\d(?![\d/.]| ?m))"
    rf"|(?P<f>(?<!\w)(?:f|(?:f[ -]?(?:stop|number)|aperture(?: (?:number|value))?|diaphragm"
    rf"|ap)s?)(?:{_LINK})?(?: ?f)?"
    rf" ?[/:=.]? ?(?P<f_low>{_F_NUMBER})(?:-(?P<f_high>{_F_NUMBER}))?(?![\d/])"
    r"(?! (?:1/3 |2/3 |1/2 )?(?:stops?|clicks?|notch(?:es)?|steps?|thirds?)\b))"
    rf"|(?P<iso>(?<![\w/])(?:isoo?|izo|asa|sensitivity){_LINK} ?-? ?"
    rf"(?P<iso_value>{_THOUSANDS}|{_WHOLE})(?:-(?P<iso_high>\d{{2,6}})(?! ?mm))?(?!\d))"
    rf"|(?P<nd>(?<![\w/])nd(?: ?filter)? ?-? ?(?P<nd_value>{_DECIMAL})"
    r"(?![\d/]| ?-?stops?\b|-\d| to \d))"
    rf"|(?P<range>(?<![\w.,/])(?P<low>{_NUMBER})(?: ?mm)?"
    rf"(?:{_DASH}|(?<=\d\d) to |(?<=mm) to | to (?=[\d.,/]+ ?-?(?:{_UNIT})(?!\w)))"
    rf"(?P<high>(?<!\d)\d/\d{{1,5}}(?![\d/])|{_THOUSANDS}|{_DECIMAL})"
    rf"(?: ?-?(?P<range_unit>{_UNIT})(?!\w))?)"
    rf"|(?P<single>(?P<sign>{_SIGN})?(?<![\w.])(?P<number>{_NUMBER})"
    rf"(?:(?P<mark>['\"])(?!\w)|(?:th|rd)? ?-?(?P<unit>{_UNIT})(?![a-z0-9])|(?:th|rd)\b"
    r"|(?![a-z\d]|\.\d)))"
)


_OPENED: Final = re.compile(r'(?<!\d)"')


def _float(text: str) -> float:
    if " " in text:
        whole, part = text.split()
        return float(whole) + _float(part)
    if "/" in text:
        top, bottom = text.split("/")
        return float(top) / float(bottom) if float(bottom) else 0.0
    if re.fullmatch(_THOUSANDS, text):
        return float(text.replace(",", ""))
    return float(text.replace(",", "."))


def _unit_name(spelling: str) -> str:
    return next(name for pattern, name in _UNIT_NAMES if pattern.fullmatch(spelling))


def _single(match: re.Match[str]) -> Quantity:
    number, sign = match["number"], (match["sign"] or "").strip()
    value = _float(number) * (-1 if sign in {"-", "minus"} else 1)
    unit = {"'": "ft", '"': "quote"}.get(match["mark"] or "", "")
    if unit == "quote" and len(_OPENED.findall(match.string, 0, match.start())) % 2:
        unit = ""  # the end of a quoted sentence
    if match["unit"]:
        unit = _unit_name(match["unit"])
    return Quantity(
        value,
        unit,
        match.start(),
        match.end(),
        match.group(),
        signed=bool(sign),
        fraction="/" in number,
    )


def _pair(match: re.Match[str], low: str, high: str, unit: str) -> Quantity:
    return Quantity(
        _float(match[low]),
        unit,
        match.start(),
        match.end(),
        match.group(),
        high=_float(match[high]) if match[high] else None,
        fraction="/" in match[low],
    )


def _prefixed(match: re.Match[str], group: str, unit: str) -> Quantity:
    return Quantity(_float(match[group]), unit, match.start(), match.end(), match.group())


def _shown_seconds(match: re.Match[str]) -> Quantity:
    """`1"3` is 1.3 s, as cameras show it."""
    seconds = float(match["clock"].replace('"', "."))
    return Quantity(seconds, "s", match.start(), match.end(), match.group())


def _feet_and_inches(match: re.Match[str]) -> Quantity:
    """`12' 6"` is 12.5 ft."""
    feet, inches = (float(number) for number in re.findall(r"\d+(?:\.\d+)?", match.group()))
    return Quantity(feet + inches / 12, "ft", match.start(), match.end(), match.group())


def _metres_and_centimetres(match: re.Match[str]) -> Quantity:
    """`1m20` is 1.2 m."""
    metres = float(match["metres"].replace("m", "."))
    return Quantity(metres, "m", match.start(), match.end(), match.group())


def _range(match: re.Match[str]) -> Quantity:
    unit = _unit_name(match["range_unit"]) if match["range_unit"] else ""
    return _pair(match, "low", "high", unit)


#: What makes a quantity of each kind of token; "ignored" makes none.
_KINDS: Final[dict[str, Callable[[re.Match[str]], Quantity]]] = {
    "clock": _shown_seconds,
    "feet": _feet_and_inches,
    "metres": _metres_and_centimetres,
    "f": lambda match: _pair(match, "f_low", "f_high", "f"),
    "iso": lambda match: _pair(match, "iso_value", "iso_high", "iso"),
    "nd": lambda match: _prefixed(match, "nd_value", "nd"),
    "range": _range,
    "single": _single,
}


def scan(text: str) -> tuple[Quantity, ...]:
    """All numbers with a possible meaning, in the order of the message.

    Args:
        text: a message as `normalise` leaves it.

    Returns:
        The quantities; dates, clock times, shares, coordinates and phone numbers are left out.
        A number with a double quote mark has the unit "quote": seconds or inches, by its place.
    """
    return tuple(
        _KINDS[match.lastgroup](match)
        for match in _TOKEN.finditer(text)
        if match.lastgroup in _KINDS
    )
