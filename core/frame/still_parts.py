"""A cheap guard: are the parts of a frame that don't move as soft as a long exposure's water?"""

from __future__ import annotations

from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Short side at which edges are looked at [px], and the smoothings that are compared [px]. Own
#: rule, tried on sharp, defocused and shaken frames.
_SHORT_SIDE: Final = 800
_FINE: Final = 0.7
_COARSE: Final = 2.0
#: The sharper edges: all but one in two hundred are left out.
_TOP: Final = 0.995
#: Fewer pixels than this tell nothing.
_LEAST_PIXELS: Final = 8000
#: Every so many pixels are looked at, which is enough for a share of one in two hundred.
_EVERY: Final = 3


def edge_ratio(luminance: Field, where: Mask) -> float | None:
    """How much the sharper edges lose by a smoothing of 2 px, in the direction of least loss.

    Sharp edges lose much, soft ones little. A shaken frame is soft along one direction only.

    Args:
        luminance: linear light of the working copy, shape (h, w).
        where: what is looked at, shape (h, w).

    Returns:
        The ratio, 1 (nothing is lost) to about 3; None where there is too little.

    Source: own rule.
    """
    scale = min(1.0, _SHORT_SIDE / min(luminance.shape))
    if scale < 1:
        size = (round(luminance.shape[1] * scale), round(luminance.shape[0] * scale))
        luminance = np.asarray(cv2.resize(luminance, size, interpolation=cv2.INTER_AREA))
        where = cv2.resize(where.astype(np.uint8), size, interpolation=cv2.INTER_NEAREST) > 0
    chosen = np.flatnonzero(where)[::_EVERY]
    if len(chosen) * _EVERY < _LEAST_PIXELS:
        return None
    tones = np.sqrt(luminance)
    fine, coarse = _edges(tones, _FINE, chosen), _edges(tones, _COARSE, chosen)
    return min(one / max(two, 1e-6) for one, two in zip(fine, coarse, strict=True))


def _edges(tones: Field, sigma: float, chosen: NDArray[np.int64]) -> list[float]:
    """Strength of the sharper edges in four directions."""
    smooth = cv2.GaussianBlur(tones, (0, 0), sigma)
    right = cv2.Scharr(smooth, cv2.CV_32F, 1, 0).ravel()[chosen]
    down = cv2.Scharr(smooth, cv2.CV_32F, 0, 1).ravel()[chosen]
    half = np.float32(np.sqrt(0.5))
    turned = (right, down, half * (right + down), half * (right - down))
    place = int(_TOP * (len(chosen) - 1))
    return [float(np.partition(np.abs(one), place)[place]) for one in turned]
