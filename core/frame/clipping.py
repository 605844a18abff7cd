"""Clipped pixels of a frame: how many, in which channels, in which areas."""

from __future__ import annotations

from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.histogram import brightest_channel, code_counts
from core.frame.kinds import name_areas
from core.frame.patches import Coverage
from core.frame.pixels import halvings_to, shrunk
from core.frame.report import Clipping

#: Codes from which a pixel counts as clipped in any channel. Source: precision and recall against
#: masks from linear data on six pushed photographs, own measurement: 252 gives .98/.94 on a
#: good JPEG; 250 keeps the recall of coarse and of resized copies. 255 loses up to two thirds.
_LEVEL: Final = 252
_LEVEL_COARSE: Final = 250
#: Below this JPEG quality a file is coarse; same source.
_COARSE_QUALITY: Final = 80

# A file whose whites were capped below the end of the scale by a camera or an editor: its codes
# pile up at the cap and hardly any lie above it. Own rule.
_LOWEST_CAP: Final = 235
_PILE_HALF_WIDTH: Final = 2
_PILE_SHARE: Final = 5e-4
_PILE_OVER_BELOW: Final = 3.0
_PEAK_OF_PILE: Final = 0.5  # grain would spread a bright surface that is not capped
_ABOVE_OVER_PILE: Final = 0.12  # JPEG rings a little above sharp edges

_CHANNELS: Final = ("red", "green", "blue")

#: Long side of the copy on which areas are told apart [px]; the figures of `kinds` hold there.
_WORKING_SIDE_PX: Final = 1600
#: Rows worked on together, a multiple of all blocks: they stay in the processor's cache (measured).
_STRIP_ROWS: Final = 64


def find_clipping(
    pixels: NDArray[np.uint8],
    *,
    resized: bool = False,
    jpeg_quality: int | None = None,
    brightest: NDArray[np.uint8] | None = None,
    level: int | None = None,
) -> Clipping:
    """Find what is clipped and tell sparkle, white water and sky gaps apart.

    Shares are exact on the full picture; areas are told apart on a copy of about 1600 px whose
    pixels know which part of them is clipped, so that the smallest sparkle still counts.

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
    if level is None:
        level = clipping_level(counts, resized=resized, jpeg_quality=jpeg_quality)
    clipped = int(counts[level:].sum())
    if clipped == 0:
        return Clipping(0.0, dict.fromkeys(_CHANNELS, 0.0))
    coverage, by_channel = _coverage(pixels, brightest, level)
    shares = dict(zip(_CHANNELS, (by_channel / brightest.size).tolist(), strict=True))
    return Clipping(clipped / brightest.size, shares, name_areas(coverage))


def clipping_level(
    brightest_counts: NDArray[np.int64], *, resized: bool, jpeg_quality: int | None
) -> int:
    """Code from which a pixel is clipped, by the kind of file and by where its codes pile up.

    Args:
        brightest_counts: counts of the largest code of each pixel, shape (256,).
        resized: the picture is smaller than the camera's.
        jpeg_quality: 1 to 100, None for files without loss.
    """
    coarse = resized or (jpeg_quality is not None and jpeg_quality < _COARSE_QUALITY)
    level = _LEVEL_COARSE if coarse else _LEVEL
    cap = _cap(brightest_counts)
    return level if cap is None else cap - (255 - level)


def _cap(counts: NDArray[np.int64]) -> int | None:
    """Code at which whites were capped below `_LEVEL_COARSE`, None when they were not."""
    peak = _LOWEST_CAP + int(np.argmax(counts[_LOWEST_CAP:_LEVEL_COARSE]))
    first, end = peak - _PILE_HALF_WIDTH, peak + _PILE_HALF_WIDTH + 1
    pile, above = counts[first:end].sum(), counts[end:].sum()
    width = end - first
    below = counts[first - 2 * width : first].sum() / 2
    capped = (
        pile >= _PILE_SHARE * counts.sum()
        and above <= _ABOVE_OVER_PILE * pile
        and pile >= _PILE_OVER_BELOW * below
        and counts[peak] >= _PEAK_OF_PILE * pile
    )
    return peak if capped else None


def _coverage(
    pixels: NDArray[np.uint8], brightest: NDArray[np.uint8], level: int
) -> tuple[Coverage, NDArray[np.float64]]:
    """The working copy, strip by strip, and the number of clipped pixels by channel."""
    halvings = halvings_to(max(brightest.shape), _WORKING_SIDE_PX)
    numbers = np.zeros(3)
    strips: list[tuple[NDArray[np.uint8], ...]] = []
    for top in range(0, brightest.shape[0], _STRIP_ROWS):
        colour = pixels[top : top + _STRIP_ROWS]
        by_channel = _at_least(colour, level)
        numbers += np.array(cv2.sumElems(by_channel)[:3]) / 255
        any_channel = _at_least(brightest[top : top + _STRIP_ROWS], level)
        if len(colour) >> halvings:  # a last strip may be lower than one block
            planes = (colour, any_channel, by_channel)
            strips.append(tuple(shrunk(plane, halvings) for plane in planes))
    return Coverage(*(np.concatenate(parts) for parts in zip(*strips, strict=True))), numbers


def _at_least(codes: NDArray[np.uint8], level: int) -> NDArray[np.uint8]:
    """255 where a code reaches the level, else 0; same shape."""
    mask = cv2.threshold(codes, level - 1, 255, cv2.THRESH_BINARY)[1]
    return mask.astype(np.uint8, copy=False)
