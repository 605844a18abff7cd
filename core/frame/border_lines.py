"""Places along a side that differ from both neighbours and go on inwards: lines, cut shapes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.border_sides import LIGHTNESS_OF_CODE, Floats, Side

# Sizes are shares of the short side; limits from an own measurement on 45 photographs with 429
# things planted at their borders.
_WIDTHS: Final = (0.004, 0.007, 0.012, 0.02, 0.035, 0.06, 0.10, 0.16)
_NARROW: Final = 0.02  # up to here with the slopes of branches
_LEAST_WIDTH_PX: Final = 3
_LEAST_DEPTH: Final = 0.025
_MOST_DEPTH: Final = 0.09
_DEPTH_OF_WIDTH: Final = 1.2
#: Positions per row inwards: how a thing leans.
_BRANCH_SLOPES: Final = (0.0, -0.4, 0.4, -0.9, 0.9, -1.8, 1.8)
_SHAPE_SLOPES: Final = (0.0, -0.7, 0.7)
_LEAST_FLANK: Final = 0.012
#: Parts of a window and of a flank that lie in the frame at least.
_WINDOW_PART: Final = 0.6
_FLANK_PART: Final = 0.5
#: The second third of the depth may be weaker by this, and its colour must differ the same way.
_SECOND: Final = 1.25
_AGREEMENT: Final = 0.6
#: What is usual along a side: this percentile of the steps, and a least step [CIE dE].
_USUAL: Final = 65
_LEAST_USUAL: Final = 3.0
_LEAST_SALIENCE: Final = 3.2
_LEAST_STEP: Final = 8.0
#: Two places nearer than this part of their mean width are one.
_APART: Final = 0.8
#: As many places as are looked at more closely, a side. Own rule.
_MOST: Final = 12
#: Positions are tried this often over a window's width.
_TRIES: Final = 8


@dataclass(frozen=True)
class Places:
    """Places along one side, the most salient first; arrays of shape (n,), or (n, 3).

    `at` is the middle [px along the border], `width` of the window [px], `slope` how it leans
    [px along the border per px inwards], `step` the colour difference to the more alike flank
    [CIE dE], `salience` that step over what is usual there, `flanks` the difference between both
    flanks [CIE dE], `way` the direction of the step in CIE L*a*b*, `alone` says that there is one
    flank only, the other would lie outside of the frame.
    """

    at: NDArray[np.intp]
    width: NDArray[np.intp]
    slope: Floats
    step: Floats
    salience: Floats
    flanks: Floats
    way: Floats
    alone: NDArray[np.bool_]

    def __len__(self) -> int:
        """How many."""
        return len(self.at)

    def chosen(self, which: NDArray[np.intp]) -> Places:
        """Some of them, in that order."""
        return Places(*(values[which] for values in vars(self).values()))


def salient_places(side: Side) -> Places:
    """Where something differs from both sides of it, at any width and slope.

    Args:
        side: of a frame.

    Returns:
        At most a dozen places, none on another.
    """
    found = list(_peaks(side))
    places = Places(*(np.concatenate(parts) for parts in zip(*found, strict=True)))
    order = np.argsort(-places.salience, kind="stable")
    kept: list[int] = []
    for index in order.tolist():
        near = np.abs(places.at[kept] - places.at[index])
        if np.all(near >= _APART * (places.width[kept] + places.width[index]) / 2):
            kept.append(index)
        if len(kept) == _MOST:
            break
    return places.chosen(np.array(kept, np.intp))


def _peaks(side: Side) -> Iterator[tuple[NDArray[np.generic], ...]]:
    """Peaks of each width and slope, as the fields of `Places`."""
    summed: dict[tuple[int, float], NDArray[np.int32]] = {}
    planes = _planes(side)
    for share in _WIDTHS:
        width = max(_LEAST_WIDTH_PX, 2 * round((share * side.short_px - 1) / 2) + 1)
        deep = np.clip(_DEPTH_OF_WIDTH * share, _LEAST_DEPTH, _MOST_DEPTH) * side.short_px
        depth = max(3, round(float(deep)))
        for slope in _BRANCH_SLOPES if share <= _NARROW else _SHAPE_SLOPES:
            if (depth, slope) not in summed:
                summed[depth, slope] = _sheared(planes, depth, slope, _outside(side))
            yield _peaks_of(side, summed[depth, slope], width, slope)


def _planes(side: Side) -> NDArray[np.int32]:
    """Rows next to the border: L*, a*, b* as stored and a 1 for each pixel, shape (4, rows, n)."""
    rows = side.stored[: max(3, round(_MOST_DEPTH * side.short_px))]
    ones = np.ones((1, *rows.shape[:2]), np.int32)
    return np.concatenate([np.moveaxis(rows, 2, 0).astype(np.int32), ones])


def _sheared(planes: NDArray[np.int32], depth: int, slope: float, beyond: int) -> NDArray[np.int32]:
    """Sums along the border of the first and the second third of a depth, leaning by a slope.

    Returns:
        Shape (4, 2, n + 1), as `_planes`, with `beyond` positions more before and behind.
    """
    long = planes.shape[2]
    sums = np.zeros((4, 2, long + 2 * beyond + 1), np.int32)
    for row in range(min(max(2, 2 * depth // 3), planes.shape[1])):
        shift = beyond + 1 - int(np.rint(slope * row))
        sums[:, int(row >= depth // 3), shift : shift + long] += planes[:, row]
    return np.asarray(np.cumsum(sums, axis=2, out=sums))


def _outside(side: Side) -> int:
    """Positions outside of the frame that windows, flanks and slopes can reach."""
    return round(0.4 * side.short_px) + 8 * _LEAST_WIDTH_PX


def _peaks_of(
    side: Side, summed: NDArray[np.int32], width: int, slope: float
) -> tuple[NDArray[np.generic], ...]:
    """Where one width and slope is most salient, as the fields of `Places`."""
    at = _positions(side.length_px, width)
    steps, ways, flanks, alone = _steps(summed, at + _outside(side), width, side.short_px)
    size = np.abs(steps[0])
    rank = _USUAL * (len(size) - 1) // 100
    usual = float(np.partition(size, rank)[rank])
    agree = np.einsum("cn,cn->n", ways[:, 0], ways[:, 1]) > _AGREEMENT
    step = np.where(agree, np.minimum(steps[0], _SECOND * steps[1]), 0)
    salience = step / np.float32(np.hypot(usual, _LEAST_USUAL))
    highest = cv2.dilate(salience[None], np.ones((1, _TRIES + 1), np.uint8))[0]
    peak = (salience >= highest) & (salience >= _LEAST_SALIENCE) & (step >= _LEAST_STEP)
    count = int(np.count_nonzero(peak))
    return (
        at[peak], np.full(count, width, np.intp), np.full(count, slope, np.float32),
        step[peak], salience[peak], flanks[peak], ways[:, 0, peak].T, alone[peak],
    )  # fmt: skip


def _positions(length: int, width: int) -> NDArray[np.intp]:
    """Positions to try, some over each width, the same from both ends."""
    stride = max(1, width // _TRIES)
    while (length - 1) % stride % 2:
        stride -= 1
    return np.arange((length - 1) % stride // 2, length, stride)


def _steps(
    summed: NDArray[np.int32], at: NDArray[np.intp], width: int, short: int
) -> tuple[Floats, Floats, Floats, NDArray[np.bool_]]:
    """Steps, shape (2, n), and their directions, shape (3, 2, n), in both thirds.

    Then the difference of the flanks, and where there is only one of them, shape (n,).
    """
    half, gap = width // 2, round(width / 3)
    flank = max(width, round(_LEAST_FLANK * short))
    outer = half + gap + flank
    middle, inside = _mean(summed, at - half, 2 * half + 1)
    left, on_left = _mean(summed, at - outer, flank)
    right, on_right = _mean(summed, at + outer + 1 - flank, flank)
    from_left, from_right = middle - left, middle - right
    no_left, no_right = on_left < _FLANK_PART, on_right < _FLANK_PART
    from_left[..., no_left] = from_right[..., no_left]
    from_right[..., no_right] = from_left[..., no_right]
    way = from_left + from_right
    way /= np.sqrt(np.maximum(np.einsum("cdn,cdn->dn", way, way), 1e-6))
    step = np.minimum(
        np.einsum("cdn,cdn->dn", from_left, way), np.einsum("cdn,cdn->dn", from_right, way)
    )
    step[:, (inside < _WINDOW_PART) | (no_left & no_right)] = 0
    apart = from_left[:, 0] - from_right[:, 0]
    return step, way, np.sqrt(np.einsum("cn,cn->n", apart, apart)), no_left | no_right


def _mean(
    summed: NDArray[np.int32], first: NDArray[np.intp], long: int
) -> tuple[Floats, NDArray[np.float64]]:
    """Mean colours of windows, shape (3, 2, n), and which part of each is in the frame, (n,)."""
    begin, stride = int(first[0]), int(first[1] - first[0]) if len(first) > 1 else 1
    end = int(first[-1]) + 1
    total = summed[..., begin + long : end + long : stride] - summed[..., begin:end:stride]
    count = total[3]
    mean = total[:3] / np.maximum(count, 1).astype(np.float32)
    mean[0] *= np.float32(LIGHTNESS_OF_CODE)  # differences only: no need to take off the middle
    return mean.astype(np.float32, copy=False), count[0] / max(int(count[0].max()), 1)
