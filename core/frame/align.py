"""Frames of one view laid on each other by what does not move in them."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.comparison import Misfit
from core.frame.working import WorkingCopy

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]
Matrix = NDArray[np.float64]

#: Long side at which frames are laid on each other [px]; the last step finds fractions of a
#: pixel of it. Own rule.
_SIDE_PX: Final = 800
#: Sides that differ by more than this part are another shape. Own rule.
_SHAPE: Final = 0.015
#: Light below this part of the range is noise and shadow; it is added before the logarithm.
_FLOOR: Final = 0.004
#: Broad shading is taken out by a Gaussian of this share of the long side, and what stands out
#: is bounded [stops], so that neither light nor clipping counts. Own rules.
_SHADING: Final = 0.012
_MOST_DETAIL: Final = 1.5

#: Corners looked for, in pieces of the frame so that no part has them all. Own rules.
_CORNERS: Final = 250
_PIECES: Final = 3
#: Matches lie within this of the common motion [px]; fewer than so many are chance. Own rules.
_REACH_PX: Final = 3.0
_LEAST_MATCHES: Final = 12
#: What two frames from one stand may be scaled and turned. Own rules.
_SCALES: Final = (0.8, 1.25)
_TURN_DEG: Final = 15.0

#: From so many agreeing places on a start is refined as it is. Own rule.
_GOOD_START: Final = 0.4
#: Steps and precision of the refinement. Own rule.
_STEPS: Final = (cv2.TERM_CRITERIA_COUNT | cv2.TERM_CRITERIA_EPS, 30, 5e-5)
#: A freer motion has to raise the correlation by this to be taken: a tripod's frames are then
#: not bent by their water. Own rule.
_GAIN: Final = 0.004

#: Window in which the frames' detail is correlated [px], detail below which there is nothing to
#: correlate [stops], correlation from which on a place agrees. Own rules.
_WINDOW_PX: Final = 21
_LEAST_DETAIL: Final = 0.06
_AGREES: Final = 0.6
#: Twice the distance that is kept from what moves: the window, and the shading's Gaussian [px].
_CLEARANCE_PX: Final = 31
#: Parts of the frame that have detail, and of these that agree, in frames of one view; other
#: views measured below 0.04. Own rules.
_LEAST_MARKED: Final = 0.02
_LEAST_AGREEING: Final = 0.15


@dataclass(frozen=True)
class Alignment:
    """How one frame lies on another.

    `matrix` (3, 3) takes a place of the first frame to the same thing in the second, both from
    the upper left edge in shares of the frame's own long side. `agreeing` is the share of the
    places with detail that are the same in both, 0 to 1; `correlation` says how much the detail is
    the same at each place, shape (h, w) at a long side of at most 800 px, NaN where there is no
    detail or where only one frame reaches.
    """

    matrix: Matrix
    agreeing: float
    correlation: Field

    def between(self, first: tuple[int, ...], second: tuple[int, ...]) -> Matrix:
        """The same for pixels of copies of the shapes (h, w, …): for `cv2.warpPerspective`.

        Returns:
            Shape (3, 3), from pixels of the first to pixels of the second.
        """
        return _to_pixels(second) @ self.matrix @ np.linalg.inv(_to_pixels(first))

    def shift_px(self, first: tuple[int, ...]) -> tuple[float, float]:
        """Where the middle of the first lies in the second: right and down [px of the first]."""
        long = max(first[:2])
        middle = np.array([first[1] / long / 2, first[0] / long / 2, 1.0])
        moved = self.matrix @ middle
        right, down = (moved[:2] / moved[2] - middle[:2]) * long
        return float(right), float(down)

    @property
    def turned_deg(self) -> float:
        """By how much the second's picture is turned against the first's, clockwise [deg]."""
        return math.degrees(math.atan2(self.matrix[1, 0], self.matrix[0, 0]))


def align(
    first: WorkingCopy, second: WorkingCopy, moving: Mask | None = None
) -> Alignment | Misfit:
    """Lay the second frame on the first.

    Args:
        first: the frame that stays.
        second: the other one, of the same shape; its size may differ.
        moving: where the first is known to move (water), shape of its working copy; else it is
            found out.

    Returns:
        The alignment, or why there is none.

    Source: matched corners (ORB, Rublee et al. 2011), phase correlation (Kuglin & Hines 1975),
    refinement by enhanced correlation (Evangelidis & Psarakis 2008), from memory; as in OpenCV.
    """
    if not _same_shape(first.pixels.shape, second.pixels.shape):
        return Misfit.OTHER_SHAPE
    one = _detail(first.luminance, _small(first.pixels.shape))
    two = _detail(second.luminance, _small(first.pixels.shape))
    still: NDArray[np.uint8] = np.ones(one.shape, np.uint8)
    if moving is not None:
        small = cv2.resize(moving.astype(np.uint8), one.shape[::-1], interpolation=cv2.INTER_AREA)
        clearance = np.ones((_CLEARANCE_PX, _CLEARANCE_PX), np.uint8)
        still = np.asarray(cv2.erode((small == 0).astype(np.uint8), clearance), np.uint8)
    if not _marked(one, still) or not _marked(two, still):
        return Misfit.FEW_MARKS
    found = _first_guess(one, two, still)
    if found.agreeing < _LEAST_AGREEING / 2:
        return Misfit.OTHER_VIEW
    refined = _refined(one, two, still, found)
    return refined if refined.agreeing >= _LEAST_AGREEING else Misfit.OTHER_VIEW


def _same_shape(first: tuple[int, ...], second: tuple[int, ...]) -> bool:
    return abs(math.log(first[0] * second[1] / (first[1] * second[0]))) <= _SHAPE


def _small(shape: tuple[int, ...]) -> tuple[int, int]:
    """Width and height at which frames are laid on each other [px]."""
    scale = min(1.0, _SIDE_PX / max(shape[:2]))
    return max(8, round(shape[1] * scale)), max(8, round(shape[0] * scale))


def _detail(luminance: Field, size: tuple[int, int]) -> Field:
    """What stands out of the shading [stops], bounded."""
    small = cv2.resize(luminance, size, interpolation=cv2.INTER_AREA)
    stops = np.log2(small + np.float32(_FLOOR))
    stops -= cv2.GaussianBlur(stops, (0, 0), _SHADING * max(size))
    return np.asarray(np.clip(stops, -_MOST_DETAIL, _MOST_DETAIL), np.float32)


def _marked(detail: Field, still: NDArray[np.uint8]) -> bool:
    energy = cv2.blur(detail * detail, (_WINDOW_PX, _WINDOW_PX))
    return float(((energy > _LEAST_DETAIL**2) & (still > 0)).mean()) >= _LEAST_MARKED


def _first_guess(one: Field, two: Field, still: NDArray[np.uint8]) -> Alignment:
    """A motion to start from: none or a plain shift, or, where these don't do, matched corners."""
    window = cv2.createHanningWindow(one.shape[::-1], cv2.CV_32F)
    (right, down), _ = cv2.phaseCorrelate(one * still, two * still, window)
    shift = np.array([[1, 0, right], [0, 1, down], [0, 0, 1]], np.float64)
    best = max(
        (_judged(one, two, still, matrix) for matrix in (np.eye(3), shift)),
        key=lambda guess: guess.agreeing,
    )
    corners = _by_corners(one, two, still) if best.agreeing < _GOOD_START else None
    if corners is None:
        return best
    turned = _judged(one, two, still, corners)
    return turned if turned.agreeing > best.agreeing else best


