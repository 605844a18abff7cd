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
from core.frame.stretches import Stretches

_CHANNELS: Final = ("red", "green", "blue")
_WHITE: Final = 255

#: Long side of the copy on which areas are told apart [px]; the figures of `kinds` hold there.
_WORKING_SIDE_PX: Final = 1600
#: Rows that are made smaller together, a multiple of all blocks: they stay in the processor's cache
#: (measured).
_STRIP_ROWS: Final = 128
#: Rows in which clipped pixels are looked for together, a multiple of all blocks: of a frame with
#: grain and ragged white a seventh is looked at then, with twice as many a fifth (measured).
_SEARCHED_ROWS: Final = 64


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
    for rows, stretches, mask in _masks(pixels, brightest, ends):
        channels = ends.by_channel(stretches.of(pixels[rows]), mask)
        clipped += cv2.countNonZero(mask)
        by_channel += np.array(cv2.sumElems(channels)[:3]).astype(np.int64) // _WHITE
        down = slice(rows.start >> halvings, rows.stop >> halvings)
        if down.start < down.stop:  # else less than a block
            stretches.spread(shrunk(mask, halvings), copy.clipped[down], halvings)
            stretches.spread(shrunk(channels, halvings), copy.channels[down], halvings)
    return copy, clipped, by_channel


def _shrunk_by_strips(pixels: NDArray[np.uint8], halvings: int) -> NDArray[np.uint8]:
    """What `shrunk` gives, in less time: strips stay in the cache and keep their memory."""
    if halvings == 0:
        return pixels
    height, width = (side >> halvings for side in pixels.shape[:2])
    out = np.empty((height, width, 3), np.uint8)
    between = [
        np.empty((_STRIP_ROWS >> step, pixels.shape[1] >> step, 3), np.uint8)
        for step in range(1, halvings)
    ]
    for top in range(0, height, _STRIP_ROWS >> halvings):
        strip = pixels[top << halvings :][:_STRIP_ROWS]
        for into in [*between, out[top:]]:
            strip = halved(strip, into)
    return out


def _masks(
    pixels: NDArray[np.uint8], brightest: NDArray[np.uint8], ends: Ends
) -> Iterator[tuple[slice, Stretches, NDArray[np.uint8]]]:
    """Where something is clipped: rows, stretches of columns, and the mask of these side by side.

    Rows begin at a multiple of all blocks; outside the stretches nothing is clipped.
    """
    height, width = brightest.shape
    for top in range(0, height, _SEARCHED_ROWS):
        rows = slice(top, min(top + _SEARCHED_ROWS, height))
        high = slice(max(top - MARGIN_PX, 0), rows.stop + MARGIN_PX)
        at_end = brightest[high].max(axis=0) >= ends.end
        if not at_end.any():
            continue
        # Where a level alone decides, so little is done that to choose columns takes longer
        # (measured).
        stretches = (
            Stretches.around(at_end, MARGIN_PX) if ends.looks_around
            else Stretches([(0, width)], width, 0)
        )  # fmt: skip
        mask = ends.mask(
            stretches.with_margins(pixels[high]), stretches.with_margins(brightest[high])
        )[top - high.start :][: rows.stop - top]
        yield rows, stretches, np.ascontiguousarray(stretches.without_margins(mask))
