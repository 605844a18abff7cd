"""An illustration of other times: the water of a sharp frame averaged along its own flow."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.domain import positive
from core.frame.comparison import IllustratedTime, IllustrationMade, Refusal
from core.frame.crops import codes_of
from core.frame.flow_axis import Flow, flow_of
from core.frame.laid import CLIPPED_CODE, MeasuredFrame
from core.frame.still_parts import edge_ratio
from core.frame.texture import LEAST_EDGES, LEAST_PIXELS
from core.frame.water_area import mask_of, water_pixels
from core.frame.working import LINEAR_OF_CODE, WorkingCopy
from core.water import Look, look_of

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Pixels = NDArray[np.uint8]

#: Times that are drawn when none are named [s]. Own rule: the usual ladder, a stop apart.
TIMES_S: Final = (1 / 8, 1 / 4, 1 / 2, 1.0)
#: Most times of one illustration. Own rule: more strips can't be told apart on a phone.
MOST_TIMES: Final = 4
#: Water that plunges runs within this of the vertical [deg]; a person who says that it leans means
#: all from upright to half-way, which is told as half-way. Own rules.
_STEEP_DEG: Final = 35.0
_LEANING_DEG: Final = 45.0
#: The axis that the picture shows is kept where it lies so near to the one that is told [deg].
#: Measured: a told axis is sloppier than the picture's (own trials).
_TOLD_WITHIN_DEG: Final = 25.0
#: Streamlines keep within this of the axis [deg]: the rim of the water, and the pool at its foot,
#: would bend them else. Own rule.
_MOST_BEND_DEG: Final = 10.0
#: Longest streak that is drawn, as a share of the side: beyond, the water is even. Own rule.
_LONGEST: Final = 1.5
#: Foam that clips was at least so much brighter than it reads; with this the streaks of its
#: light come out. Own rule; how much brighter is unknown.
_CLIPPED_GAIN: Final = 1.6
#: Soft rim of the water, as a share of the frame's short side. Own rule.
_FEATHER: Final = 0.008
#: Margin around the water's cells in the strips, as a share of the sides. Own rule.
_MARGIN: Final = 0.04
#: First step along a streamline [px]; each further one doubles the way.
_FIRST_STEP_PX: Final = 1.0


@dataclass(frozen=True)
class _Axis:
    """An axis of the flow [deg, anticlockwise from the horizontal], and whether a person told it.

    None is the picture's own.
    """

    deg: float | None
    told: bool = False


@dataclass(frozen=True)
class Illustration:
    """The numbers, and the strips: the frame as it is, then each time; shape (h, w, 3) each."""

    made: IllustrationMade
    strips: tuple[Pixels, ...] = ()


def illustrate(
    frame: MeasuredFrame,
    *,
    share_per_s: tuple[float, float] | None,
    times_s: Sequence[float] = TIMES_S,
    cells: Sequence[str] | None = None,
    axis_deg: float | None = None,
) -> Illustration:
    """Draw how the water of a plunging fall might look at longer times.

    What is drawn is an illustration: real water changes its pattern as it falls, and its streaks
    are softer than these.

    Args:
        frame: a sharp frame.
        share_per_s: how far the water runs in a second over the side of the frame along the flow
            [1/s], least and most; None: not known.
        times_s: what to draw [s], at most four.
        cells: where the person says that the water is; None or none: as the report proposes.
        axis_deg: along which axis the person says that it flows [deg, anticlockwise from the
            horizontal]; None: as the picture shows.

    Returns:
        Strips and numbers, or the refusal alone.

    Raises:
        OutOfDomainError: a time or a share is not positive and finite.
        UnknownCellError: the grid has no such cell.

    Source: line integral convolution (Cabral & Leedom 1993, from memory) of the light.
    """
    for time_s in times_s:
        positive("times_s", time_s, "s")
    for share in share_per_s or ():
        positive("share_per_s", share, "1/s")
    water = frame.report.water
    chosen = tuple(cells) if cells else (water.cells if water else ())
    told = axis_deg is not None
    if water is not None and not told:
        axis_deg = water.axis_deg
    refusal = _refusal(frame, chosen)
    if refusal is None and share_per_s is None:
        refusal = Refusal.SPEED_UNKNOWN
    if refusal is not None or share_per_s is None:
        return Illustration(IllustrationMade(refusal=refusal))
    axis = _Axis(axis_deg, told=told)
    return _drawn(frame, chosen, axis, share_per_s, _longer(frame, times_s))


def _longer(frame: MeasuredFrame, times_s: Sequence[float]) -> tuple[float, ...]:
    """The times that are longer than the frame's own, shortest first."""
    own_s = frame.shutter_s or 0.0
    return tuple(sorted({time for time in times_s if time > own_s})[:MOST_TIMES])


