"""Text on pictures: a font that needs nothing from the system, wrapping, nothing cut off."""

from __future__ import annotations

import io
import math
import unicodedata
from collections.abc import Iterator
from functools import lru_cache
from importlib.resources import files
from typing import Final

from PIL import ImageDraw, ImageFont

#: Drawn for a letter that nothing above covers: a visible gap is honest, a missing letter isn't.
UNKNOWN: Final = "?"

#: DejaVu Sans Condensed 2.37, whose licence lies beside it: it has the letters of every language
#: written in Latin, Greek or Cyrillic. Read on import: the process of a frame can open no file.
_FONT: Final = (files(__package__) / "fonts" / "DejaVuSansCondensed.ttf").read_bytes()


@lru_cache(maxsize=32)
def font(size: int) -> ImageFont.FreeTypeFont:
    """The font of all pictures at `size` [px]."""
    return ImageFont.truetype(io.BytesIO(_FONT), size)


@lru_cache(maxsize=512)
def _drawable(character: str) -> bool:
    """The font has a form of its own for it, other than the box for a missing one."""
    missing = font(32).getmask("\uffff")
    drawn = font(32).getmask(character)
    return drawn.size != missing.size or bytes(drawn) != bytes(missing)


def _spelled(character: str) -> str:
    if character.isspace():
        return " "
    if unicodedata.category(character) in {"Cc", "Cf"}:  # nothing to be seen, though it has a form
        return ""
    if _drawable(character):
        return character
    parts = unicodedata.normalize("NFKD", character)
    bare = "".join(part for part in parts if not unicodedata.combining(part))
    if bare and bare != character:
        return "".join(_spelled(part) for part in bare)
    return "" if unicodedata.combining(character) else UNKNOWN


def plain(text: str) -> str:
    """`text` with only what the font can draw; spaces of all kinds become one."""
    written = "".join(_spelled(character) for character in unicodedata.normalize("NFC", text))
    return " ".join(written.split())


def text_width(text: str, size: int, weight: int = 0) -> int:
    """Width of one line, rounded up [px]; `weight` is the stroke added on each side [px]."""
    return math.ceil(font(size).getlength(text)) + 2 * weight


def line_height(size: int) -> int:
    """Distance of two base lines [px]."""
    ascent, descent = font(size).getmetrics()
    return ascent + descent + size // 8


def _pieces(word: str, size: int, width: int, weight: int) -> Iterator[str]:
    """A word that is wider than the line, cut into pieces that fit."""
    piece = ""
    for character in word:
        if piece and text_width(piece + character, size, weight) > width:
            yield piece
            piece = ""
        piece += character
    if piece:
        yield piece


def _parts(text: str, size: int, width: int, weight: int) -> Iterator[str]:
    """What stays on one line: an item of a list if it fits, else a word, else what fits of it."""
    for item in text.replace(", ", ",\n").split("\n"):
        if text_width(item, size, weight) <= width:
            yield item
        else:
            for word in item.split(" "):
                yield from _pieces(word, size, width, weight)


def wrap(text: str, size: int, width: int, weight: int = 0) -> list[str]:
    """Lines of `text` no wider than `width` [px], broken between the items of a list if possible.

    "1/30 s ISO 400, 1/15 s ISO 200" is never broken before a number of an item that fits a line.

    Returns:
        At least one line; long words are cut, nothing is left out; an empty text gives one empty
        line.
    """
    lines: list[str] = []
    line = ""
    for part in _parts(plain(text), size, width, weight):
        longer = f"{line} {part}" if line else part
        if line and text_width(longer, size, weight) > width:
            lines.append(line)
            line = part
        else:
            line = longer
    return [*lines, line] if line or not lines else lines


def write(
    draw: ImageDraw.ImageDraw,
    place: tuple[int, int],
    text: str,
    size: int,
    *,
    fill: int | tuple[int, int, int] = 0,
    weight: int = 0,
) -> None:
    """Write one line with its top left at `place` [px]; `weight` thickens the strokes [px]."""
    draw.text(
        place, text, fill=fill, font=font(size), stroke_width=weight, stroke_fill=fill, anchor="la"
    )
