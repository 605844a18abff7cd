"""Frames of one view averaged in linear light into one, with the noise and look that result."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.exposure import averaging_noise
from core.frame.align import Alignment
from core.frame.brightness import identical, measured_stops
from core.frame.comparison import AverageMade, LeftOut, LeftOutFrame, Misfit
from core.frame.crops import codes_of, window_of
from core.frame.fine_detail import water_detail
from core.frame.laid import CLIPPED_CODE, Laid, MeasuredFrame, green
from core.frame.working import LINEAR_OF_CODE, WorkingCopy, luminance_of
from core.water import look_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]

#: Frames further from the others than this are another exposure [stops]. Own rule.
_MOST_STOPS: Final = 0.5
#: Something moved where a frame differs by so much [stops] over more than this part of the frame
#: in one piece, water and leaves apart. Own rules.
_GHOST_STOPS: Final = 0.5
_GHOST_PART: Final = 0.002
#: Narrower than this share of the short side is no piece: ripples, twigs. Own rule.
_SOLID: Final = 0.015
#: Below this light differences are noise [linear, 0 to 1].
_DARK: Final = 0.01
#: Rows that are worked on at a time: small against the sum, which is the largest thing here.
_ROWS: Final = 256
#: Smooth still places where noise is measured: how many, and their side [px]. Own rules.
_PATCHES: Final = 40
_PATCH_PX: Final = 32
_LEAST_PATCHES: Final = 4
#: Of fewer frames there are no halves whose means could be compared.
_LEAST_MEASURED: Final = 4


@dataclass(frozen=True)
class Average:
    """What was made: the numbers, and the picture, shape (H, W, 3) of the reference."""

    made: AverageMade
    pixels: Pixels | None


def average_frames(frames: Sequence[MeasuredFrame], laid: Laid, full: Sequence[Pixels]) -> Average:
    """Average the frames that lie on each other and in which nothing but water and leaves moved.

    Args:
        frames: as measured.
        laid: the same frames, laid on each other.
        full: the full-size pixels of each, shape (H, W, 3).

    Returns:
        The numbers, and the picture; no picture when fewer than two frames are left.

    Source: mean in linear light; its noise falls as 1 / sqrt(n) (EMVA Standard 1288, from memory).
    """
    left_out = _left_out(frames, laid)
    out = {one.frame for one in left_out}
    used = tuple(place for place in range(len(frames)) if place not in out)
    made = AverageMade(used, left_out, averaging_noise(max(len(used), 1)))
    if len(used) < 2:
        return Average(made, None)
    pixels, noise = _averaged(laid, used, full)
    made = replace(made, noise=noise, texture=_texture(laid, used))
    return Average(_with_time(made, frames), pixels)


def _with_time(made: AverageMade, frames: Sequence[MeasuredFrame]) -> AverageMade:
    """All times together, and the look of all shares together: each frame has its own."""
    total_s = _sum([frames[place].shutter_s for place in made.used])
    share = _sum([frames[place].share for place in made.used])
    return replace(made, total_s=total_s, look=None if share is None else look_of(share))


def _sum(values: Sequence[float | None]) -> float | None:
    """The sum, None where one is not known."""
    known = [value for value in values if value is not None]
    return sum(known) if len(known) == len(values) else None


def _left_out(frames: Sequence[MeasuredFrame], laid: Laid) -> tuple[LeftOutFrame, ...]:
    """Frames that do not go in; the reference always does."""
    moved = _ghosts(laid)
    found: list[LeftOutFrame] = []
    kept: list[int] = [laid.reference]
    for place in range(len(frames)):
        if place == laid.reference:
            continue
        why = _why_not(frames, laid, place, kept, moved)
        if why is None:
            kept.append(place)
        else:
            found.append(LeftOutFrame(place, why))
    return tuple(found)


def _why_not(
    frames: Sequence[MeasuredFrame],
    laid: Laid,
    place: int,
    kept: Sequence[int],
    moved: frozenset[int],
) -> LeftOut | None:
    shown = laid.shown
    if place not in shown:
        return LeftOut.MISFIT
    if any(identical(frames[place], frames[other]) for other in kept):
        return LeftOut.SAME
    stops = measured_stops(shown[laid.reference], shown[place], laid.still)
    if stops is not None and abs(stops) > _MOST_STOPS:
        return LeftOut.BRIGHTNESS
    return LeftOut.MOVED if place in moved else None


def _ghosts(laid: Laid) -> frozenset[int]:
    """Frames in which something large is elsewhere than in the others."""
    stops = {
        place: np.log2(cv2.blur(luminance_of(pixels), (5, 5)) + np.float32(_DARK))
        for place, pixels in laid.shown.items()
    }
    flowing = cv2.dilate(laid.water.astype(np.uint8), np.ones((15, 15), np.uint8))
    counted = np.asarray((flowing == 0) & laid.seen & ~laid.inside, np.bool_)
    usual = np.median(np.stack(list(stops.values())), axis=0)
    if len(stops) == 2:  # two can't tell which is the odd one: the reference is kept
        usual = stops[laid.reference]
    apart = {place: np.abs(_levelled(one - usual, counted)) for place, one in stops.items()}
    if len(stops) > 2:  # where several differ, water flows that nobody named
        counted &= np.sort(np.stack(list(apart.values())), axis=0)[-2] < _GHOST_STOPS / 2
    return frozenset(
        place
        for place, one in apart.items()
        if _odd(one, counted & ~_leaves_still(laid, laid.shown[place]))
    )


def _levelled(apart: Field, counted: Mask) -> Field:
    """A difference [stops] less what the whole frame is brighter by."""
    return np.asarray(apart - np.median(apart[counted]), np.float32) if counted.any() else apart


def _leaves_still(laid: Laid, pixels: Pixels) -> Mask:
    """Leaves that are leaves in this frame too: the wind may move them."""
    return laid.leaves & green(WorkingCopy(pixels, 1.0).lab)


def _odd(apart: Field, counted: Mask) -> bool:
    """A solid piece of the frame differs."""
    different = ((apart > _GHOST_STOPS) & counted).astype(np.uint8)
    side = max(3, round(_SOLID * min(different.shape)))
    opened = cv2.morphologyEx(different, cv2.MORPH_OPEN, np.ones((side, side), np.uint8))
    _, _, stats, _ = cv2.connectedComponentsWithStats(opened)
    sizes = stats[1:, cv2.CC_STAT_AREA]
    return bool(sizes.size) and int(sizes.max()) > _GHOST_PART * opened.size


def _averaged(
    laid: Laid, used: Sequence[int], full: Sequence[Pixels]
) -> tuple[Pixels, float | None]:
    """The average at full size, strip by strip, and its noise over one frame's."""
    shape = full[laid.reference].shape
    picture = np.empty(shape, np.uint8)
    for top in range(0, shape[0], _ROWS):  # the reference reaches everywhere: counts are above 0
        total = np.zeros((min(_ROWS, shape[0] - top), *shape[1:]), np.float32)
        counts = np.zeros((*total.shape[:2], 1), np.float32)
        for place in used:
            strip, reached = window_of(
                full[place], laid.motions[place], shape, (0, top, shape[1], _ROWS)
            )
            total += cv2.LUT(strip, LINEAR_OF_CODE) * reached[..., None]
            counts += reached[..., None]
        picture[top : top + _ROWS] = codes_of(np.asarray(total / counts, np.float32))
    corners = _patches(laid, shape)
    samples = [_sample(full[place], laid.motions[place], shape, corners) for place in used]
    return picture, _noise(samples)


