"""Along which axis the water of a picture runs: a structure tensor over octaves."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

Field = NDArray[np.float32]
Mask = NDArray[np.bool_]

#: Octaves looked at, from half the size of the picture on. The full size is left out: noise and
#: the lens rule there. Own rule.
LEVELS: Final = 5
#: Octaves of the local axes: ripples of 4 to 16 px. Own rule.
_LOCAL_LEVELS: Final = 3
#: Smoothing before the derivative [px of the level]. Own rule.
_SMOOTHING_PX: Final = 1.0
#: Window of the local axes as a share of the picture's short side. Own rule.
_WINDOW: Final = 0.04
#: How much of the axis of the whole, and of an axis that is given, goes into each local one; a
#: wholly streaked place weighs 1. Own rule.
_WHOLE_PART: Final = 0.15
_GIVEN_PART: Final = 1.0
#: Scale of the local axes against the picture.
FIELD_SCALE: Final = 4
#: Fewer pixels than this at a level say nothing there.
_LEAST_PIXELS: Final = 30
#: So many neighbouring pixels tell about the same of a derivative at that smoothing. Own rule.
_CORRELATED_PIXELS: Final = 10.0
#: Energy below which there is no structure at all [squared relative root of light].
_NOTHING: Final = 1e-12


@dataclass(frozen=True)
class Gradients:
    """Derivatives of one octave, shape (h, w), and where they count (h, w)."""

    across: Field  # to the right
    down: Field
    inside: Field  # 1 or 0

    def sums(self) -> tuple[complex, float]:
        """Sum of the squared derivative as a doubled angle, and its energy, inside."""
        right = self.across * self.inside
        down = self.down * self.inside
        squares = float(np.vdot(right, right)), float(np.vdot(down, down))
        mixed = float(np.vdot(right, down))
        return complex(squares[0] - squares[1], 2 * mixed), squares[0] + squares[1]


@dataclass(frozen=True)
class Flow:
    """The axis of the whole, how sure it is, and the axis at each place.

    `axis_deg` from the horizontal, anticlockwise, 0 to 180; `coherence` 0 (no direction) to 1
    (one direction only) of the whole picture, `coherences` of each octave; `doubled` the local
    axes as (cosine, sine) of the doubled angle with y down, shape (h, w, 2) at 1 / `FIELD_SCALE`
    of the picture; `octaves` the derivatives.
    """

    axis_deg: float
    coherence: float
    coherences: tuple[float, ...]
    doubled: Field
    octaves: tuple[Gradients, ...]


def flow_of(tones: Field, inside: Mask, given_deg: float | None = None) -> Flow:
    """Axis of the streaks or ripples in a region.

    Args:
        tones: root of the linear light, shape (h, w); its scale changes nothing.
        inside: the region, shape (h, w).
        given_deg: axis that is known [deg, anticlockwise from the horizontal]; local axes then
            keep near it.

    Source: structure tensor (Bigun & Granlund 1987, from memory); weights are own rules.
    """
    octaves = _octaves(tones, inside)
    whole, most, coherences = 0j, 0.0, []
    for octave in octaves:
        turned, energy = octave.sums()
        coherence = abs(turned) / energy if energy > _NOTHING else 0.0
        coherences.append(coherence)
        weight = _weight(octave, coherence, energy)
        whole += weight * turned
        most += weight * energy
    # The flow runs at right angles to the steepest change: minus the doubled angle.
    estimated = -whole / abs(whole) if abs(whole) > _NOTHING else 1j * 0
    axis_deg = _degrees(estimated)
    if given_deg is None:
        pull = _WHOLE_PART * estimated
    else:
        axis_deg = given_deg % 180
        turn = math.radians(-2 * axis_deg)
        pull = _GIVEN_PART * complex(math.cos(turn), math.sin(turn))
    sure = abs(whole) / max(most, _NOTHING)
    return Flow(axis_deg, sure, tuple(coherences), _local(octaves, tones.shape, pull), octaves)


def _weight(octave: Gradients, coherence: float, energy: float) -> float:
    """What an octave counts for the whole, per energy: by its coherence over chance and its steps.

    Without the steps, an octave in which there is next to nothing would speak as loud as the one
    with the streaks; and a few pixels are coherent by chance.
    """
    count = float(octave.inside.sum())
    sure = max(coherence - math.sqrt(_CORRELATED_PIXELS / count), 0.0)
    return sure * math.sqrt(energy / count) / max(energy, _NOTHING)


def _degrees(doubled: complex) -> float:
    return math.degrees(-0.5 * math.atan2(doubled.imag, doubled.real)) % 180


def _octaves(tones: Field, inside: Mask) -> tuple[Gradients, ...]:
    found = []
    level, counted = tones, inside.astype(np.float32)
    for _ in range(LEVELS):
        if min(level.shape) < 8:
            break
        level = np.asarray(cv2.pyrDown(level), np.float32)
        counted = np.asarray(
            cv2.resize(counted, level.shape[::-1], interpolation=cv2.INTER_AREA), np.float32
        )
        smooth = cv2.GaussianBlur(level, (0, 0), _SMOOTHING_PX)
        whole = np.asarray(counted > 0.99, np.float32)
        if np.count_nonzero(whole) < _LEAST_PIXELS:
            break
        found.append(
            Gradients(
                np.asarray(cv2.Scharr(smooth, cv2.CV_32F, 1, 0, scale=1 / 32), np.float32),
                np.asarray(cv2.Scharr(smooth, cv2.CV_32F, 0, 1, scale=1 / 32), np.float32),
                whole,
            )
        )
    return tuple(found)


def _local(octaves: tuple[Gradients, ...], shape: tuple[int, ...], pull: complex) -> Field:
    """Doubled angles of the flow at each place, shape (h / 4, w / 4, 2)."""
    size = (max(1, shape[1] // FIELD_SCALE), max(1, shape[0] // FIELD_SCALE))
    total = np.zeros((size[1], size[0], 3), np.float32)
    for octave in octaves[:_LOCAL_LEVELS]:
        right, down = octave.across * octave.inside, octave.down * octave.inside
        squared, straight = right * right, down * down
        stacked = cv2.merge([straight - squared, -2 * right * down, squared + straight])
        mean = max(float(stacked[..., 2].mean()), _NOTHING)
        total += cv2.resize(stacked / np.float32(mean), size, interpolation=cv2.INTER_AREA)
    sigma = max(1.0, _WINDOW * min(size))
    around = np.asarray(cv2.GaussianBlur(total, (0, 0), sigma), np.float32)
    doubled = around[..., :2] / np.maximum(around[..., 2:], np.float32(1e-6))
    return np.asarray(doubled + np.array([pull.real, pull.imag], np.float32), np.float32)
