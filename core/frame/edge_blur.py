"""How wide the edges of a picture are, and along which directions."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.working import WorkingCopy

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Gaussians before the two gradients that are compared [px]. Own rule: fine enough for a sharp
#: working copy, and coarse enough that noise makes no edges.
FINE_PX: Final = 0.7
COARSE_PX: Final = 2.0
#: The strongest part of all gradients that counts as edges, and the weakest gradient that may
#: [codes per px]; noise of 5 codes leaves 0.3. Own rules.
_EDGE_PART: Final = 0.2
_WEAKEST: Final = 1.0
#: Of these the strongest quarter are the steps by which a width is told. Own rule.
STEP_PART: Final = 0.25
#: Edges next to what is clipped look harder than the lens drew them: clipping from this code,
#: and how far around it [px]. Own rules.
_CLIPPED_CODE: Final = 250
_CLIPPED_REACH_PX: Final = 4
#: The coarse gradient of such an edge reaches this far beyond [px], where the fine one is nothing:
#: a dark twig before lost white would look wide. What falls off so fast there is such a tail: this
#: part of the largest gradient within so many pixels. Own rules: three times the Gaussian's width
#: behind 2.5 px; a sharp edge falls to a sixth within 2 px there.
_TAIL_REACH_PX: Final = 8
_TAIL_PART: Final = 0.5
_TAIL_SQUARE_PX: Final = 5
#: So many edges are looked at, spread over the picture; more change nothing. Own rule.
_MOST_EDGES: Final = 40_000
#: Fewer steps than this tell nothing. Own rule.
LEAST_STEPS: Final = 150
#: Percentile of the ratio that stands for the sharper edges. Own rule, by the figures.
_SHARPER: Final = 95.0


@dataclass(frozen=True)
class Edges:
    """The edges of a picture, each array of shape (n,).

    `row` and `column` [px]; `strength` of the coarse gradient [codes per px]; `ratio` of the
    fine gradient to it, along its direction: 1 for a wide ramp, 2.86 for a perfect step;
    `angle_deg` of the gradient from the horizontal, anticlockwise, 0 to 180.
    """

    row: NDArray[np.int64]
    column: NDArray[np.int64]
    strength: Field
    ratio: Field
    angle_deg: Field

    def part(self, chosen: Mask) -> Edges:
        """Those that a mask of shape (n,) chooses."""
        return Edges(
            self.row[chosen],
            self.column[chosen],
            self.strength[chosen],
            self.ratio[chosen],
            self.angle_deg[chosen],
        )


def edges_of(work: WorkingCopy, still: Mask | None = None) -> Edges:
    """The stronger edges of a working copy.

    Args:
        work: the working copy.
        still: shape (h, w), the pixels that count; None for all.
    """
    grey = np.asarray(cv2.cvtColor(work.pixels, cv2.COLOR_RGB2GRAY), np.uint8)
    coarse_x, coarse_y = _gradient(grey, COARSE_PX)
    strength = np.asarray(cv2.magnitude(coarse_x, coarse_y), np.float32)
    out = _near_clipped(grey, _CLIPPED_REACH_PX) | _tails_of_clipped(grey, strength)
    allowed = ~out if still is None else still & ~out
    sample = strength[::4, ::4][allowed[::4, ::4]]
    if not sample.size:
        return _edges_at(np.zeros(0, np.int64), grey, coarse_x, coarse_y)
    weakest = max(_WEAKEST, float(np.quantile(sample, 1 - _EDGE_PART)))
    places = np.flatnonzero((strength > weakest) & allowed)
    places = places[:: max(1, -(-places.size // _MOST_EDGES))]
    return _edges_at(places, grey, coarse_x, coarse_y)


def _gradient(grey: NDArray[np.uint8], sigma_px: float) -> tuple[Field, Field]:
    """Gradient after a Gaussian, x and y [codes per px]; Scharr's weights, from memory."""
    # Fractions of a code matter at the coarse scale.
    smooth = cv2.GaussianBlur(grey.astype(np.float32), (0, 0), sigma_px)
    across = cv2.Scharr(smooth, cv2.CV_32F, 1, 0, scale=1 / 32)
    down = cv2.Scharr(smooth, cv2.CV_32F, 0, 1, scale=1 / 32)
    return np.asarray(across, np.float32), np.asarray(down, np.float32)


def _tails_of_clipped(grey: NDArray[np.uint8], strength: Field) -> Mask:
    """Where a gradient is only what an edge at something clipped leaves beside it."""
    square = np.ones((_TAIL_SQUARE_PX, _TAIL_SQUARE_PX), np.uint8)
    falls_off = strength < _TAIL_PART * cv2.dilate(strength, square)
    return np.asarray(falls_off & _near_clipped(grey, _TAIL_REACH_PX), np.bool_)


def _near_clipped(grey: NDArray[np.uint8], reach_px: int) -> Mask:
    side = 2 * reach_px + 1
    clipped = (grey >= _CLIPPED_CODE).astype(np.uint8)
    return np.asarray(cv2.dilate(clipped, np.ones((side, side), np.uint8)), np.bool_)


def _edges_at(
    places: NDArray[np.int64], grey: NDArray[np.uint8], coarse_x: Field, coarse_y: Field
) -> Edges:
    fine_x, fine_y = (plane.ravel()[places] for plane in _gradient(grey, FINE_PX))
    x, y = coarse_x.ravel()[places], coarse_y.ravel()[places]
    square = x * x + y * y
    ratio = np.abs(fine_x * x + fine_y * y) / np.maximum(square, 1e-6)
    row, column = np.divmod(places, grey.shape[1])
    angle_deg = np.degrees(np.arctan2(-y, x)) % 180
    return Edges(
        row,
        column,
        np.asarray(np.sqrt(square), np.float32),
        np.asarray(ratio, np.float32),
        angle_deg.astype(np.float32),
    )


def width_px(edges: Edges, weakest: float = 0.0) -> float | None:
    """Width of the sharper ones among the strongest edges, as a Gaussian's sigma [px].

    Args:
        edges: those of a picture or of a part of it.
        weakest: least strength of an edge that may count [codes per px].

    Returns:
        0 (no wider than the pixels) to some 10 px; None when there are too few.

    Source: a step behind a Gaussian s has the gradient 1 / sqrt(2 pi (s² + b²)) after another
        Gaussian b; the ratio of two of them is solved for s.
    """
    if edges.row.size < LEAST_STEPS:
        return None
    strong = max(weakest, float(np.quantile(edges.strength, 1 - STEP_PART)))
    ratios = edges.ratio[edges.strength >= strong]
    if ratios.size < LEAST_STEPS:
        return None
    return sigma_px(float(np.percentile(ratios, _SHARPER)))


def sigma_px(ratio: float) -> float:
    """The width that belongs to a ratio of gradients [px]; see `width_px`."""
    square = max(ratio, 1.01) ** 2
    return float(np.sqrt(max(0.0, (COARSE_PX**2 - square * FINE_PX**2) / (square - 1))))
