"""A frame with its clipped areas outlined and lettered, and its three histograms."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from bot.pictures.histogram_plot import counts, draw_histograms, percent
from bot.pictures.lettering import line_height, text_width, write
from bot.pictures.outlines import Rectangle, draw_areas, draw_letter
from core.frame.report import ClippedArea, FrameReport

#: Long side of the frame in the picture [px]; about three times a phone's width in points.
FRAME_LONG_PX: Final = 1200
#: A frame taller than wide by this has its histograms beside it (own rule: below, the whole
#: would be taller than 4 : 3 and a client would show a narrow strip).
TALL: Final = 1.0
#: Text height [px]: 13 points where the picture is shown 390 points wide.
TEXT_PX: Final = 42
MARGIN_PX: Final = 24
#: Width of the column of histograms beside a tall frame [px].
COLUMN_PX: Final = 480
#: Height of one histogram below a wide frame, text included [px].
ROW_PX: Final = 165
#: Areas that are marked, largest first; more would hide the frame (own rule).
MOST_AREAS: Final = 8
#: Largest file [bytes]: quick on a weak signal (own rule).
LARGEST_BYTES: Final = 500_000
#: JPEG qualities, tried in this order until the file is small enough.
QUALITIES: Final = (85, 75, 60, 40, 20)


@dataclass(frozen=True)
class _Layout:
    """Size of the whole picture, and where the key and the histograms go [px]."""

    width: int
    height: int
    key: Rectangle
    plots: Rectangle


def draw_marked_frame(pixels: NDArray[np.uint8], report: FrameReport) -> bytes:
    """Draw what the report says onto a small copy of the frame.

    Args:
        pixels: shape (H, W, 3), RGB, upright.
        report: what was measured on these pixels; its boxes are shares of the frame.

    Returns:
        A JPEG under 500 kB, without any metadata of the frame.

    Raises:
        ValueError: `pixels` has another shape or type.
    """
    if pixels.ndim != 3 or pixels.shape[2] != 3 or pixels.dtype != np.uint8:
        raise ValueError(f"pixels: shape {pixels.shape}, type {pixels.dtype}")
    small = reduced(pixels)
    height, width = small.shape[:2]
    areas = report.clipping.areas[:MOST_AREAS]
    layout = _layout(width, height, len(areas))
    canvas = Image.new("RGB", (layout.width, layout.height), "white")
    canvas.paste(Image.fromarray(small), (0, 0))
    draw = ImageDraw.Draw(canvas)
    draw_areas(draw, areas, width, height)
    _draw_key(draw, layout.key, areas)
    draw_histograms(draw, layout.plots, counts(pixels), report.clipping.by_channel, TEXT_PX)
    return _encoded(np.asarray(canvas))


def reduced(pixels: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """The frame at a long side of `FRAME_LONG_PX`, by area averages; small ones are enlarged.

    Returns:
        Shape (h, w, 3); neither side under 1 px.
    """
    height, width = pixels.shape[:2]
    scale = FRAME_LONG_PX / max(height, width)
    size = (max(1, round(width * scale)), max(1, round(height * scale)))
    way = cv2.INTER_AREA if scale < 1 else cv2.INTER_NEAREST
    return np.asarray(cv2.resize(pixels, size, interpolation=way), dtype=np.uint8)


def _layout(width: int, height: int, areas: int) -> _Layout:
    """Histograms beside a tall frame, below a wide one; the key of letters above them."""
    step = line_height(TEXT_PX) + MARGIN_PX // 2
    if height > width * TALL:
        left = width + MARGIN_PX
        right = left + COLUMN_PX
        split = MARGIN_PX + areas * step
        bottom = max(height, split + 3 * ROW_PX)
        key = Rectangle(left, MARGIN_PX, right, split)
        return _Layout(right + MARGIN_PX, bottom, key, Rectangle(left, split, right, bottom))
    key = Rectangle(MARGIN_PX, height + MARGIN_PX, width - MARGIN_PX, 0)
    key = Rectangle(key.left, key.top, key.right, key.top + -(-areas // 2) * step)
    bottom = key.bottom + 3 * ROW_PX
    plots = Rectangle(MARGIN_PX, key.bottom, width - MARGIN_PX, bottom)
    return _Layout(width, bottom, key, plots)


def _draw_key(draw: ImageDraw.ImageDraw, place: Rectangle, areas: tuple[ClippedArea, ...]) -> None:
    """Each letter with its words: "A white water 2.1 %"; two in a row where there is room."""
    step = line_height(TEXT_PX) + MARGIN_PX // 2
    columns = 2 if place.right - place.left > 2 * COLUMN_PX else 1
    column_width = (place.right - place.left) // columns
    for index, area in enumerate(areas):
        left = place.left + index % columns * column_width
        top = place.top + index // columns * step
        side = TEXT_PX + 10
        draw_letter(draw, area.letter, Rectangle(left, top, left + side, top + side))
        words = f"{area.kind.value} {percent(area.share)}"
        size = _fitting(words, column_width - side - MARGIN_PX)
        write(draw, (left + side + 12, top + (side - size) // 2 - 2), words, size)


def _fitting(words: str, width: int) -> int:
    """The text height, smaller where the words are too long for the line [px]."""
    return min(TEXT_PX, TEXT_PX * width // max(text_width(words, TEXT_PX), 1))


def _encoded(picture: NDArray[np.uint8]) -> bytes:
    """A JPEG small enough to send; the encoder is given pixels alone, so no metadata."""
    blue_first = cv2.cvtColor(picture, cv2.COLOR_RGB2BGR)
    for quality in QUALITIES:
        done, data = cv2.imencode(".jpg", blue_first, [cv2.IMWRITE_JPEG_QUALITY, quality])
        if done and data.nbytes < LARGEST_BYTES:
            break
    return bytes(data)
