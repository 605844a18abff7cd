"""A frame with its clipped areas and its borders marked, and its three histograms."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from bot.dialogue.texts import TEXTS
from bot.pictures.border_marks import draw_borders
from bot.pictures.histogram_plot import counts, draw_histograms, percent
from bot.pictures.lettering import line_height, text_width, write
from bot.pictures.outlines import Rectangle, draw_areas, draw_letter
from core.frame.report import AreaKind, ClippedArea, FrameReport

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
#: Areas besides sparkle that are marked, largest first; more would hide the frame (own rule).
MOST_AREAS: Final = 4
#: An area whose box is larger than this share of the frame, and of which less than `THIN` is
#: clipped, gets no outline (own rules).
SCATTERED: Final = 0.3
THIN: Final = 0.01
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
    areas = _shown(report.clipping.areas)
    words = _key_words(areas, len(report.clipping.areas) - len(areas))
    layout = _layout(width, height, len(words))
    canvas = Image.new("RGB", (layout.width, layout.height), "white")
    canvas.paste(Image.fromarray(small), (0, 0))
    draw = ImageDraw.Draw(canvas)
    draw_areas(draw, [area for area in areas if not scattered(area)], width, height)
    draw_borders(draw, report.borders or (), width, height)
    _draw_key(draw, layout.key, words)
    draw_histograms(draw, layout.plots, counts(pixels), report.clipping.by_channel, TEXT_PX)
    return encoded(np.asarray(canvas))


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


def scattered(area: ClippedArea) -> bool:
    """Points over so much of the frame that an outline would point at nothing."""
    box_share = area.box.width * area.box.height
    return box_share > SCATTERED and area.share < THIN * box_share


def _shown(areas: tuple[ClippedArea, ...]) -> tuple[ClippedArea, ...]:
    """The areas that get a mark or a line in the key, in the report's order."""
    others = [area for area in areas if area.kind is not AreaKind.SPARKLE][:MOST_AREAS]
    return tuple(area for area in areas if area.kind is AreaKind.SPARKLE or area in others)


def _key_words(areas: tuple[ClippedArea, ...], more: int) -> list[tuple[str, str]]:
    """Letter and words of each line of the key: ("A", "white water 2.1 %")."""
    lines = [(area.letter, _words(area)) for area in areas]
    return [*lines, ("", TEXTS["picture.smaller"].format(number=more))] if more else lines


def _words(area: ClippedArea) -> str:
    # "Unsure" would not read well alone.
    kind = "bright" if area.kind is AreaKind.UNSURE else area.kind.name.lower()
    words = f"{TEXTS[f'kind.{kind}']} {percent(area.share)}"
    return TEXTS["picture.scattered"].format(area=words) if scattered(area) else words


def _layout(width: int, height: int, lines: int) -> _Layout:
    """Histograms beside a tall frame, below a wide one; the key of letters above them."""
    step = line_height(TEXT_PX) + MARGIN_PX // 2
    if height > width * TALL:
        left = width + MARGIN_PX
        right = left + COLUMN_PX
        split = MARGIN_PX + lines * step
        bottom = max(height, split + 3 * ROW_PX)
        key = Rectangle(left, MARGIN_PX, right, split)
        return _Layout(right + MARGIN_PX, bottom, key, Rectangle(left, split, right, bottom))
    key = Rectangle(MARGIN_PX, height + MARGIN_PX, width - MARGIN_PX, 0)
    key = Rectangle(key.left, key.top, key.right, key.top + -(-lines // 2) * step)
    bottom = key.bottom + 3 * ROW_PX
    plots = Rectangle(MARGIN_PX, key.bottom, width - MARGIN_PX, bottom)
    return _Layout(width, bottom, key, plots)


def _draw_key(
    draw: ImageDraw.ImageDraw, place: Rectangle, lines: Sequence[tuple[str, str]]
) -> None:
    """Each letter with its words; two in a row where there is room."""
    step = line_height(TEXT_PX) + MARGIN_PX // 2
    columns = 2 if place.right - place.left > 2 * COLUMN_PX else 1
    column_width = (place.right - place.left) // columns
    side = TEXT_PX + 10
    for index, (letter, words) in enumerate(lines):
        left = place.left + index % columns * column_width
        top = place.top + index // columns * step
        if letter:
            draw_letter(draw, letter, Rectangle(left, top, left + side, top + side))
        size = _fitting(words, column_width - side - MARGIN_PX)
        write(draw, (left + side + 12, top + (side - size) // 2 - 2), words, size)


def _fitting(words: str, width: int) -> int:
    """The text height, smaller where the words are too long for the line [px]."""
    return min(TEXT_PX, TEXT_PX * width // max(text_width(words, TEXT_PX), 1))


def encoded(picture: NDArray[np.uint8]) -> bytes:
    """A JPEG small enough to send; the encoder is given pixels alone, so no metadata."""
    blue_first = cv2.cvtColor(picture, cv2.COLOR_RGB2BGR)
    for quality in QUALITIES:
        done, data = cv2.imencode(".jpg", blue_first, [cv2.IMWRITE_JPEG_QUALITY, quality])
        if done and data.nbytes < LARGEST_BYTES:
            break
    return bytes(data)
