"""Connected patches of clipped pixels, and what surrounds each of them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

#: Side of the square over which lightness is smoothed to see fine detail [px of the half copy].
#: Own rule.
_SMOOTH_PX: Final = 5

Mask = NDArray[np.bool_]
Indices = NDArray[np.intp]


@dataclass(frozen=True)
class Coverage:
    """A working copy of a frame: colour, and how much of each pixel is clipped.

    `colour`, shape (h, w, 3), is the mean colour; `clipped`, shape (h, w), and `channels`, shape
    (h, w, 3), are the part, 0 to 255, of the full-size pixels under each pixel that is clipped
    in any channel and in each channel.
    """

    colour: NDArray[np.uint8]
    clipped: NDArray[np.uint8]
    channels: NDArray[np.uint8]

    @cached_property
    def half_lab(self) -> NDArray[np.uint8]:
        """CIE L*a*b* of every second row and column, shape ((h + 1) // 2, (w + 1) // 2, 3).

        L* times 2.55, a* and b* plus 128; a quarter of the pixels takes a quarter of the time.
        """
        halved = np.ascontiguousarray(self.colour[::2, ::2])
        return cv2.cvtColor(halved, cv2.COLOR_RGB2LAB).astype(np.uint8, copy=False)

    @cached_property
    def half_smooth(self) -> NDArray[np.uint8]:
        """The lightness of `half_lab` without its fine detail."""
        light = np.ascontiguousarray(self.half_lab[..., 0])
        return np.asarray(cv2.blur(light, (_SMOOTH_PX, _SMOOTH_PX)), np.uint8)

    @cached_property
    def half_detail(self) -> NDArray[np.uint8]:
        """How far the lightness of `half_lab` is off `half_smooth`, in codes."""
        return np.asarray(cv2.absdiff(self.half_lab[..., 0], self.half_smooth), np.uint8)

    @cached_property
    def half_slopes(self) -> tuple[NDArray[np.int16], NDArray[np.int16]]:
        """Gradients of `half_smooth` across and down, eight times a code a pixel."""
        across, down = (cv2.Sobel(self.half_smooth, cv2.CV_16S, *way) for way in ((1, 0), (0, 1)))
        return np.asarray(across, np.int16), np.asarray(down, np.int16)


@dataclass(frozen=True)
class Patches:
    """Connected patches of a mask.

    `labels`, shape (h, w), is 0 outside and 1 to `count` - 1 inside the patches; the other
    arrays have `count` rows, row 0 being the outside: `boxes` left, top, width, height [px],
    `middles` x, y [px].
    """

    labels: NDArray[np.int32]
    boxes: NDArray[np.int32]
    middles: NDArray[np.float64]

    @property
    def count(self) -> int:
        """Number of patches and the outside."""
        return len(self.boxes)

    @cached_property
    def largest_sides(self) -> NDArray[np.int32]:
        """Larger side of each box [px], 0 for the outside."""
        sides = np.maximum(self.boxes[:, 2], self.boxes[:, 3])
        sides[0] = 0
        return sides

    @cached_property
    def inside(self) -> tuple[Indices, NDArray[np.int32]]:
        """Flat index and patch of each pixel inside."""
        inside = np.flatnonzero(self.labels > 0)  # of a mask it is four times as quick (measured)
        return inside, self.labels.ravel()[inside]

    def sums(self, weights: NDArray[np.uint8]) -> NDArray[np.float64]:
        """Sum of the weights over each patch, 0 for the outside.

        Args:
            weights: shape (h, w) or (h, w, 3).

        Returns:
            Shape (count,) or (count, 3).
        """
        inside, owners = self.inside
        if weights.ndim == 2:
            return _bin_sums(owners, weights.ravel()[inside], self.count)
        columns = weights.reshape(-1, weights.shape[2])[inside].T
        return np.stack([_bin_sums(owners, column, self.count) for column in columns], axis=1)

    def mask_of(self, chosen: NDArray[np.bool_]) -> Mask:
        """Where the chosen patches are, shape (h, w); `chosen` has shape (count,)."""
        inside, owners = self.inside
        mask = np.zeros(self.labels.shape, np.bool_)
        mask.ravel()[inside[chosen[owners]]] = True
        return mask

    @cached_property
    def sizes(self) -> NDArray[np.int64]:
        """Pixels of each patch, 0 for the outside."""
        return np.bincount(self.inside[1], minlength=self.count)

    @cached_property
    def surroundings(self) -> tuple[NDArray[np.float32], NDArray[np.int32]]:
        """Distance of every second pixel from the nearest patch [px], and that patch; flat.

        Every second row and column is looked at, which is four times as quick; a patch that
        falls between them has nothing around it.
        """
        labels = self.labels[::2, ::2]
        inside = labels > 0
        distances, nearest = cv2.distanceTransformWithLabels(
            (~inside).view(np.uint8), cv2.DIST_L2, 3, labelType=cv2.DIST_LABEL_CCOMP
        )
        patch_of = np.zeros(int(nearest.max()) + 1, np.int32)
        patch_of[nearest[inside]] = labels[inside]
        return (2 * distances.ravel()).astype(np.float32, copy=False), patch_of[nearest.ravel()]


def find_patches(mask: Mask) -> Patches:
    """Label the patches of a mask, shape (h, w); pixels that touch at a corner are connected."""
    # Memory of numpy's, which asks for large pages; and two by two pixels at a time: three times as
    # quick as the usual way (both measured).
    labels = np.empty(mask.shape, np.int32)
    _, _, stats, middles = cv2.connectedComponentsWithStatsWithAlgorithm(
        mask.view(np.uint8), 8, cv2.CV_32S, cv2.CCL_GRANA, labels
    )
    return Patches(
        labels,
        stats[:, :4].astype(np.int32),
        middles.astype(np.float64, copy=False),
    )


def closed(mask: Mask, radius_px: int) -> Mask:
    """The mask with gaps up to twice the radius closed."""
    size = 2 * radius_px + 1
    kernel = cv2.getStructuringElement(cv2.MORPH_RECT, (size, size))
    filled = cv2.morphologyEx(mask.view(np.uint8), cv2.MORPH_CLOSE, kernel)
    return filled.view(np.bool_)


def mean_around(
    values: NDArray[np.uint8], counted: Mask, points: Indices, radius_px: int
) -> NDArray[np.float64]:
    """Mean of the values that count in a square around each point.

    Args:
        values: shape (h, w).
        counted: where values count, shape (h, w).
        points: row and column of each point, shape (2, n).
        radius_px: half the side of the square.

    Returns:
        Shape (n,); 0 where nothing in the square counts.
    """
    ones = counted.view(np.uint8)
    number = square_sums(ones, points, radius_px)
    return square_sums(values * ones, points, radius_px) / np.maximum(number, 1)


def square_sums(values: NDArray[np.uint8], points: Indices, radius_px: int) -> NDArray[np.float64]:
    """Sum of the values in a square around each point, as far as it lies in the frame.

    Args:
        values: shape (h, w).
        points: row and column of each point, shape (2, n).
        radius_px: half the side of the square.

    Returns:
        Shape (n,).
    """
    running = cv2.integral(values)
    rows, columns = points
    top, left = np.maximum(rows - radius_px, 0), np.maximum(columns - radius_px, 0)
    bottom = np.minimum(rows + radius_px + 1, values.shape[0])
    right = np.minimum(columns + radius_px + 1, values.shape[1])
    below = running[bottom, right] - running[bottom, left]
    above = running[top, right] - running[top, left]
    return np.asarray(below - above, dtype=np.float64)


def _bin_sums(
    bins: NDArray[np.int32], weights: NDArray[np.uint8] | Mask, count: int
) -> NDArray[np.float64]:
    return np.bincount(bins, weights, count).astype(np.float64, copy=False)
