"""Sensor format, pixels and lenses as typed."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import LensFact
from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.numbers import Quantity

_FORMATS: Final = (
    (
        "phone",
        re.compile(
            r"\b(?:smart)?phone\b(?! (?:battery|number|signal|call|reception|line|is dead|inside"
            r"|(?:is )?(?:in |on )?flight))"
            r"|\b(?:cell|mobile)(?: ?phone)? (?:camera|only)\b"
        ),
    ),
    ("44x33", re.compile(r"\bformatmedium\b")),
    ("full frame", re.compile(r"\bformatfull\b")),
    ("aps-c 1.6", re.compile(r"\bformatsmallcrop\b")),
    (
        "aps-c",
        re.compile(
            r"\bformatcrop\b|\bcrop(?:ped)?[ -]?(?:sensor|body|camera|frame|dslr|mirrorless)\b"
            r"|\b(?:on|a|my|is|it's|its|i'm|im|use|have|shoot|shooting) crop\b"
            r"(?! (?:it|the|later|in|of|off|out))|^crop(?=$|[,;.])"
        ),
    ),
    ("four thirds", re.compile(r"\bformatmft\b")),
    ("1-inch", re.compile(r"\bformatinch\b")),
)
_TAKES_WITH_PHONE: Final = re.compile(
    r"\b(?:on|from|by|call\w*|charg\w+) (?:my |the )?phone\b(?= at)"
)
#: A zoom's ends differ by this factor at least (own rule; 16-20 is none, 14-24 is).
_LEAST_ZOOM: Final = 1.3
_COUNTED: Final = re.compile(
    r"^ ?-?(?:people|students|persons|of|times|kids|frames|shots|days|weeks|years|others|folks"
    r"|guests|photographers|or so|beginners|pages|cars|dollars|euros|bucks|k\b)"
)
#: Ends of zooms that are made (common practice): a bare pair of numbers must be such.
_ZOOM_ENDS: Final = frozenset(
    {7, 8, 9, 10, 11, 12, 14, 15, 16, 17, 18, 20, 22, 24, 25, 28, 30, 32, 35, 36, 40, 42, 45, 50}
    | {52, 55, 60, 64, 66, 70, 75, 77, 80, 85, 90, 100, 105, 110, 120, 125, 135, 140, 150, 180}
    | {200, 210, 240, 250, 300, 350, 400, 450, 500, 600, 800}
)
_MILLIMETRES_AFTER: Final = re.compile(
    r"^ ?(?:mm|f ?/? ?\d|/\d|lens|zoom|(?:[a-z]+ )?(?:lens|zoom))"
)
_EQUIVALENT: Final = re.compile(r"^\W*(?:mm )?(?:equiv\w*|eq\b)")
#: No zoom opens less than this at its wide end (common practice); beyond it is a setting.
_NARROWEST_WIDE_OPEN: Final = 7.1
_WIDE_OPEN_MARKS: Final = frozenset({1.2, 1.4, 1.8, 2.8, 3.5, 4.5, 5.6, 6.3})
_PRIME: Final = re.compile(r"^ ?(?:f ?/? ?\d\S* )?(?:[a-z]+ )?(?:prime|lens)\b")
_PRIME_LISTED: Final = re.compile(r"\b(?:have|own|got|brought|lenses|primes)\b")


def read_camera(draft: Draft) -> None:
    """Sensor format and megapixels."""
    for name, pattern in _FORMATS:
        if pattern.search(draft.text):
            draft.note("camera_format", name)
            break
    for quantity in draft.free("mp"):
        if quantity.is_range:
            draft.refuse(quantity)
        else:
            draft.put("megapixels", quantity.value, quantity)
    for quantity in draft.free("x"):
        draft.claim(quantity)


def _is_zoom(draft: Draft, quantity: Quantity) -> bool:
    if quantity.high is None or quantity.fraction or quantity.unit not in {"", "mm"}:
        return False
    plausible = quantity.value >= 4 and 14 <= quantity.high <= 1500  # shortest and longest made
    if quantity.unit == "" and not _MILLIMETRES_AFTER.search(draft.text[quantity.end :]):
        plausible = plausible and quantity.value in _ZOOM_ENDS and quantity.high in _ZOOM_ENDS
    return (
        plausible
        and quantity.high / quantity.value >= _LEAST_ZOOM
        and not _COUNTED.search(draft.after(quantity))
    )


def _widest(draft: Draft, lens: Quantity) -> tuple[float | None, float | None]:
    """The widest f-numbers typed right behind a lens; the number is claimed with it."""
    number = draft.neighbour(lens, 1)
    if number is None or number not in draft.free("f", ""):
        return None, None
    between = draft.after(lens)
    glued = between.strip() in {"", "mm", "lens", "zoom"} and (
        number.unit == "f" or number.value in _WIDE_OPEN_MARKS
    )
    if not (glued or between == "/") or number.value > _NARROWEST_WIDE_OPEN:
        return None, None
    draft.claim(number)
    return number.value, number.high or number.value


def read_lenses(draft: Draft) -> None:
    """Zooms by their two ends, primes by the word; their apertures are no settings."""
    lenses = [_lens(draft, quantity) for quantity in draft.free("", "mm")]
    found = tuple(dict.fromkeys(lens for lens in lenses if lens is not None))
    if found:
        draft.note("lenses", found)


def _lens(draft: Draft, quantity: Quantity) -> LensFact | None:
    if _is_zoom(draft, quantity):
        if _EQUIVALENT.search(draft.after(quantity)):
            draft.refuse(quantity)
            return None
        longest = quantity.high or quantity.value
    elif quantity.unit == "mm" and _is_prime(draft, quantity):
        longest = quantity.value
    else:
        return None
    draft.claim(quantity)
    wide, narrow = _widest(draft, quantity)
    return LensFact(
        shortest_mm=quantity.value,
        longest_mm=longest,
        widest_at_shortest=wide,
        widest_at_longest=narrow,
    )


def _is_prime(draft: Draft, quantity: Quantity) -> bool:
    if quantity.is_range or not 3 <= quantity.value <= 1500:
        return False
    number = draft.neighbour(quantity, 1)
    wide_open = (
        number is not None
        and number.unit == "f"
        and number.value <= 2.8  # nobody sets a fall wider than this (own rule)
        and not draft.after(quantity).strip()
    )
    if wide_open or _PRIME.search(draft.text[quantity.end :]):
        return True
    before = draft.before(quantity)
    return bool(_PRIME_LISTED.search(draft.text)) and not re.search(r"(?:\bat|@) ?$", before)
