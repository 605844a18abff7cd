"""Fine detail of the water, the leaves and the still parts of frames that lie on each other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.flow_axis import flow_of
from core.frame.laid import CLIPPED_CODE, LEAST_PART, Laid
from core.frame.working import box_of, luminance_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]

#: Smoothings at which detail is looked at [px of the working copy]. A longer time takes the
#: finest first; coarser detail differs from moment to moment more than from time to time. Tried
#: on rendered water and on real textures that were shifted.
_SIGMAS: Final = (0.5, 0.7)
#: Weight of the detail across the flow; along it 1. The strands of a sharp fall leave little to
#: lose across. Tried likewise.
_ACROSS: Final = 0.25
#: Water differs when the balance of its detail is beyond this: without times; with equal times;
#: against what different times say. Own rules: rendered frames of one time differed by 0.04 in the
#: middle, by 0.06 a third of the time, seldom by 0.12, from moment to moment; frames a stop and
#: more apart by 0.17; noise of a dark frame adds as much. Beyond 0.048, 3 of 180 rendered pairs of
#: times a stop and more apart came out the wrong way round.
ALIKE: Final = 0.048
ALIKE_OF_ONE_TIME: Final = 0.12
AGAINST_TIMES: Final = 0.3
#: Focus is allowed for up to this factor of the still parts' detail. Own rule.
_MOST_FOCUS: Final = 2.0
#: Above this part of the sharpest frame's detail the focus is the same: noise, and still parts
#: seen through thin water, differ by as much. Measured on rendered frames: 0.9 and more.
_SAME_FOCUS: Final = 0.85
#: Fewer pixels of water than this tell nothing [px]. Own rule.
_LEAST_PIXELS: Final = 3000
#: Detail of leaves and still parts: between this smoothing and twice as much [px]. Own rule.
_FINE_PX: Final = 1.0
#: Focus is judged by the strongest tenth of the still detail. Own rule.
_STRONGEST: Final = 0.9
_NOTHING: Final = 1e-9


@dataclass(frozen=True)
class WaterDetail:
    """Fine detail of the water of several frames in the same place.

    `slopes` has one entry for each frame and smoothing: derivatives along and across the flow at
    the pixels of the water, shape (2, n), in parts of the water's mean root of light.
    """

    slopes: tuple[tuple[Field, ...], ...]

    def balance(self, first: int, second: int) -> float:
        """Which of two has more detail: above 0 the first, below 0 the second.

        The logarithm of the ratio of their mean slopes. Means of sizes, not of squares: glints and
        the rims of stones would rule these.
        """
        total = 0.0
        for one, two in zip(self.slopes[first], self.slopes[second], strict=True):
            along, across = np.log((_sizes(one) + _NOTHING) / (_sizes(two) + _NOTHING))
            total += float(along + _ACROSS * across) / (1 + _ACROSS) / len(_SIGMAS)
        return total

    @cached_property
    def strengths(self) -> tuple[float, ...]:
        """Mean slope along the flow of each frame."""
        return tuple(
            float(np.mean([_sizes(slopes)[0] for slopes in frame])) for frame in self.slopes
        )


def _sizes(slopes: Field) -> Field:
    """Mean size along and across the flow, shape (2,)."""
    return np.asarray(np.mean(np.abs(slopes), axis=1), np.float32)


def water_detail(laid: Laid) -> WaterDetail | None:
    """Fine detail of the water in the frames of `laid.together`, in their order.

    The detail is taken where no frame clips, each frame at its own brightness and, as far as its
    still parts tell, at the same focus. None where too little water is left.
    """
    pixels = list(laid.shown.values())
    inside = laid.water & ~_clipped(pixels)
    if not _enough(inside):
        return None
    box = box_of(inside)
    focus = _focus(pixels, laid.still)
    tones = [_tones(one[box], inside[box]) for one in pixels]
    turned = flow_of(np.asarray(np.mean(tones, axis=0), np.float32), inside[box]).doubled
    turned = np.asarray(cv2.resize(turned, tones[0].shape[::-1]), np.float32)
    angle = np.float32(0.5) * np.arctan2(turned[..., 1], turned[..., 0])[inside[box]]
    return WaterDetail(
        tuple(
            tuple(_slopes(one, inside[box], sigma, angle) * np.float32(factor) for sigma in _SIGMAS)
            for one, factor in zip(tones, focus, strict=True)
        )
    )


def _clipped(frames: Sequence[Pixels]) -> Mask:
    brightest = np.maximum.reduce([frame.max(axis=2) for frame in frames])
    near = cv2.dilate((brightest >= CLIPPED_CODE).astype(np.uint8), np.ones((3, 3), np.uint8))
    return np.asarray(near, np.bool_)


def _tones(pixels: Pixels, inside: Mask) -> Field:
    """Root of the light over its mean in the water."""
    light = luminance_of(pixels)
    return np.asarray(np.sqrt(light / max(float(light[inside].mean()), 1e-6)), np.float32)


def _slopes(tones: Field, inside: Mask, sigma: float, angle: Field) -> Field:
    """Derivatives along and across the flow, shape (2, n); nothing outside counts."""
    weight = inside.astype(np.float32)
    near = np.maximum(cv2.GaussianBlur(weight, (0, 0), sigma), np.float32(0.05))
    smooth = cv2.GaussianBlur(tones * weight, (0, 0), sigma) / near
    right = cv2.Scharr(smooth, cv2.CV_32F, 1, 0, scale=1 / 32)[inside]
    down = cv2.Scharr(smooth, cv2.CV_32F, 0, 1, scale=1 / 32)[inside]
    cosine, sine = np.cos(angle), np.sin(angle)
    return np.stack([right * cosine + down * sine, right * sine - down * cosine])


def _focus(frames: list[Pixels], still: Mask) -> list[float]:
    """By what each frame's detail is to be raised so that the still parts have the same."""
    strengths = still_strengths(frames, still)
    if strengths is None:
        return [1.0] * len(frames)
    best = max(strengths)
    if min(strengths) > _SAME_FOCUS * best:
        return [1.0] * len(frames)
    return [min(best / max(strength, 1e-6), _MOST_FOCUS) for strength in strengths]


