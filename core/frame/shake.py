"""Movement of the camera, told from defocus by the directions in which edges are soft."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.edge_blur import STEP_PART, Edges
from core.frame.findings import Shake

#: Directions in which edges are gathered. Own rule: 15 degrees each.
_DIRECTIONS: Final = 12
#: Percentile of the ratio of gradients that stands for a direction. Own rule, by the figures.
_SHARPER: Final = 95.0
#: Fewer edges than this in a direction tell nothing, in the frame and in a block. Own rules.
_LEAST_IN_FRAME: Final = 60
_LEAST_IN_BLOCK: Final = 30
#: Part of all edges that each direction must hold in the frame, apart from those within so many
#: degrees of the softest, where movement takes them away: a picture of a few lines only looks as
#: if it were moved along them. Own rules.
_LEAST_PART: Final = 0.015
_AROUND_DEG: Final = 40.0
#: Directions that must be known in a frame and in a block. Own rules.
_KNOWN_IN_FRAME: Final = 9
_KNOWN_IN_BLOCK: Final = 6
#: Blocks of a side, and how many must tell something: what moved in a part of the frame moves
#: other blocks not at all, the camera moves them all alike. Own rules.
_BLOCKS: Final = 3
_LEAST_BLOCKS: Final = 4
#: What is called shake: the swing of the ratio over the directions (as a logarithm) times the
#: agreement of the blocks is at least so much where the ratio along the softest direction is at
#: most so much. Own rules, fitted on planted defocus and shake of 5 px and more.
_LEAST_SWING: Final = ((0.09, 2.45), (0.075, 2.05))
#: Blocks agree at least so far, 0 to 1. Own rule: lines drawn here and there do not.
_LEAST_AGREEMENT: Final = 0.6
#: Where the ratio is above this even along the softest direction, weak edges may be noise, grain or
#: the blocks of a JPEG. There the strongest edges must swing along with all others, at least so far
#: of what these do, unless swing times agreement is more than noise gives. Own rules: from a ratio
#: of 1.8 on strong edges swung 0.75 as far and more behind 41 planted shakes, but 0.33 and 0.12 as
#: far in two of three photographs, sharp or defocused, that were taken for shaken; the product was
#: 0.18 at most in those.
_MAYBE_NOISE: Final = 1.9
_STEPS_SWING: Final = 0.55
_MORE_THAN_NOISE: Final = 0.25
#: From this swing on no planted defocus was called shake. Own rule.
_SURE_SWING: Final = 0.14
#: A strip, of so many times its short side, holds few things, which may all be softer one way: of
#: 84 strips of sharp photographs three looked moved, of the photographs themselves none. Own rule:
#: of a strip nothing is told.
_STRIP_SIDES: Final = 2.5
_CONFIDENCE: Final = 0.9
_CONFIDENCE_SURE: Final = 0.97

Harmonic = tuple[float, complex]


def find_shake(edges: Edges, shape: tuple[int, ...]) -> Shake | None:
    """Whether all still parts are soft along one direction, and sharper across it.

    The logarithm of the ratio of gradients is fitted by its mean and its second harmonic over
    the directions, for the frame, for nine blocks of it and for its strongest edges.

    Args:
        edges: of the still parts.
        shape: (h, w, …) of the picture [px].

    Returns:
        The movement; None when it can't be told from defocus, or there is none.
    """
    strip = max(shape[:2]) > _STRIP_SIDES * min(shape[:2])
    whole = _harmonic(edges.angle_deg, edges.ratio, _LEAST_IN_FRAME, _KNOWN_IN_FRAME)
    if strip or whole is None:
        return None
    mean, swing = whole
    angle_deg = float(np.degrees(np.angle(-swing)) / 2 % 180)
    if not _all_around(edges, angle_deg):
        return None
    agreement = _agreement(_in_blocks(edges, shape))
    score, softest = abs(swing) * agreement, float(np.exp(mean - abs(swing)))
    moved = any(score >= low and softest <= high for low, high in _LEAST_SWING)
    if agreement < _LEAST_AGREEMENT or not moved:
        return None
    maybe_noise = softest > _MAYBE_NOISE and score < _MORE_THAN_NOISE
    if maybe_noise and not _steps_swing_too(edges, swing):
        return None
    return Shake(angle_deg, _CONFIDENCE_SURE if score >= _SURE_SWING else _CONFIDENCE)


def _steps_swing_too(edges: Edges, swing: complex) -> bool:
    """Whether the strongest edges are soft along the direction in which all edges are."""
    steps = edges.part(edges.strength >= np.quantile(edges.strength, 1 - STEP_PART))
    told = _harmonic(steps.angle_deg, steps.ratio, _LEAST_IN_BLOCK, _KNOWN_IN_BLOCK)
    if told is None:
        return False
    return (told[1] * swing.conjugate()).real >= _STEPS_SWING * abs(swing) ** 2


def _all_around(edges: Edges, angle_deg: float) -> bool:
    """Whether edges of all directions are there, apart from those that movement takes away."""
    counts = np.bincount(_directions(edges.angle_deg), minlength=_DIRECTIONS)
    directions_deg = np.arange(_DIRECTIONS) * 180 / _DIRECTIONS
    away = np.abs((directions_deg - angle_deg + 90) % 180 - 90) > _AROUND_DEG
    return bool((counts[away] >= _LEAST_PART * edges.row.size).all())


def _directions(angle_deg: NDArray[np.float32]) -> NDArray[np.int64]:
    step_deg = 180 / _DIRECTIONS
    return ((angle_deg + step_deg / 2) // step_deg).astype(np.int64) % _DIRECTIONS


def _agreement(parts: list[complex]) -> float:
    """1 when all blocks swing alike, 0 when they swing at random or are too few."""
    if len(parts) < _LEAST_BLOCKS:
        return 0.0
    return abs(sum(parts)) / max(sum(abs(part) for part in parts), 1e-9)


def _in_blocks(edges: Edges, shape: tuple[int, ...]) -> list[complex]:
    height, width = shape[:2]
    block = edges.row * _BLOCKS // height * _BLOCKS + edges.column * _BLOCKS // width
    found = []
    for number in range(_BLOCKS**2):
        inside = block == number
        harmonic = _harmonic(
            edges.angle_deg[inside], edges.ratio[inside], _LEAST_IN_BLOCK, _KNOWN_IN_BLOCK
        )
        if harmonic is not None:
            found.append(harmonic[1])
    return found


def _harmonic(
    angle_deg: NDArray[np.float32], ratio: NDArray[np.float32], least: int, known: int
) -> Harmonic | None:
    """Mean and second harmonic of the logarithm of the ratio over the directions."""
    direction = _directions(angle_deg)
    counts = np.bincount(direction, minlength=_DIRECTIONS)
    enough = np.flatnonzero(counts >= least)
    if enough.size < known:
        return None
    order = np.argsort(direction, kind="stable")
    groups = np.split(ratio[order], np.cumsum(counts)[:-1])
    values = np.log([np.percentile(groups[number], _SHARPER) for number in enough])
    turn = 2 * np.radians(enough * 180 / _DIRECTIONS)
    terms = np.stack([np.ones_like(turn), np.cos(turn), np.sin(turn)], axis=1)
    mean, cosine, sine = np.linalg.lstsq(terms, values, rcond=None)[0]
    return float(mean), complex(cosine, sine)
