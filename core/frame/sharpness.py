"""How sharp the still parts of a frame are, by thirds and as a whole."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.edge_blur import STEP_PART, Edges, edges_of, width_px
from core.frame.findings import Sharpness, WaterArea
from core.frame.frame_noise import is_noisy
from core.frame.shake import find_shake
from core.frame.water_area import mask_of
from core.frame.working import WorkingCopy

#: Edges of a third count from this part of the frame's strong edges: clouds and mist have
#: weaker ones, and would look soft. Own rule.
_STRONG_PART: Final = 0.6
#: A third is clearly softer when its edges are at least this wide, this much wider than the best
#: third's [px], and this many times as wide. Own rules: blur of about 1 px is told.
_SOFT_THIRD_PX: Final = 0.9
_SOFTER_PX: Final = 0.3
_SOFTER_TIMES: Final = 1.35
#: Still parts are soft when even the sharper steps are this wide [px]: a defocus of 5 px across
#: reads more, the softest sharp pictures less. Own rule, fitted on planted defocus.
_SOFT_PX: Final = 0.77


def measure_sharpness(
    work: WorkingCopy, pixels: NDArray[np.uint8], water: WaterArea | None
) -> Sharpness:
    """Sharpness of what stands still, shake, and noise.

    Mist, water and a background that is meant to be soft look soft here too; the statements are
    relative to the rest of the same frame.

    Args:
        work: the working copy.
        pixels: the whole frame, for the noise, shape (H, W, 3), red, green, blue.
        water: cells that are left out; None: the whole frame counts.
    """
    still = None if water is None else ~mask_of(water.cells, work.pixels.shape)
    edges = edges_of(work, still)
    thirds = _thirds(edges, work.pixels.shape[0])
    shake = find_shake(edges, work.pixels.shape)
    width = width_px(edges)
    soft = shake is None and width is not None and width > _SOFT_PX
    return Sharpness(
        thirds=thirds,
        softest=None if shake is not None else _softest(thirds),
        shake=shake,
        soft_all_over=soft,
        noisy=is_noisy(pixels),
    )


def _thirds(edges: Edges, height: int) -> tuple[float | None, float | None, float | None]:
    if not edges.row.size:
        return None, None, None
    weakest = _STRONG_PART * float(np.quantile(edges.strength, 1 - STEP_PART))
    third = edges.row * 3 // height
    top, middle, bottom = (width_px(edges.part(third == number), weakest) for number in range(3))
    return top, middle, bottom


def _softest(thirds: tuple[float | None, ...]) -> int | None:
    known = {number: width for number, width in enumerate(thirds) if width is not None}
    if len(known) < 2:
        return None
    softest = max(known, key=lambda number: known[number])
    best = min(known.values())
    limit = max(_SOFT_THIRD_PX, best + _SOFTER_PX, best * _SOFTER_TIMES)
    return softest if known[softest] > limit else None
