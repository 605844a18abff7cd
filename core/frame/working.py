"""The working copy of a frame on which borders, water and sharpness are measured."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.srgb import linear_of

#: Long side [px]: the figures of the measurements hold there.
WORKING_SIDE_PX: Final = 1600

#: Linear light of each code, 0 to 1.
LINEAR_OF_CODE: Final[NDArray[np.float32]] = linear_of(np.arange(256) / 255).astype(np.float32)
#: Luminance of linear red, green, blue. Source: IEC 61966-2-1, after ITU-R BT.709.
_LUMINANCE: Final = np.array([[0.2126, 0.7152, 0.0722]], np.float32)


@dataclass(frozen=True)
class WorkingCopy:
    """A small copy of a frame and what is derived from it, each made once.

    `pixels` has shape (h, w, 3), red, green, blue, long side at most `WORKING_SIDE_PX`; `scale`
    is its size over the frame's, 0 to 1.
    """

    pixels: NDArray[np.uint8]
    scale: float

    @cached_property
    def luminance(self) -> NDArray[np.float32]:
        """Linear light, shape (h, w), 0 to 1, with the sRGB curve assumed."""
        return luminance_of(self.pixels)

    @cached_property
    def lab(self) -> NDArray[np.float32]:
        """CIE L*a*b* (D65, 2 degrees), shape (h, w, 3), L* from 0 to 100."""
        scaled = self.pixels.astype(np.float32) / 255
        return np.asarray(cv2.cvtColor(scaled, cv2.COLOR_RGB2LAB), np.float32)


def luminance_of(pixels: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Linear light with the sRGB curve assumed, shape (h, w), 0 to 1.

    Args:
        pixels: red, green, blue, shape (h, w, 3).
    """
    return np.asarray(cv2.transform(cv2.LUT(pixels, LINEAR_OF_CODE), _LUMINANCE), np.float32)


def box_of(inside: NDArray[np.bool_]) -> tuple[slice, slice]:
    """The rows and the columns in which a mask, shape (h, w), holds anything."""
    rows, columns = np.flatnonzero(inside.any(axis=1)), np.flatnonzero(inside.any(axis=0))
    return slice(int(rows[0]), int(rows[-1]) + 1), slice(int(columns[0]), int(columns[-1]) + 1)


def working_copy(pixels: NDArray[np.uint8]) -> WorkingCopy:
    """The working copy of a frame, by area averages; a smaller frame stays as it is.

    Args:
        pixels: upright, red, green, blue, shape (H, W, 3).
    """
    height, width = pixels.shape[:2]
    scale = min(1.0, WORKING_SIDE_PX / max(height, width))
    if scale == 1.0:
        return WorkingCopy(pixels, scale)
    size = (max(1, round(width * scale)), max(1, round(height * scale)))
    small = cv2.resize(pixels, size, interpolation=cv2.INTER_AREA)
    return WorkingCopy(np.asarray(small, np.uint8), scale)
