"""Drops on the front glass: soft round spots that two different frames share."""

from __future__ import annotations

from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.report import Box
from core.frame.working import WorkingCopy

Field = NDArray[np.float32]

#: Short side at which spots are looked for [px]. Own rule: a drop is still some pixels wide.
_SIDE_PX: Final = 400
#: Radii of spots, as shares of the short side. Own rule, by planted drops; a fifth apart, since
#: what lies just inside a circle is held against what lies just outside it.
_RADII: Final = (0.018, 0.0217, 0.0262, 0.0316, 0.038, 0.046)
#: Where a circle is looked at: so many places inside and outside it, at these distances, each over
#: a Gaussian of this width; all in radii. Own rules, fitted on pairs of 67 other photographs and of
#: rendered falls: fewer places, further from the circle, let in what is soft but not round.
_PLACES: Final = 16
_INSIDE: Final = 0.55
_OUTSIDE: Final = 1.45
_PLACE: Final = 0.2
#: Every so many pixels a circle is tried, down and across. Own rule: a few to the least radius.
_EVERY: Final = 2
#: What a drop takes: detail finer than the first and between the two smoothings [px]. Own rule;
#: the coarser half tells more of faint texture, and of leaves that are wider than a pixel.
_SMOOTHINGS_PX: Final = (1.2, 3.0)
#: Logarithm of the least detail outside over the most inside, as the geometric mean of both
#: frames, is at least this; 0 in one of them is 0. Own rule, likewise: one of 345 clean pairs is
#: above it, and 0.2 would be four. Two spots at once may be fainter: none of these pairs had two.
_DROP: Final = 0.25
_ONE_OF_TWO: Final = 0.06
#: Two frames share spots by chance as often when one is shifted against the other: shared spots
#: are so many times as strong as what all but a few of the shifts show. Own rules, likewise.
_ABOVE_CHANCE: Final = 1.3
_LEFT_OUT: Final = 5
#: Those shifts, as shares of height and width. Own rule: further apart than a drop is wide.
_SHIFTS: Final = tuple(
    (down / 20, across / 20)
    for down in range(-6, 7, 2)
    for across in range(-6, 7, 2)
    if down or across
)
#: Detail below this is noise; it is added before the logarithm [codes]. Own rule, likewise.
_FLOOR: Final = 0.15
#: Frames whose detail correlates so far at the same places are one view: what is soft there
#: may be the scene. Own rule.
_SAME_VIEW: Final = 0.35
#: Frames of sides that differ more are of other shapes. Own rule.
_SHAPE: Final = 0.01


def wet_glass(work_a: WorkingCopy, work_b: WorkingCopy) -> tuple[Box, ...]:
    """Soft round spots at the same places of two frames that show different things there.

    Args:
        work_a: working copy of a frame.
        work_b: of another, of the same camera held the same way.

    Returns:
        The spots, strongest first; none where the frames show the same view (nothing can be told
        then), or have another shape.
    """
    shape_a, shape_b = (work.pixels.shape[0] / work.pixels.shape[1] for work in (work_a, work_b))
    if abs(shape_a / shape_b - 1) > _SHAPE:
        return ()
    size = _size(work_a)
    greys = [_grey(work, size) for work in (work_a, work_b)]
    smooth = [_smoothed(grey, _SMOOTHINGS_PX[1]) for grey in greys]
    if _same_view(*(grey - plane for grey, plane in zip(greys, smooth, strict=True))):
        return ()
    first, second = (
        np.stack([_drop(detail, share * min(size)) for share in _RADII])
        for detail in (_detail(*planes) for planes in zip(greys, smooth, strict=True))
    )
    shared = _shared(first, second)
    strongest = float(shared.max())
    if strongest < _ONE_OF_TWO:
        return ()
    found = _spots(shared, size, max(_ONE_OF_TWO, _ABOVE_CHANCE * _by_chance(first, second)))
    return found if strongest >= _DROP or len(found) > 1 else ()


def _size(work: WorkingCopy) -> tuple[int, int]:
    """Width and height of the small pictures [px]."""
    height, width = work.pixels.shape[:2]
    scale = min(1.0, _SIDE_PX / min(height, width))
    return max(1, round(width * scale)), max(1, round(height * scale))