def _refusal(frame: MeasuredFrame, cells: tuple[str, ...]) -> Refusal | None:
    if not cells:
        return Refusal.WATER_UNKNOWN
    inside = mask_of(cells, frame.work.pixels.shape)
    if _soft(frame, inside):
        return Refusal.SOFT
    if frame.look in {Look.SILKY, Look.MISTY}:
        return Refusal.SMOOTH_ALREADY
    return None


def _soft(frame: MeasuredFrame, inside: Mask) -> bool:
    """The still parts are soft; where there are none, the water itself has to be sharp."""
    sharpness = frame.report.sharpness
    if sharpness is not None and (sharpness.soft_all_over or sharpness.shake is not None):
        return True
    ratio = edge_ratio(frame.work.luminance, ~inside)
    if ratio is None:
        ratio = edge_ratio(frame.work.luminance, inside)
    return ratio is None or ratio < LEAST_EDGES


def _drawn(
    frame: MeasuredFrame,
    cells: tuple[str, ...],
    axis: _Axis,
    share_per_s: tuple[float, float],
    times_s: tuple[float, ...],
) -> Illustration:
    work = frame.work
    whole = mask_of(cells, work.pixels.shape)
    water = water_pixels(work.luminance, whole, min(work.luminance.shape))
    if int(water.sum()) < LEAST_PIXELS:
        return Illustration(IllustrationMade(refusal=Refusal.TINY))
    if not times_s:
        return Illustration(IllustrationMade(refusal=Refusal.SMOOTH_ALREADY))
    box = _box(whole)
    tones = np.sqrt(work.luminance[box])
    flow = _flow(np.asarray(tones, np.float32), water[box], axis)
    if abs(flow.axis_deg - 90) > (_LEANING_DEG if axis.told else _STEEP_DEG):
        return Illustration(
            IllustrationMade(refusal=Refusal.NOT_PLUNGING, axis_deg=round(flow.axis_deg, 1))
        )
    low, high = sorted(share_per_s)
    times = tuple(
        IllustratedTime(time, low * time, high * time, look_of(math.sqrt(low * high) * time))
        for time in times_s
    )
    along = _downwards(flow.doubled, flow.axis_deg, tones.shape)
    strips = _strips(work, box, water, along, _lengths(frame, times))
    return Illustration(IllustrationMade(times, axis_deg=round(flow.axis_deg, 1)), strips)


def _flow(tones: Field, water: Mask, axis: _Axis) -> Flow:
    """The flow along the axis; one that a person told gives way to the picture's where it is near.

    Axes that point 5 and 175 degrees lie 10 apart.
    """
    along = flow_of(tones, water, axis.deg)
    if not axis.told:
        return along
    seen = flow_of(tones, water)
    apart = abs((seen.axis_deg - along.axis_deg + 90) % 180 - 90)
    return seen if apart <= _TOLD_WITHIN_DEG else along


def _lengths(frame: MeasuredFrame, times: Sequence[IllustratedTime]) -> list[float]:
    """Streaks that are missing to each time, by the middle of its share [px]."""
    side = frame.work.pixels.shape[0]  # of the frame along the flow: it plunges
    own_s = frame.shutter_s or 0.0
    return [
        min(math.sqrt(one.share_low * one.share_high) * (1 - own_s / one.shutter_s), _LONGEST)
        * side
        for one in times
    ]


