"""How often each code occurs, and the brightest channel of each pixel."""

from __future__ import annotations

from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Rows worked on together: the strip stays in the processor's cache (measured).
_STRIP_ROWS: Final = 64


def brightest_channel(pixels: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """The largest of the three codes of each pixel.

    Args:
        pixels: shape (H, W, 3).

    Returns:
        Shape (H, W).
    """
    height, width = pixels.shape[:2]
    brightest = np.empty((height, width), np.uint8)
    # Memory that is used again: to ask for it anew for each strip took as long as the work.
    planes = [np.empty((_STRIP_ROWS, width), np.uint8) for _ in range(3)]
    for top in range(0, height, _STRIP_ROWS):
        largest = brightest[top : top + _STRIP_ROWS]
        red, green, blue = (plane[: len(largest)] for plane in planes)
        cv2.split(pixels[top : top + _STRIP_ROWS], (red, green, blue))
        cv2.max(cv2.max(red, green, dst=largest), blue, dst=largest)
    return brightest


def code_counts(plane: NDArray[np.uint8]) -> NDArray[np.int64]:
    """Counts of the codes 0 to 255 in one plane, shape (H, W); the result has shape (256,)."""
    return cv2.calcHist([plane], [0], None, [256], [0, 256]).ravel().astype(np.int64)


def percentile_code(counts: NDArray[np.int64], share: float) -> int:
    """Smallest code that at least `share` of the counted pixels do not exceed.

    Args:
        counts: shape (256,), at least one pixel counted.
        share: 0 to 1.
    """
    running = np.cumsum(counts)
    return int(np.searchsorted(running, share * running[-1]))