def _by_corners(one: Field, two: Field, still: NDArray[np.uint8]) -> Matrix | None:
    first, first_words = _corners(one, still)
    second, second_words = _corners(two, np.ones_like(still))
    pairs = cv2.BFMatcher(cv2.NORM_HAMMING, crossCheck=True).match(first_words, second_words)
    if len(pairs) < _LEAST_MATCHES:
        return None
    here = np.array([first[pair.queryIdx] for pair in pairs])
    there = np.array([second[pair.trainIdx] for pair in pairs])
    cv2.setRNGSeed(1)  # the same frames give the same answer
    motion, kept = cv2.estimateAffinePartial2D(
        here, there, method=cv2.RANSAC, ransacReprojThreshold=_REACH_PX, maxIters=3000
    )
    if motion is None or int(kept.sum()) < _LEAST_MATCHES:
        return None
    matrix = np.vstack([motion, [0.0, 0.0, 1.0]])
    return matrix if _plausible(matrix) else None


def _plausible(matrix: Matrix) -> bool:
    scale = math.sqrt(abs(float(np.linalg.det(matrix[:2, :2]))))
    turn = math.degrees(math.atan2(matrix[1, 0], matrix[0, 0]))
    return _SCALES[0] <= scale <= _SCALES[1] and abs(turn) <= _TURN_DEG


