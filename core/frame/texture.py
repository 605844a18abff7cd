"""The look of the water as a picture alone shows it: an interval, or why it can't be told."""

from __future__ import annotations

import math
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.findings import Doubt, LookSeen, Sharpness, WaterArea
from core.frame.report import Clipping
from core.frame.still_parts import edge_ratio
from core.frame.texture_features import features
from core.frame.texture_trees import Lengths, trained
from core.frame.water_area import mask_of, water_pixels
from core.frame.working import WorkingCopy, box_of
from core.water import Look, band_of

Mask = NDArray[np.bool_]

#: Fewer pixels of water than this tell nothing [px of the working copy]. Own rule.
LEAST_PIXELS: Final = 4000
#: A channel counts as clipped from this code on: the working copy is made of averages. Own rule.
_CLIPPED_CODE: Final = 251
#: Every so many pixels are looked at for it, which is enough for a share.
_EVERY: Final = 5
#: More of the water clipped than this, and its texture is gone. Own rule.
MOST_CLIPPED: Final = 0.17
#: Sharp edges of the still parts lose more than this by a smoothing; soft ones less. Own rule,
#: tried on sharp, defocused and shaken frames.
LEAST_EDGES: Final = 1.45
#: A look and its neighbour are named when they are right together at least so likely. Own rule,
#: set on frames of the training's kind that it has not seen.
LEAST_SURE: Final = 0.75
#: A look stands alone from this likelihood on; frozen never does, since its streaks are no longer
#: than the lens's own blur in the working copy. Own rule.
_ALONE: Final = 0.93
#: Smooth looks are not named while a sharp one is likelier than this. Own rule.
_MOST_SHARP: Final = 0.08
#: The interval of the share holds the truth with this likelihood. Own rule.
_INTERVAL: Final = 0.8
_SMOOTH: Final = (Look.SILKY, Look.MISTY)


def look_of_picture(
    work: WorkingCopy,
    water: WaterArea | None,
    sharpness: Sharpness | None = None,
    clipping: Clipping | None = None,
) -> LookSeen:
    """The look of the water in a frame, without its settings.

    Args:
        work: the working copy.
        water: where the water is; None: nowhere.
        sharpness: of the still parts, when measured.
        clipping: of the frame, when measured.

    Returns:
        The likelier look, its neighbour, and the interval of the share; or a doubt.

    Raises:
        UnknownCellError: `water` names a cell that the grid has not.
    """
    if water is None or not water.cells:
        return LookSeen(doubt=Doubt.NO_WATER)
    luminance = work.luminance
    cells = mask_of(water.cells, luminance.shape)
    inside = water_pixels(luminance, cells, min(luminance.shape))
    if int(inside.sum()) < LEAST_PIXELS:
        return LookSeen(doubt=Doubt.TINY)
    if (clipping is None or clipping.share > 0) and _clipped(work, inside) > MOST_CLIPPED:
        return LookSeen(doubt=Doubt.CLIPPED)
    if _soft(work, cells, inside, sharpness):
        return LookSeen(doubt=Doubt.STILL_PARTS_SOFT)
    box = box_of(inside)
    found, flow = features(luminance[box], inside[box], water.axis_deg)
    return verdict(trained().lengths(found), _side(luminance.shape, flow.axis_deg))


def _clipped(work: WorkingCopy, inside: Mask) -> float:
    chosen = np.flatnonzero(inside)[::_EVERY]
    return float((work.pixels.reshape(-1, 3)[chosen] >= _CLIPPED_CODE).any(axis=1).mean())


def _soft(work: WorkingCopy, cells: Mask, inside: Mask, sharpness: Sharpness | None) -> bool:
    """The still parts are soft too; sharp water proves the focus as well as rock does."""
    if sharpness is not None and sharpness.shake is not None:
        return True
    if sharpness is not None and any(width is not None for width in sharpness.thirds):
        outside = math.inf if not sharpness.soft_all_over else None
    else:
        outside = edge_ratio(work.luminance, ~cells)
    if outside is not None and outside >= LEAST_EDGES:
        return False
    within = edge_ratio(work.luminance, inside)
    return within is None or within < LEAST_EDGES


def _side(shape: tuple[int, ...], axis_deg: float) -> int:
    """The side of the frame along an axis [px]."""
    turn = math.radians(axis_deg)
    return shape[0] if abs(math.sin(turn)) >= abs(math.cos(turn)) else shape[1]


def verdict(lengths: Lengths, side_px: float) -> LookSeen:
    """What likely lengths of streaks make of the look.

    Args:
        lengths: of the streaks [px].
        side_px: side of the frame along the flow [px].
    """
    looks = list(Look)
    likely = [_likely(lengths, look, side_px) for look in looks]
    pairs = [likely[place] + likely[place + 1] for place in range(len(looks) - 1)]
    best = int(np.argmax(pairs))
    first, second = sorted((best, best + 1), key=lambda place: -likely[place])
    smooth = looks[best + 1] in _SMOOTH
    sharp = lengths.below(band_of(Look.CRISP)[1] * side_px)
    if pairs[best] < LEAST_SURE or (smooth and sharp > _MOST_SHARP):
        return LookSeen(doubt=Doubt.WIDE)
    alone = likely[first] >= _ALONE and looks[first] is not Look.FROZEN
    rest = (1 - _INTERVAL) / 2
    return LookSeen(
        look=looks[first],
        neighbour=None if alone else looks[second],
        share_low=min(lengths.quantile(rest) / side_px, 1.0),
        share_high=min(lengths.quantile(1 - rest) / side_px, 1.0),
    )


def _likely(lengths: Lengths, look: Look, side_px: float) -> float:
    low, high = band_of(look)
    below = 1.0 if math.isinf(high) else lengths.below(high * side_px)
    return below - lengths.below(low * side_px)