def _patches(laid: Laid, shape: tuple[int, ...]) -> list[tuple[int, int]]:
    """Upper left corners (left, top) of smooth still places in the full-size reference [px]."""
    small = laid.shown[laid.reference]
    scale = shape[0] / small.shape[0]
    side = max(3, round(_PATCH_PX / scale))
    light = luminance_of(small)
    detail = cv2.blur(np.abs(cv2.Laplacian(light, cv2.CV_32F)), (side, side))
    steady = cv2.erode((laid.seen & ~laid.inside).astype(np.uint8), np.ones((side, side)))
    good = (steady > 0) & (light > 2 * _DARK) & (small.max(axis=2) < CLIPPED_CODE - 20)
    places = np.argsort(np.where(good, detail, np.inf)[::side, ::side].ravel())[:_PATCHES]
    rows, columns = np.unravel_index(places, detail[::side, ::side].shape)
    return [
        (int((column * side) * scale), int((row * side) * scale))
        for row, column in zip(rows, columns, strict=True)
        if good[row * side, column * side]
    ]


def _sample(
    pixels: Pixels,
    motion: Alignment | Misfit,
    shape: tuple[int, ...],
    corners: Sequence[tuple[int, int]],
) -> Field:
    """Linear green of the patches, shape (n, side, side)."""
    found = []
    for left, top in corners:
        window = (
            min(left, shape[1] - _PATCH_PX), min(top, shape[0] - _PATCH_PX), _PATCH_PX, _PATCH_PX
        )  # fmt: skip
        patch, _ = window_of(pixels, motion, shape, window)
        found.append(LINEAR_OF_CODE[patch[..., 1]])
    return np.asarray(found, np.float32)


def _noise(samples: Sequence[Field]) -> float | None:
    """Noise of the average over that of one frame; differences take out what stands still.

    The average's comes from the two halves of the frames: half the spread of their difference
    where these are equal, else weighted as their numbers are. None for fewer than four frames.
    """
    if len(samples) < _LEAST_MEASURED or len(samples[0]) < _LEAST_PATCHES:
        return None
    single = float(np.mean([_spread(two - one) / 2**0.5 for one, two in pairwise(samples)]))
    first, second = samples[::2], samples[1::2]
    apart = _spread(np.mean(first, axis=0) - np.mean(second, axis=0))
    parts = 1 / len(first) + 1 / len(second)
    average = apart * (1 / len(samples) / parts) ** 0.5
    return average / single if single > 0 else None


def _spread(patches: Field) -> float:
    """Median over the patches of each one's spread: a leaf in one of them counts little."""
    return float(np.median(np.std(patches, axis=(1, 2))))


def _texture(laid: Laid, used: Sequence[int]) -> float | None:
    """Detail of the average's water over that of the reference's."""
    one = laid.shown[laid.reference]
    total = np.zeros(one.shape, np.float32)
    for place in used:
        total += cv2.LUT(laid.shown[place], LINEAR_OF_CODE)
    mean = codes_of(total / np.float32(len(used)))
    both = replace(laid, motions=laid.motions[:2], pixels=(one, mean), reference=0)
    detail = water_detail(both)
    if detail is None:
        return None
    before, after = detail.strengths
    return after / before if before else None
