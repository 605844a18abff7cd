"""The values of dials and lenses that a message names, whatever it says of them."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final, NamedTuple

from bot.dialogue.reading.draft import RANGES
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.reading.numbers import Quantity, scan
from bot.dialogue.reading.unit_words import METRES

#: "A quarter or an eighth", "the f/8 quarter": a part of a second beside other settings.
_PART: Final = re.compile(
    r"(?:(?<!and )\b(?:an?|one|the|that) |(?<=\d ))(?P<part>quarter|half)\b(?: of a)?"
    r"(?: s(?:ec(?:ond)?)?\b)?"
    r"(?! ?(?:of (?!an? s)|the|an?|stops?|past|to \d|mile|inch|hour|way|frame|met|as|my)\b)"
)
_BELOW: Final = {"quarter": "1/4", "half": "1/2"}
#: The slot of a number by the unit that it was typed with.
_SLOTS: Final = {"f": "f_number", "s": "shutter_s", "iso": "iso", "mm": "focal_mm"}
_METRES: Final = {unit: METRES[unit] for unit in ("m", "cm", "ft", "yd")}
#: "4.1 %", "fourteen percent".
_SHARE: Final = re.compile(
    r"(?<![\w.,/])(?P<share>\d+(?:[.,]\d+)?) ?(?:%|per ?cent\b|pct\b|prozent\b|por ?ciento\b)"
)
_ONE_OVER: Final = re.compile(r"1/\d+(?:\.\d)?(?:th|rd)?")


class Named(NamedTuple):
    """A value that a message names.

    Args:
        slot: of `Facts` that it would fill; "length" and "share" of whatever, "" for a bare number.
        value: as marked, times in seconds, lengths in metres, shares in percent.
        start: of its words in the plain message.
        end: of its words.
    """

    slot: str
    value: float
    start: int
    end: int


#: A message is looked through for several questions.
@lru_cache(maxsize=16)
def plainly(text: str) -> str:
    """A message in the spelling in which its values are looked for.

    Args:
        text: in English.
    """
    return _PART.sub(lambda match: f"{_BELOW[match['part']]} s", plain_times(text))


@lru_cache(maxsize=16)
def named_in(said: str) -> tuple[Named, ...]:
    """The settings, focal lengths and bare numbers of a message, in its order.

    Args:
        said: as `plainly` leaves it.
    """
    shares = [
        Named("share", float(match["share"].replace(",", ".")), *match.span())
        for match in _SHARE.finditer(said)
    ]
    numbers = [one for quantity in scan(said) for one in _of(quantity)]
    return tuple(sorted((*numbers, *shares), key=lambda one: one.start))


def _of(quantity: Quantity) -> list[Named]:
    """A quantity as a value, the two ends of a range as two."""
    if quantity.unit in _METRES and quantity.high is None:
        metres = quantity.value * _METRES[quantity.unit]
        return [Named("length", metres, quantity.start, quantity.end)]
    slot = _SLOTS.get(quantity.unit)
    if slot is None and quantity.unit == "":
        slot = "shutter_s" if _ONE_OVER.match(quantity.text) else ""
    if slot is None or quantity.signed:
        return []
    ends = [quantity.value] if quantity.high is None else [quantity.value, quantity.high]
    return [Named(slot, end, quantity.start, quantity.end) for end in ends if _may_be(slot, end)]


def _may_be(slot: str, value: float) -> bool:
    low, high = RANGES.get(slot, (0.0, float("inf")))
    return low <= value <= high