def _box(inside: Mask) -> tuple[slice, slice]:
    """Around the cells, with a margin."""
    slices = []
    for axis in (1, 0):
        places = np.flatnonzero(inside.any(axis=axis))
        margin = round(_MARGIN * inside.shape[1 - axis])
        slices.append(slice(max(0, int(places[0]) - margin), int(places[-1]) + 1 + margin))
    return slices[0], slices[1]


def _downwards(doubled: Field, axis_deg: float, shape: tuple[int, ...]) -> Field:
    """Unit vectors (right, down) of the flow at each pixel, shape (h, w, 2), near the axis."""
    turned = np.asarray(cv2.resize(doubled, shape[1::-1]), np.float32)
    axis = np.float32(math.radians(180 - axis_deg))  # clockwise from the right, as y runs down
    apart = np.arctan2(turned[..., 1], turned[..., 0]) - 2 * axis
    bend = np.arctan2(np.sin(apart), np.cos(apart)) / 2
    most = math.radians(_MOST_BEND_DEG)
    angle = axis + np.clip(bend, -most, most)
    return np.asarray(np.dstack([np.cos(angle), np.sin(angle)]), np.float32)


def _strips(
    work: WorkingCopy,
    box: tuple[slice, slice],
    water: Mask,
    along: Field,
    lengths_px: Sequence[float],
) -> tuple[Pixels, ...]:
    pixels = work.pixels[box]
    light = np.asarray(cv2.LUT(pixels, LINEAR_OF_CODE), np.float32)
    clipped = np.asarray(pixels.max(axis=2) >= CLIPPED_CODE, np.uint8)
    foam = cv2.morphologyEx(clipped, cv2.MORPH_OPEN, np.ones((5, 5), np.uint8)) > 0
    bright = np.asarray(
        np.where(foam[..., None], light * np.float32(_CLIPPED_GAIN), light), np.float32
    )
    sigma = max(1.0, _FEATHER * min(work.luminance.shape))
    soft = np.asarray(cv2.GaussianBlur(water[box].astype(np.float32), (0, 0), sigma), np.float32)
    strips = [np.ascontiguousarray(pixels)]
    for length in lengths_px:
        drawn = _averaged(bright, soft, along, length)
        share = soft[..., None]
        strips.append(codes_of(np.asarray(drawn * share + light * (1 - share), np.float32)))
    return tuple(strips)


def _averaged(light: Field, weight: Field, along: Field, length_px: float) -> Field:
    """Mean of the light along the flow, half the length each way, as far as the water reaches."""
    weighted = np.dstack([light * weight[..., None], weight])
    total = _one_way(weighted, along, length_px / 2) + _one_way(weighted, -along, length_px / 2)
    return np.asarray(total[..., :3] / np.maximum(total[..., 3:], np.float32(1e-3)), np.float32)


def _one_way(values: Field, along: Field, length_px: float) -> Field:
    """Mean over a way along streamlines; each step joins the mean of the next piece of way."""
    doublings = max(0, math.ceil(math.log2(max(length_px / _FIRST_STEP_PX, 1.0))))
    moved = np.asarray(along * np.float32(length_px / 2**doublings), np.float32)
    mean: Field = values
    for _ in range(doublings):
        mean = np.asarray((mean + _at(mean, moved)) / 2, np.float32)
        moved = np.asarray(moved + _at(moved, moved), np.float32)
    return mean


def _at(values: Field, moved: Field) -> Field:
    """The values at each place moved, zero outside."""
    height, width = values.shape[:2]
    columns, rows = np.meshgrid(
        np.arange(width, dtype=np.float32), np.arange(height, dtype=np.float32)
    )
    return np.asarray(
        cv2.remap(values, columns + moved[..., 0], rows + moved[..., 1], cv2.INTER_LINEAR),
        np.float32,
    )
