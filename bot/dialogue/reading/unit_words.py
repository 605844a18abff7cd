"""The names of English units of length: one place for all that reads or turns them."""

from __future__ import annotations

from typing import Final

METRE: Final = r"m|mtrs?|met(?:er|re)s?"
CENTIMETRE: Final = r"cms?|centimet(?:er|re)s?"
KILOMETRE: Final = r"kms?|kilomet(?:er|re)s?"
FOOT: Final = r"ft|feets?|foots?|footers?"
INCH: Final = r"inch(?:es)?"
YARD: Final = r"yds?|yards?"
MILE: Final = r"miles?"
#: Any of them.
LENGTH: Final = rf"(?:{METRE}|{CENTIMETRE}|{KILOMETRE}|{FOOT}|{INCH}|{YARD}|{MILE})"
#: Those in which people tell where they stand.
STANDING: Final = rf"(?:{FOOT}|{YARD}|{METRE})"
#: The signs that a number bears once it is read, and metres per unit (exact by definition).
METRES: Final = {
    "m": 1.0,
    "cm": 0.01,
    "ft": 0.3048,
    "in": 0.0254,
    "yd": 0.9144,
    "km": 1000.0,
    "mi": 1609.344,
}
LENGTH_UNITS: Final = tuple(METRES)
