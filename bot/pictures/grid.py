"""A frame with the grid by whose cells the water is named, and the cells that are proposed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from bot.pictures.marked_frame import encoded, reduced
from bot.pictures.outlines import BLACK, WHITE, Rectangle, draw_letter, line_width
from core.frame.water_area import COLUMNS, ROWS

#: Side of a name's plate over the short side of a cell, and over the frame's long side, whichever
#: is less: as large as the letters on marked pictures (own rule).
_PLATE_OF_CELL: Final = 0.4
_PLATE: Final = 1 / 13
#: A proposed cell's outline keeps this far from the grid's lines, in lines. Own rule.
_INSIDE: Final = 3


def draw_grid(pixels: NDArray[np.uint8], proposed: Sequence[str] = ()) -> bytes:
    """Draw four rows (A to D) by four columns (1 to 4) onto a small copy of the frame.

    Args:
        pixels: shape (H, W, 3), red, green, blue, upright.
        proposed: names of cells that are outlined a second time, inside.

    Returns:
        A JPEG under 500 kB, without any metadata of the frame.
    """
    small = reduced(pixels)
    height, width = small.shape[:2]
    canvas = Image.fromarray(small)
    draw = ImageDraw.Draw(canvas)
    cells = _cells(width, height)
    line = line_width(max(width, height))
    for place in cells.values():
        _outline(draw, place, max(1, line // 2))
    for name, place in cells.items():
        if name in proposed:
            _outline(draw, place.grown(-_INSIDE * line), line)
        draw_letter(draw, name, _plate(place, max(width, height)))
    return encoded(np.asarray(canvas))


def _cells(width: int, height: int) -> dict[str, Rectangle]:
    """Where each cell lies [px]."""
    rows, columns = len(ROWS), len(COLUMNS)
    return {
        f"{row}{column}": Rectangle(
            across * width // columns,
            down * height // rows,
            (across + 1) * width // columns,
            (down + 1) * height // rows,
        )
        for down, row in enumerate(ROWS)
        for across, column in enumerate(COLUMNS)
    }


def _plate(cell: Rectangle, long_side: int) -> Rectangle:
    """The plate of a name, in the cell's upper left corner, clear of the lines."""
    short = min(cell.right - cell.left, cell.bottom - cell.top)
    side = max(8, round(min(short * _PLATE_OF_CELL, long_side * _PLATE)))
    left, top = cell.left + short // 10, cell.top + short // 10
    return Rectangle(left, top, left + side, top + side)


def _outline(draw: ImageDraw.ImageDraw, cell: Rectangle, line: int) -> None:
    """A black and a white line side by side, which show on any ground."""
    for step, colour in ((0, BLACK), (line, WHITE)):
        inner = cell.grown(-step)
        if inner.right > inner.left and inner.bottom > inner.top:
            edges = (inner.left, inner.top, inner.right - 1, inner.bottom - 1)
            draw.rectangle(edges, outline=colour, width=line)
