"""Photographs behind a front glass with drops on it."""

from __future__ import annotations

from collections.abc import Sequence

import cv2
import numpy as np
import skimage.data
from numpy.typing import NDArray

Pixels = NDArray[np.uint8]

#: Centres (across, down) and radii of the drops [px of 600 x 400].
DROPS = ((150, 120, 14), (430, 270, 18))


def texture(name: str) -> Pixels:
    """A photograph with detail everywhere, shape (400, 600, 3)."""
    grey = np.asarray(getattr(skimage.data, name)())
    sized = cv2.resize(grey, (600, 400), interpolation=cv2.INTER_AREA)
    return np.repeat(np.asarray(sized, np.uint8)[..., None], 3, axis=2)


def wet(pixels: Pixels, drops: Sequence[tuple[int, int, int]] = DROPS) -> Pixels:
    """Soft round spots on it."""
    soft = cv2.GaussianBlur(pixels, (0, 0), 8)
    rows, columns = np.mgrid[: pixels.shape[0], : pixels.shape[1]]
    result = pixels.copy()
    for across, down, radius in drops:
        inside = np.hypot(columns - across, rows - down) < radius
        result[inside] = soft[inside]
    return result
