"""Sheets of several frames: the same place of each, with letters and times, or a ladder of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from bot.dialogue.texts import TEXTS, measures
from bot.pictures.lettering import line_height, text_width, write
from bot.pictures.outlines import Rectangle, draw_letter
from core.frame.crops import Piece, Sheet
from core.series import Dial, shutter_label

Pixels = NDArray[np.uint8]

#: Width of a sheet [px]: a phone's screen, 390 points of three pixels less a margin.
WIDTH_PX: Final = 1080
#: Tallest sheet [px]: clients show portrait pictures whole at 3 : 4; a ladder may be taller.
MOST_HEIGHT_PX: Final = 1600
#: White between two pieces [px].
GAP_PX: Final = 12
#: Text height, largest first [px]: 12 points and more where the sheet is 390 points wide.
TEXT_SIZES: Final = (42, 36, 33)
#: Side of a letter's plate [px].
PLATE_PX: Final = 54
INK: Final = (0, 0, 0)
#: Largest file [bytes]: quick on a weak signal (own rule).
LARGEST_BYTES: Final = 500_000
#: JPEG qualities, tried in this order; then the sheet is made smaller.
QUALITIES: Final = (90, 80, 70, 55, 40)
_SMALLER: Final = 0.8
#: Gains below this are not told [stops]: they round to nothing.
_LEAST_TOLD: Final = 0.05


@dataclass(frozen=True)
class _Text:
    """Height of the text [px], and whether it stands below the letter instead of beside it."""

    size: int
    below: bool

    def head(self, lines: int) -> int:
        """Height of so many lines and the letter [px]."""
        high = lines * line_height(self.size)
        return (PLATE_PX + high if self.below else max(PLATE_PX, high)) + GAP_PX // 2


@dataclass(frozen=True)
class _Cell:
    """Where a piece goes, and what stands above it."""

    piece: Piece
    place: Rectangle
    letter: str
    words: tuple[str, ...]
    head: int  # height of what stands above the piece [px]


def draw_sheet(sheet: Sheet) -> bytes:
    """Draw pieces side by side, or one above the other where they are wide.

    Each has the letter of its frame (A for the first) and its time; one that was made brighter says
    by how much. An illustration says that it is one, in the picture itself.

    Args:
        sheet: one to twelve pieces.

    Returns:
        A JPEG under 500 kB, without any metadata, at most 1080 px wide.

    Raises:
        ValueError: the sheet has no pieces.
    """
    if not sheet.pieces:
        raise ValueError("a sheet without pieces")
    columns = _columns(sheet)
    width = (WIDTH_PX - GAP_PX * (columns - 1)) // columns
    text = _text(sheet, width)
    size = text.size
    top = line_height(size) + GAP_PX if sheet.shows == "illustration" else 0
    cells, height = _placed(sheet, columns, width, text, top)
    canvas = Image.new("RGB", (WIDTH_PX, height), "white")
    draw = ImageDraw.Draw(canvas)
    if top:
        write(draw, (GAP_PX, 0), TEXTS["picture.illustration"], size, fill=INK, weight=1)
    for cell in cells:
        _draw_cell(canvas, draw, cell, text)
    return _encoded(np.asarray(canvas))


def _columns(sheet: Sheet) -> int:
    """Side by side; whole frames that are wide stand above each other, many in two columns."""
    number = len(sheet.pieces)
    height, width = sheet.pieces[0].pixels.shape[:2]
    if sheet.shows in {"whole", "average"}:
        wide = width > height
        return 1 if wide and number <= 2 else 2 if number != 3 or wide else 3
    if sheet.shows == "illustration" and number > 3:
        return -(-number // 2)
    return number if number <= 6 else -(-number // 2)


def _text(sheet: Sheet, width: int) -> _Text:
    """The largest text at which every line fits beside the letter, else below it."""
    lines = [line for piece in sheet.pieces for line in _words(piece, sheet.shows)]
    for below, size in product((False, True), TEXT_SIZES):
        room = width - (0 if below else PLATE_PX + GAP_PX)
        if all(text_width(line, size) <= room for line in lines):
            return _Text(size, below)
    return _Text(TEXT_SIZES[-1], below=True)


def _words(piece: Piece, shows: str) -> tuple[str, ...]:
    """Lines above a piece: its time, and what was done to it."""
    time = "" if piece.shutter_s is None else shutter_label(piece.shutter_s, Dial.THIRDS)
    lines = [time]
    if piece.frame is None and shows == "illustration":
        lines = [TEXTS["picture.as_if"].format(time=time) if time else ""]
    elif piece.frame is None:
        in_all = TEXTS["picture.in_all"].format(time=time) if time else ""
        lines = [TEXTS["picture.average"], in_all]
    if abs(piece.gain_stops) > _LEAST_TOLD:
        stops = measures.fixed(piece.gain_stops, sign=True)
        lines.append(TEXTS["picture.gain"].format(stops=stops))
    return tuple(line for line in lines if line)


def _placed(
    sheet: Sheet, columns: int, width: int, text: _Text, top: int
) -> tuple[list[_Cell], int]:
    """All pieces row by row, and the height of the sheet [px]."""
    cells: list[_Cell] = []
    rows = -(-len(sheet.pieces) // columns)
    most = max(200, (MOST_HEIGHT_PX - top) // rows)
    for first in range(0, len(sheet.pieces), columns):
        row = sheet.pieces[first : first + columns]
        words = [_words(piece, sheet.shows) for piece in row]
        head = text.head(max(1, *map(len, words)))
        high = max(_height(piece, width, most - head) for piece in row)
        for column, piece in enumerate(row):
            left = column * (width + GAP_PX)
            place = Rectangle(left, top + head, left + width, top + head + high)
            letter = "" if piece.frame is None else chr(ord("A") + piece.frame)
            cells.append(_Cell(piece, place, letter, words[column], head))
        top += head + high + GAP_PX
    return cells, top - GAP_PX


def _height(piece: Piece, width: int, most: int) -> int:
    """Height of a piece in a column of that width [px]; never enlarged."""
    height, own = piece.pixels.shape[:2]
    return int(max(1, min(round(height * min(1.0, width / own)), most)))


def _draw_cell(canvas: Image.Image, draw: ImageDraw.ImageDraw, cell: _Cell, text: _Text) -> None:
    shown = _shown(cell.piece.pixels, cell.place)
    canvas.paste(Image.fromarray(shown), (cell.place.left, cell.place.top))
    start, top = cell.place.left, cell.place.top - cell.head
    if cell.letter:
        draw_letter(draw, cell.letter, Rectangle(start, top, start + PLATE_PX, top + PLATE_PX))
        start += 0 if text.below else PLATE_PX + GAP_PX
    top += PLATE_PX if text.below else (PLATE_PX - text.size) // 4
    for number, line in enumerate(cell.words or (TEXTS["picture.unknown_time"],)):
        write(draw, (start, top + number * line_height(text.size)), line, text.size, fill=INK)


def _shown(pixels: Pixels, place: Rectangle) -> Pixels:
    """The piece in its place: pixel by pixel where it fits, else smaller, its middle kept."""
    width, height = place.right - place.left, place.bottom - place.top
    scale = min(1.0, width / pixels.shape[1])
    if scale < 1:
        size = (width, max(1, round(pixels.shape[0] * scale)))
        pixels = np.asarray(cv2.resize(pixels, size, interpolation=cv2.INTER_AREA), np.uint8)
    spare = max(0, pixels.shape[0] - height) // 2
    return np.ascontiguousarray(pixels[spare : spare + height])


def _encoded(picture: Pixels) -> bytes:
    """A JPEG small enough to send; the encoder is given pixels alone, so no metadata."""
    blue_first = cv2.cvtColor(picture, cv2.COLOR_RGB2BGR)
    while True:
        for quality in QUALITIES:
            _, data = cv2.imencode(".jpg", blue_first, [cv2.IMWRITE_JPEG_QUALITY, quality])
            if data.nbytes < LARGEST_BYTES:
                return bytes(data)
        blue_first = cv2.resize(
            blue_first, None, fx=_SMALLER, fy=_SMALLER, interpolation=cv2.INTER_AREA
        )


def draw_sheets(sheets: Sequence[Sheet]) -> tuple[tuple[str, bytes], ...]:
    """What each sheet shows, and its JPEG."""
    return tuple((sheet.shows, draw_sheet(sheet)) for sheet in sheets)