def still_strengths(frames: Sequence[Pixels], still: Mask) -> list[float] | None:
    """Fine detail of what stands still in each frame, in a common unit; noise hardly counts.

    Args:
        frames: laid on each other, shape (h, w, 3) each.
        still: what stands still, shape (h, w).

    Returns:
        How much of their mean detail each frame holds where that is strongest, at least 0; None
        where there is too little to see.
    """
    good = still & ~_clipped(frames)
    if not _enough(good):
        return None
    details = [_fine(frame)[good] for frame in frames]
    mean = np.mean(details, axis=0)
    strong = np.abs(mean) >= np.quantile(np.abs(mean), _STRONGEST)
    energy = max(float(np.mean(mean[strong] ** 2)), _NOTHING)
    return [max(float(np.mean(one[strong] * mean[strong])) / energy, 0.0) for one in details]


def _fine(pixels: Pixels) -> Field:
    """Detail of about a pixel and a half [stops]."""
    stops = np.log2(luminance_of(pixels) + np.float32(0.01))
    fine = cv2.GaussianBlur(stops, (0, 0), _FINE_PX)
    return np.asarray(fine - cv2.GaussianBlur(stops, (0, 0), 2 * _FINE_PX), np.float32)


def _enough(where: Mask) -> bool:
    return int(where.sum()) >= max(_LEAST_PIXELS, LEAST_PART * where.size)


def detail_strength(pixels: Pixels, where: Mask) -> float | None:
    """Fine detail over the light, root mean square; None where there is too little to see.

    Args:
        pixels: shape (h, w, 3).
        where: what counts, shape (h, w).
    """
    good = where & (luminance_of(pixels) > 0.004) & (pixels.max(axis=2) < CLIPPED_CODE)
    if not _enough(good):
        return None
    return float(np.sqrt(np.mean(_fine(pixels)[good] ** 2)))
