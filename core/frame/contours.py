"""Outlines of clipped areas: few points, in shares of the frame."""

from __future__ import annotations

from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.patches import Patches

#: Most points of an outline: eight areas of them make some 10 kB of JSON. Own rule.
MOST_POINTS: Final = 64
#: An outline stays this near to its area, over the long side, where the points allow it: half a
#: pixel where a phone shows the frame. Own rule.
_NEAR: Final = 1 / 800
#: Decimals of a share: a pixel of the largest camera is 1e-4 of its long side.
_DECIMALS: Final = 4

Points = tuple[tuple[float, float], ...]


def contour_of(patches: Patches, label: int) -> Points:
    """The outer outline of one patch.

    Args:
        patches: of the frame's working copy.
        label: of the patch, from 1.

    Returns:
        At most `MOST_POINTS` points, across and down in shares of the frame, 0 to 1; the last
        is joined to the first.
    """
    height, width = patches.labels.shape
    left, top, wide, high = (int(value) for value in patches.boxes[label])
    inside = patches.labels[top : top + high, left : left + wide] == label
    # Twice as large, so that the outline runs round the pixels and not through their middles.
    doubled = cv2.resize(inside.astype(np.uint8), None, fx=2, fy=2, interpolation=cv2.INTER_NEAREST)
    found, _ = cv2.findContours(doubled, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_SIMPLE)
    near_px = min(2 * _NEAR * max(height, width), min(wide, high) / 2)
    line = _simplified(np.asarray(max(found, key=cv2.contourArea), np.int32), near_px)
    # Corners of the doubled pixels lie at 0 to 2 wide - 1; they are spread to 0 to 2 wide.
    ends = np.maximum(np.array([2 * wide - 1, 2 * high - 1]), 1)
    places = (line / ends * (wide, high) + (left, top)) / (width, height)
    return tuple((round(float(across), _DECIMALS), round(float(down), _DECIMALS))
                 for across, down in places)  # fmt: skip


def _simplified(contour: NDArray[np.int32], near_px: float) -> NDArray[np.int32]:
    """The same line with few points, shape (n, 2), as near as these allow."""
    while len(line := cv2.approxPolyDP(contour, near_px, closed=True)) > MOST_POINTS:
        near_px *= 1.5
    return line.reshape(-1, 2).astype(np.int32)
