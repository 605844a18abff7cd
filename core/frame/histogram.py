"""How often each channel code occurs, and the brightest channel of each pixel."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Rows looked at together: the strip stays in the processor's cache (measured).
_STRIP_ROWS: Final = 64


@dataclass(frozen=True)
class Histogram:
    """Counts of pixels by code.

    `red_green_blue` has shape (3, 256); `brightest`, shape (256,), counts each pixel once, by
    the largest of its three codes.
    """

    red_green_blue: NDArray[np.int64]
    brightest: NDArray[np.int64]


def histogram(pixels: NDArray[np.uint8]) -> tuple[Histogram, NDArray[np.uint8]]:
    """Count the codes of a picture, all pixels.

    Args:
        pixels: red, green, blue, shape (H, W, 3).

    Returns:
        The counts, and the largest of the three codes of each pixel, shape (H, W).
    """
    counts = np.zeros((3, 256), np.int64)
    brightest = np.empty(pixels.shape[:2], np.uint8)
    for top in range(0, pixels.shape[0], _STRIP_ROWS):
        channels = cv2.split(pixels[top : top + _STRIP_ROWS])
        red, green, blue = (channel.astype(np.uint8, copy=False) for channel in channels)
        counts += np.stack([code_counts(red), code_counts(green), code_counts(blue)])
        cv2.max(cv2.max(red, green), blue, dst=brightest[top : top + _STRIP_ROWS])
    return Histogram(counts, code_counts(brightest)), brightest


def code_counts(plane: NDArray[np.uint8]) -> NDArray[np.int64]:
    """Counts of the codes 0 to 255 in one plane, shape (256,)."""
    return cv2.calcHist([plane], [0], None, [256], [0, 256]).ravel().astype(np.int64)


def percentile_code(counts: NDArray[np.int64], share: float) -> int:
    """Smallest code that at least `share` of the counted pixels do not exceed.

    Args:
        counts: shape (256,), at least one pixel counted.
        share: 0 to 1.
    """
    running = np.cumsum(counts)
    return int(np.searchsorted(running, share * running[-1]))
