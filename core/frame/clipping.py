"""Clipped pixels of a frame: how many, in which channels, in which areas."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.clipped_pixels import MARGIN_PX, Ends, clipping_ends
from core.frame.histogram import brightest_channel, code_counts
from core.frame.kinds import name_areas
from core.frame.patches import Coverage
from core.frame.pixels import halved, halvings_to, shrunk
from core.frame.report import Clipping

_CHANNELS: Final = ("red", "green", "blue")
_WHITE: Final = 255

#: Long side of the copy on which areas are told apart [px]; the figures of `kinds` hold there.
_WORKING_SIDE_PX: Final = 1600
#: Rows and columns worked on together, multiples of all blocks: they stay in the processor's cache,
#: and most of them, without anything clipped, cost nothing (measured).
_TILE_ROWS: Final = 128
_TILE_COLUMNS: Final = 256


def find_clipping(
    pixels: NDArray[np.uint8],
    *,
    resized: bool = False,
    jpeg_quality: int | None = None,
    brightest: NDArray[np.uint8] | None = None,
    level: int | None = None,
    water_cells: tuple[str, ...] | None = None,
) -> Clipping:
    """Find what is clipped and tell sparkle, white water, sky gaps and lamps apart.

    Shares are counted on the full picture: exact in files without loss, "about" in a JPEG. Areas
    are told apart on a copy of about 1600 px whose pixels know which part of them is clipped, so
    that the smallest sparkle still counts.

    Args:
        pixels: upright, red, green, blue, shape (H, W, 3).
        resized: the picture is smaller than the camera's.
        jpeg_quality: 1 to 100, None for files without loss.
        brightest: what `brightest_channel` gives for `pixels`, when it has been asked already.
        level: code from which a pixel is clipped, where it is known; else it is found.
        water_cells: where the person says that the water is, A1 to D4.

    Raises:
        UnknownCellError: the grid has no such cell.
    """
    if brightest is None:
        brightest = brightest_channel(pixels)
    if level is not None:
        ends, at_end = Ends.at(level), int(brightest.max()) >= level
    else:
        counts = code_counts(brightest)
        ends = clipping_ends(counts, resized=resized, jpeg_quality=jpeg_quality)
        at_end = bool(counts[ends.end :].any())
    if not at_end:
        return Clipping(0.0, dict.fromkeys(_CHANNELS, 0.0), level=ends.end)
    coverage, clipped, by_channel = coverage_of(pixels, brightest, ends)
    shares = dict(zip(_CHANNELS, (by_channel / brightest.size).tolist(), strict=True))
    areas = name_areas(coverage, water_cells)
    return Clipping(clipped / brightest.size, shares, areas, ends.end)


def coverage_of(
    pixels: NDArray[np.uint8], brightest: NDArray[np.uint8], ends: Ends
) -> tuple[Coverage, int, NDArray[np.int64]]:
    """The working copy, and how many pixels are clipped: in any channel, and in each.

    Args:
        pixels: shape (H, W, 3).
        brightest: the largest code of each pixel, shape (H, W), somewhere at the end.
        ends: codes that decide.
    """
    halvings = halvings_to(max(brightest.shape), _WORKING_SIDE_PX)
    colour = _shrunk_by_strips(pixels, halvings)
    copy = Coverage(colour, np.zeros(colour.shape[:2], np.uint8), np.zeros_like(colour))
    clipped, by_channel = 0, np.zeros(3, np.int64)
    for (rows, columns), mask in _masks(pixels, brightest, ends):
        channels = ends.by_channel(pixels[rows, columns], mask)
        clipped += cv2.countNonZero(mask)
        by_channel += np.array(cv2.sumElems(channels)[:3]).astype(np.int64) // _WHITE
        down, across = (slice(side.start >> halvings, side.stop >> halvings)
                        for side in (rows, columns))  # fmt: skip
        if down.start < down.stop and across.start < across.stop:  # else less than a block
            copy.clipped[down, across] = shrunk(mask, halvings)
            copy.channels[down, across] = shrunk(channels, halvings)
    return copy, clipped, by_channel


def _shrunk_by_strips(pixels: NDArray[np.uint8], halvings: int) -> NDArray[np.uint8]:
    """What `shrunk` gives, in less time: strips stay in the cache and keep their memory."""
    if halvings == 0:
        return pixels
    height, width = (side >> halvings for side in pixels.shape[:2])
    out = np.empty((height, width, 3), np.uint8)
    between = [
        np.empty((_TILE_ROWS >> step, pixels.shape[1] >> step, 3), np.uint8)
        for step in range(1, halvings)
    ]
    for top in range(0, height, _TILE_ROWS >> halvings):
        strip = pixels[top << halvings :][:_TILE_ROWS]
        for into in [*between, out[top:]]:
            strip = halved(strip, into)
    return out


def _masks(
    pixels: NDArray[np.uint8], brightest: NDArray[np.uint8], ends: Ends
) -> Iterator[tuple[tuple[slice, slice], NDArray[np.uint8]]]:
    """Where something is clipped: rows and columns, and the mask of the clipped pixels there.

    Places begin at a multiple of all blocks, down and across; outside them nothing is clipped.
    """
    height, width = brightest.shape
    # Where a level alone decides, so little is done that small places take longer (measured).
    tile_columns = _TILE_COLUMNS if ends.looks_around else width
    for top in range(0, height, _TILE_ROWS):
        rows, high, inner_rows = _with_margin(top, _TILE_ROWS, height)
        at_end = brightest[high].max(axis=0) >= ends.end
        for left in range(0, width, tile_columns):
            columns, wide, inner_columns = _with_margin(left, tile_columns, width)
            if at_end[wide].any():
                mask = ends.mask(pixels[high, wide], brightest[high, wide])[
                    inner_rows, inner_columns
                ]
                yield (rows, columns), np.ascontiguousarray(mask)


def _with_margin(first: int, length: int, size: int) -> tuple[slice, slice, slice]:
    """A stretch of a side, the same with the margin that its mask looks at, and it inside that."""
    end = min(first + length, size)
    before = max(first - MARGIN_PX, 0)
    around = slice(before, min(end + MARGIN_PX, size))
    return slice(first, end), around, slice(first - before, end - before)
