"""The four sides of a frame, each turned so that the border is its first row."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final, TypeVar

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.findings import Border

Floats = NDArray[np.float32]
Ints = NDArray[np.intp]
_Any = TypeVar("_Any", bound=np.generic)

#: Long side on which borders are measured [px]: the figures hold there.
SIDE_PX: Final = 1000
#: How far in from a border anything is looked at, over the short side. Own rule: what reaches
#: further in is in the picture, not at its border.
REACH: Final = 0.25
#: Size of the places by which the colours of a whole frame are known, over the long side.
_PLACES: Final = 48
#: OpenCV stores L* times 2.55, and a* and b* plus 128, in eight bits.
LIGHTNESS_OF_CODE: Final = 100 / 255
_LIGHTNESS: Final = np.array([LIGHTNESS_OF_CODE, 1, 1], np.float32)
_MIDDLE: Final = np.array([0, 128, 128], np.float32)


def turned(picture: NDArray[_Any], border: Border) -> NDArray[_Any]:
    """A view whose first row lies along a border, its positions counted from the top or left.

    Args:
        picture: shape (h, w) or (h, w, channels).
        border: which.
    """
    if border is Border.TOP:
        return picture
    if border is Border.BOTTOM:
        return picture[::-1]
    lying = picture if border is Border.LEFT else picture[:, ::-1]
    return lying.swapaxes(0, 1)


def lab_of(stored: NDArray[np.generic]) -> Floats:
    """CIE L*a*b* of eight-bit codes or of means of them, shape (…, 3)."""
    return np.asarray(np.asarray(stored, np.float32) * _LIGHTNESS - _MIDDLE, np.float32)


@dataclass(frozen=True)
class Canvas:
    """A frame's colours at the size at which its borders are measured.

    `stored` is CIE L*a*b* in eight bits, shape (h, w, 3).
    """

    stored: NDArray[np.uint8]

    @classmethod
    def of(cls, pixels: NDArray[np.uint8]) -> Canvas:
        """Reduce a picture, red, green, blue, shape (H, W, 3); a smaller one stays as it is."""
        scale = min(1.0, SIDE_PX / max(pixels.shape))
        size = tuple(max(1, round(side * scale)) for side in pixels.shape[1::-1])
        small = pixels if scale == 1.0 else cv2.resize(pixels, size, interpolation=cv2.INTER_AREA)
        return cls(np.asarray(cv2.cvtColor(small, cv2.COLOR_RGB2LAB), np.uint8))

    @property
    def short_px(self) -> int:
        """The short side."""
        return int(min(self.stored.shape[:2]))

    @cached_property
    def sums(self) -> NDArray[np.int32]:
        """Sums of all that lies above and to the left, shape (h + 1, w + 1, 3)."""
        return np.asarray(cv2.integral(self.stored), np.int32)

    @cached_property
    def squares(self) -> NDArray[np.float64]:
        """The same of the squared lightness, shape (h + 1, w + 1)."""
        return np.asarray(cv2.integral2(np.ascontiguousarray(self.stored[..., 0]))[1], np.float64)

    @cached_property
    def places(self) -> Floats:
        """Colours of places all over the frame, shape (n, 3)."""
        scale = min(1.0, _PLACES / max(self.stored.shape))
        size = tuple(max(1, round(side * scale)) for side in self.stored.shape[1::-1])
        return lab_of(cv2.resize(self.stored, size, interpolation=cv2.INTER_AREA).reshape(-1, 3))

    def side(self, border: Border) -> Side:
        """One side of it."""
        return Side(self, border)


@dataclass(frozen=True)
class Side:
    """One side of a frame: rows go inwards, positions along the border."""

    canvas: Canvas
    border: Border

    @cached_property
    def stored(self) -> NDArray[np.uint8]:
        """As `Canvas.stored`, the border as the first row."""
        return turned(self.canvas.stored, self.border)

    @property
    def length_px(self) -> int:
        """Of the border."""
        return int(self.stored.shape[1])

    @property
    def short_px(self) -> int:
        """The short side of the frame."""
        return self.canvas.short_px

    @property
    def reach_px(self) -> int:
        """How far in anything is looked at."""
        return max(1, round(REACH * self.short_px))

    @property
    def _sign(self) -> int:
        """Turned sums run backwards where the border is on the far side."""
        return -1 if self.border in {Border.BOTTOM, Border.RIGHT} else 1

    def means(self, depths: tuple[Ints, Ints], along: tuple[Ints, Ints]) -> tuple[Floats, Floats]:
        """Colours of rectangles, and which part of each lies in the frame.

        Args:
            depths: first row and the one behind the last, shape (…).
            along: first position and the one behind the last, shape (…).

        Returns:
            CIE L*a*b*, shape (…, 3), and parts, shape (…), 0 to 1.
        """
        rows, columns = self._held(depths, along)
        count = np.maximum((rows[1] - rows[0]) * (columns[1] - columns[0]), 1)
        whole = np.maximum((depths[1] - depths[0]) * (along[1] - along[0]), 1)
        total = self._sign * _differences(turned(self.canvas.sums, self.border), rows, columns)
        inside = (rows[1] > rows[0]) & (columns[1] > columns[0])
        part = np.where(inside, count / whole, 0.0)
        return lab_of(total / count[..., None]), np.asarray(part, np.float32)

    def spreads(self, depths: tuple[Ints, Ints], along: tuple[Ints, Ints]) -> Floats:
        """Standard deviation of the lightness in rectangles [L*]; as `means`."""
        rows, columns = self._held(depths, along)
        count = np.maximum((rows[1] - rows[0]) * (columns[1] - columns[0]), 1)
        squares = self._sign * _differences(turned(self.canvas.squares, self.border), rows, columns)
        sums = turned(self.canvas.sums[..., 0], self.border)
        mean = self._sign * _differences(sums, rows, columns) / count
        variance = np.maximum(squares / count - mean**2, 0)
        return np.asarray(np.sqrt(variance) * _LIGHTNESS[0], np.float32)

    def _held(
        self, depths: tuple[Ints, Ints], along: tuple[Ints, Ints]
    ) -> tuple[tuple[Ints, Ints], tuple[Ints, Ints]]:
        """What of rectangles lies in the frame."""
        deep, long = self.stored.shape[:2]
        rows = np.clip(depths[0], 0, deep), np.clip(depths[1], 0, deep)
        return rows, (np.clip(along[0], 0, long), np.clip(along[1], 0, long))


def _differences(
    sums: NDArray[np.generic], rows: tuple[Ints, Ints], columns: tuple[Ints, Ints]
) -> NDArray[np.float64]:
    (top, bottom), (left, right) = rows, columns
    corners = (sums[bottom, right], sums[top, right], sums[bottom, left], sums[top, left])
    first, second, third, fourth = (np.asarray(corner, np.float64) for corner in corners)
    return np.asarray(first - second - third + fourth)
