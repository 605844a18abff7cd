"""Zooms said in words: `twenty four one oh five`, `the seventy two hundred`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.spoken_numbers import SIMPLE

#: Zooms that are made [mm] (common practice): a run of number words must be one of them.
_ZOOMS: Final = frozenset(
    {(10, 18), (10, 20), (10, 22), (10, 24), (11, 16), (11, 18), (11, 20), (11, 22), (11, 24)}
    | {(12, 24), (12, 28), (12, 32), (12, 35), (12, 40), (12, 50), (14, 45), (14, 54), (14, 140)}
    | {(16, 300), (35, 150), (40, 80), (40, 200), (70, 150), (100, 200)}
    | {(12, 45), (12, 60), (12, 100), (14, 24), (14, 30), (14, 35), (14, 42), (14, 150), (15, 30)}
    | {(15, 35), (15, 45), (15, 85), (16, 28), (16, 35), (16, 50), (16, 55), (16, 80), (16, 85)}
    | {(17, 28), (17, 35), (17, 40), (17, 50), (17, 55), (17, 70), (18, 35), (18, 45), (18, 50)}
    | {(18, 55), (18, 70), (18, 105), (18, 135), (18, 140), (18, 150), (18, 200), (18, 250)}
    | {(18, 270), (18, 300), (20, 40), (20, 60), (20, 70), (24, 50), (24, 70), (24, 85), (24, 105)}
    | {(24, 120), (24, 200), (24, 240), (28, 60), (28, 70), (28, 75), (28, 80), (28, 105)}
    | {(28, 135), (28, 200), (28, 300), (35, 70), (35, 100), (35, 105), (40, 150), (45, 150)}
    | {(50, 140), (50, 150), (50, 200), (50, 230), (50, 250), (55, 200), (55, 210), (55, 250)}
    | {(55, 300), (60, 600), (70, 180), (70, 200), (70, 210), (70, 300), (70, 350), (75, 300)}
    | {(80, 200), (80, 400), (100, 300), (100, 400), (100, 500), (150, 500), (150, 600)}
    | {(180, 600), (200, 500), (200, 600)}
)
_ONES: Final = {word: value for word, value in SIMPLE.items() if 1 <= value <= 9}
_TENS: Final = {word: value for word, value in SIMPLE.items() if value >= 20}
_WORD: Final = rf"(?:{'|'.join(SIMPLE)}|hundred|oh)"
_RUN: Final = rf"{_WORD}(?:(?: |-|(?<=hundred) and |(?<=\w) to )(?:{_WORD}|\d{{2,3}}))+"
#: What is said before a lens, or behind it.
_CUE: Final = (
    r"(?:(?:^|[,;+&] ?|\b(?:an?|my|the|with|got|have|own|brought|using|on|and|plus|lens|zoom|lenses"
    r"|kit|frame|body|crop|sensor|camera|his|old|little|is)(?:,|:)? ))"
)
_BEHIND: Final = (
    r"(?! ?(?:m|met\w+|ft|feet|foot|km|miles?|yards?|people|steps|minutes|mins?|seconds|secs?|hours"
    r"|iso|stops?|tonight|in the evening|p\.?m|a\.?m|o'?clock|percent|and a half|point)\b)"
)
_SAID: Final = re.compile(rf"({_CUE})({_RUN})\b{_BEHIND}")
_CLOCK: Final = re.compile(r"\b(?:sun\w*|dark by|bus|train|clock|meet|leaves?|back by)\b")


def _value(words: list[str]) -> int | None:
    """One number of a zoom as it is said: `one oh five`, `two hundred`, `one twenty`."""
    if len(words) == 1 and words[0].isdigit():
        return int(words[0])
    hundreds = _ONES.get(words[0], 0) if len(words) > 1 and words[1] not in _ONES else 0
    if hundreds:
        rest = words[1:]
        rest = rest[1:] if rest[0] in {"hundred", "oh"} else rest
        below = _below_hundred(rest[1:] if rest[:1] == ["and"] else rest)
        return None if below is None else 100 * hundreds + below
    return _below_hundred(words) if words else None


def _below_hundred(words: list[str]) -> int | None:
    if not words:
        return 0
    if len(words) == 1:
        return SIMPLE.get(words[0])
    ten, one = words[0], words[1]
    return _TENS[ten] + _ONES[one] if len(words) == 2 and ten in _TENS and one in _ONES else None


def _zoom(match: re.Match[str]) -> str:
    words = re.split(r"[ -]", match[2])
    halves = [words.index("to")] if words.count("to") == 1 else list(range(1, len(words)))
    for half in halves:
        long = words[half + 1 :] if words[half] == "to" else words[half:]
        ends = _value(words[:half]), _value(long)
        if ends in _ZOOMS:
            return f"{match[1]}{ends[0]}-{ends[1]}"
    return match[0]


#: "Crop 16 50": the ends of a zoom with nothing between them.
_PARTED: Final = re.compile(
    r"(\b(?:crop|frame|aps-?c|mft|body|camera|cam|lens|zoom|kit|with|format\w+)(?:,| is|:)? )"
    r"([1-9]\d) ([1-9]\d{1,2})(?= ?(?:$|[,;.!]|mm\b|and\b|lens\b|zoom\b|f ?/?\d))"
)


def _joined(match: re.Match[str]) -> str:
    made = (int(match[2]), int(match[3])) in _ZOOMS
    return f"{match[1]}{match[2]}-{match[3]}" if made else match[0]


def said_zooms(text: str) -> str:
    """The message with zooms in digits that were said in words.

    Args:
        text: a message in lower case.
    """
    text = _PARTED.sub(_joined, text)
    return text if _CLOCK.search(text) else _SAID.sub(_zoom, text)