def _grey(work: WorkingCopy, size: tuple[int, int]) -> Field:
    grey = cv2.cvtColor(work.pixels, cv2.COLOR_RGB2GRAY)
    return np.asarray(cv2.resize(grey, size, interpolation=cv2.INTER_AREA), np.float32)


def _smoothed(grey: Field, sigma_px: float) -> Field:
    return np.asarray(cv2.GaussianBlur(grey, (0, 0), sigma_px), np.float32)


def _same_view(first: Field, second: Field) -> bool:
    """Whether detail lies at the same places; a tripod's frames, even of moving water."""
    spread = float(first.std() * second.std())
    return spread <= 0 or float((first * second).mean()) / spread > _SAME_VIEW


def _detail(grey: Field, coarse: Field) -> Field:
    """Size of fine detail at each pixel [codes], of a picture and its coarser smoothing."""
    fine = _smoothed(grey, _SMOOTHINGS_PX[0])
    return np.asarray(cv2.absdiff(grey, fine) + cv2.absdiff(fine, coarse), np.float32)


def _shared(first: Field, second: Field) -> Field:
    """How far detail drops in both frames, as a geometric mean; shape (radii, h, w)."""
    return np.asarray(np.sqrt(first * second), np.float32)


def _by_chance(first: Field, second: Field) -> float:
    """The strongest shared spot of the frames when they are shifted; a few shifts left out."""
    height, width = first.shape[1:]
    strongest = [
        _shared(first, np.roll(second, (round(down * height), round(across * width)), (1, 2))).max()
        for down, across in _SHIFTS
    ]
    return float(np.sort(strongest)[-1 - _LEFT_OUT])


def _drop(detail: Field, radius_px: float) -> Field:
    """How much less detail is inside a circle around each place than outside; 0 where not less.

    A drop takes the detail everywhere inside it and nowhere outside, so that the place with most
    inside counts, and the place with least outside: what is smooth in a scene is seldom round.

    Returns:
        Logarithm of the ratio, at every second row and column.
    """
    mean = np.asarray(cv2.GaussianBlur(detail, (0, 0), _PLACE * radius_px), np.float32)
    reach_px = int(np.ceil(_OUTSIDE * radius_px))
    padded = np.pad(mean, reach_px)  # beyond the border there is nothing
    most = np.maximum.reduce(_around(padded, _INSIDE * radius_px, reach_px))
    most = np.maximum(most, mean[::_EVERY, ::_EVERY])
    least = np.minimum.reduce(_around(padded, _OUTSIDE * radius_px, reach_px))
    return np.asarray(np.maximum(np.log((least + _FLOOR) / (most + _FLOOR)), 0), np.float32)


def _around(padded: Field, distance_px: float, pad_px: int) -> list[Field]:
    """What lies so far from each tried place, in each direction, of a plane with such a border."""
    height, width = (side - 2 * pad_px for side in padded.shape)
    turns = 2 * np.pi * np.arange(_PLACES) / _PLACES
    tops = pad_px + np.rint(distance_px * np.sin(turns)).astype(int)
    lefts = pad_px + np.rint(distance_px * np.cos(turns)).astype(int)
    return [
        padded[top : top + height : _EVERY, left : left + width : _EVERY]
        for top, left in zip(tops.tolist(), lefts.tolist(), strict=True)
    ]


def _spots(drops: Field, size: tuple[int, int], weakest: float) -> tuple[Box, ...]:
    """Separate maxima over places and radii that are at least `weakest`, as boxes."""
    width, height = size
    best, which = drops.max(axis=0), drops.argmax(axis=0)
    found: list[Box] = []
    while float(best.max()) >= weakest:
        row, column = np.unravel_index(int(best.argmax()), best.shape)
        radius_px = _RADII[int(which[row, column])] * min(size)
        found.append(
            Box(
                float((column * _EVERY - radius_px) / width),
                float((row * _EVERY - radius_px) / height),
                float(2 * radius_px / width),
                float(2 * radius_px / height),
            )
        )
        reach = round(3 * radius_px / _EVERY)
        best[max(0, row - reach) : row + reach + 1, max(0, column - reach) : column + reach + 1] = 0
    return tuple(found)
