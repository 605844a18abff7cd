"""Clipped pixels of a frame: how many, in which channels, in which areas."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.clipped_pixels import Ends, clipping_ends
from core.frame.histogram import brightest_channel, code_counts
from core.frame.kinds import name_areas
from core.frame.patches import Coverage
from core.frame.pixels import halvings_to, shrunk
from core.frame.report import Clipping

_CHANNELS: Final = ("red", "green", "blue")

#: Long side of the copy on which areas are told apart [px]; the figures of `kinds` hold there.
_WORKING_SIDE_PX: Final = 1600
#: Rows worked on together, a multiple of all blocks: they stay in the processor's cache (measured).
_STRIP_ROWS: Final = 64
#: Pixels around a place that its mask looks at.
_MARGIN: Final = 2


def find_clipping(
    pixels: NDArray[np.uint8],
    *,
    resized: bool = False,
    jpeg_quality: int | None = None,
    brightest: NDArray[np.uint8] | None = None,
    level: int | None = None,
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
    """
    if brightest is None:
        brightest = brightest_channel(pixels)
    counts = code_counts(brightest)
    ends = Ends.at(level) if level is not None else clipping_ends(
        counts, resized=resized, jpeg_quality=jpeg_quality
    )  # fmt: skip
    if counts[ends.end :].sum() == 0:
        return Clipping(0.0, dict.fromkeys(_CHANNELS, 0.0), level=ends.end)
    coverage, clipped, by_channel = coverage_of(pixels, brightest, ends)
    shares = dict(zip(_CHANNELS, (by_channel / brightest.size).tolist(), strict=True))
    return Clipping(clipped / brightest.size, shares, name_areas(coverage), ends.end)


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
    colour = np.concatenate(
        [
            shrunk(pixels[top : top + _STRIP_ROWS], halvings)
            for top in range(0, len(pixels) >> halvings << halvings, _STRIP_ROWS)
        ]
    )
    parts = np.zeros((4, *colour.shape[:2]), np.uint8)  # of any channel, and of each
    numbers = np.zeros(4, np.int64)
    for (rows, columns), any_channel in _masks(brightest, ends):
        masks = [any_channel, *ends.by_channel(pixels[rows, columns], any_channel)]
        numbers += [cv2.countNonZero(mask) for mask in masks]
        down, across = (slice(side.start >> halvings, side.stop >> halvings)
                        for side in (rows, columns))  # fmt: skip
        if down.start < down.stop and across.start < across.stop:  # else less than a block
            for part, mask in zip(parts, masks, strict=True):
                part[down, across] = shrunk(mask, halvings)
    channels = np.asarray(cv2.merge(list(parts[1:])), np.uint8)
    return Coverage(colour, parts[0], channels), int(numbers[0]), numbers[1:]


def _masks(
    brightest: NDArray[np.uint8], ends: Ends
) -> Iterator[tuple[tuple[slice, slice], NDArray[np.uint8]]]:
    """Where something is clipped: rows and columns, and the mask of the clipped pixels there.

    Places begin at a multiple of `_STRIP_ROWS`, down and across, and nothing outside them is
    clipped; most of a frame costs little that way.
    """
    height, width = brightest.shape
    for top in range(0, height, _STRIP_ROWS):
        bottom = min(top + _STRIP_ROWS, height)
        first = max(top - _MARGIN, 0)
        strip = brightest[first : bottom + _MARGIN]
        at_end = np.flatnonzero(strip.max(axis=0) >= ends.end)
        if len(at_end) == 0:
            continue
        left = max(int(at_end[0]) - _MARGIN, 0) // _STRIP_ROWS * _STRIP_ROWS
        last = min(int(at_end[-1]) + _MARGIN, width - 1)
        right = min((last // _STRIP_ROWS + 1) * _STRIP_ROWS, width)
        before = max(left - _MARGIN, 0)
        mask = ends.mask(strip[:, before : right + _MARGIN])
        inside = mask[top - first :, left - before :][: bottom - top, : right - left]
        yield (slice(top, bottom), slice(left, right)), np.ascontiguousarray(inside)