def _corners(
    detail: Field, still: NDArray[np.uint8]
) -> tuple[list[tuple[float, float]], NDArray[np.uint8]]:
    """Corners (right, down) [px] and the words that describe them, from all parts of the frame."""
    codes = np.clip(128 + detail * (127 / _MOST_DETAIL), 0, 255).astype(np.uint8)
    finder = cv2.ORB.create(nfeatures=_CORNERS, fastThreshold=8)
    points: list[cv2.KeyPoint] = []
    height, width = detail.shape
    for row in range(_PIECES):
        for column in range(_PIECES):
            top, left = row * height // _PIECES, column * width // _PIECES
            piece = (
                slice(top, (row + 1) * height // _PIECES),
                slice(left, (column + 1) * width // _PIECES),
            )
            for point in finder.detect(codes[piece], still[piece]):
                point.pt = (point.pt[0] + left, point.pt[1] + top)
                points.append(point)
    if not points:
        return [], np.zeros((0, 32), np.uint8)
    described, words = finder.compute(codes, points)
    return [(point.pt[0], point.pt[1]) for point in described], np.asarray(words, np.uint8)


def _refined(one: Field, two: Field, still: NDArray[np.uint8], found: Alignment) -> Alignment:
    """Turn and shift, then perspective if it fits clearly better, by the places that agree."""
    agreeing = np.asarray((np.nan_to_num(found.correlation) > _AGREES / 2), np.uint8) * still
    start = found.between(one.shape, two.shape)
    best = found
    reached = -1.0
    for kind, rows in ((cv2.MOTION_EUCLIDEAN, 2), (cv2.MOTION_HOMOGRAPHY, 3)):
        begin = np.asarray(start / start[2, 2], np.float32)[:rows]
        try:
            correlation, motion = cv2.findTransformECC(
                one, two, np.ascontiguousarray(begin), kind, _STEPS, agreeing, 3
            )
        except cv2.error:  # it drifts away where there is little to hold on to
            continue
        if correlation < reached + (_GAIN if rows == 3 else 0.0):
            continue
        matrix = np.vstack([motion, [0, 0, 1]]) if rows == 2 else motion
        judged = _judged(one, two, still, np.asarray(matrix, np.float64))
        if judged.agreeing >= best.agreeing - 0.01:
            best, reached, start = judged, correlation, np.asarray(matrix, np.float64)
    return best


def _judged(one: Field, two: Field, still: NDArray[np.uint8], matrix: Matrix) -> Alignment:
    """How well a motion [px of the copies] lays the details on each other."""
    size = one.shape[::-1]
    way = cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP
    laid = cv2.warpPerspective(two, matrix, size, flags=way)
    seen = cv2.warpPerspective(np.ones(two.shape, np.uint8), matrix, size, flags=way)
    correlation = _correlation(one, np.asarray(laid, np.float32))
    inside = np.asarray(cv2.erode(seen, np.ones((9, 9), np.uint8), borderValue=0), np.uint8)
    correlation[(still & inside) == 0] = np.nan
    known = np.isfinite(correlation)
    enough = known.mean() >= _LEAST_MARKED
    agreeing = float((correlation[known] > _AGREES).mean()) if enough else 0.0
    shares = np.linalg.inv(_to_pixels(two.shape)) @ matrix @ _to_pixels(one.shape)
    return Alignment(shares, agreeing, correlation)


def _correlation(one: Field, two: Field) -> Field:
    """Correlation of the details around each place, NaN where neither has any."""
    window = (_WINDOW_PX, _WINDOW_PX)
    mean_one, mean_two = cv2.blur(one, window), cv2.blur(two, window)
    spread_one = cv2.blur(one * one, window) - mean_one * mean_one
    spread_two = cv2.blur(two * two, window) - mean_two * mean_two
    common = cv2.blur(one * two, window) - mean_one * mean_two
    least = np.float32(_LEAST_DETAIL**2)
    root = np.sqrt(np.maximum(spread_one, least / 16) * np.maximum(spread_two, least / 16))
    marked = np.maximum(spread_one, spread_two) > least
    return np.where(marked, common / root, np.float32(np.nan)).astype(np.float32)


def _to_pixels(shape: tuple[int, ...]) -> Matrix:
    """From shares of the long side, from the edge, to pixels of a copy, from their middles."""
    long = float(max(shape[:2]))
    return np.array([[long, 0, -0.5], [0, long, -0.5], [0, 0, 1]], np.float64)
