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
#: Radii of spots, as shares of the short side. Own rule, by planted drops.
_RADII: Final = (0.02, 0.03, 0.045)
#: What surrounds a spot: sectors at this distance, in radii. Own rule.
_SECTORS: Final = 8
_RING: Final = 2.0
#: What a drop takes: detail finer than the first and between the two smoothings [px]. Own rule;
#: the coarser half tells more of faint texture, and of leaves that are wider than a pixel.
_SMOOTHINGS_PX: Final = (1.2, 3.0)
#: Logarithm of the detail of the least sector around over that inside, as the geometric mean of
#: both frames, is at least this; 0 in one of them is 0. Own rule, fitted on pairs of other
#: photographs and of rendered falls.
_DROP: Final = 0.5
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
#: Detail around is at least this [codes]; a smooth sky shows no drops. Own rule, likewise.
_LEAST_DETAIL: Final = 0.7
#: Detail below this is noise; it is added before the logarithm [codes]. Own rule.
_FLOOR: Final = 0.4
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
    if shared.max() < _DROP:
        return ()
    return _spots(shared, size, max(_DROP, _ABOVE_CHANCE * _by_chance(first, second)))


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
    # A spot of 8 px is still there at every fourth pixel.
    one, two = first[:, ::4, ::4], second[:, ::4, ::4]
    height, width = one.shape[1:]
    strongest = [
        _shared(one, np.roll(two, (round(down * height), round(across * width)), (1, 2))).max()
        for down, across in _SHIFTS
    ]
    return float(np.sort(strongest)[-1 - _LEFT_OUT])


def _drop(detail: Field, radius_px: float) -> Field:
    """Logarithm of the detail in the least sector around over that inside, 0 where smooth."""
    mean = np.asarray(cv2.GaussianBlur(detail, (0, 0), 0.5 * radius_px), np.float32)
    reach = _RING * radius_px
    turns = 2 * np.pi * np.arange(_SECTORS) / _SECTORS
    around = [_moved(mean, reach * np.cos(turn), reach * np.sin(turn)) for turn in turns]
    least = np.minimum.reduce(around)
    drop = np.maximum(np.log((least + _FLOOR) / (mean + _FLOOR)), 0)
    return np.asarray(np.where(least >= _LEAST_DETAIL, drop, 0), np.float32)


def _moved(plane: Field, across: float, down: float) -> Field:
    """Each pixel takes what lies so far from it [px]; 0 from outside."""
    height, width = plane.shape
    shift = np.array([[1, 0, -round(across)], [0, 1, -round(down)]], np.float32)
    return np.asarray(cv2.warpAffine(plane, shift, (width, height), flags=cv2.INTER_NEAREST))


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
                float((column - radius_px) / width),
                float((row - radius_px) / height),
                float(2 * radius_px / width),
                float(2 * radius_px / height),
            )
        )
        reach = round(3 * radius_px)
        best[max(0, row - reach) : row + reach + 1, max(0, column - reach) : column + reach + 1] = 0
    return tuple(found)
