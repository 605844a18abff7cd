"""Whole frames with water of a known streak length in known cells, sharp or spoiled."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

import cv2
import numpy as np

from core.frame.water_area import COLUMNS, ROWS
from tests.scenes.lens import blurred
from tests.scenes.noise import Field, fractal
from tests.training.streaks import Lens, Pixels, Streaks, rendered, shifted

#: Sides of the working copy of a frame of 3 : 2 [px].
LONG_PX: Final = 1600
SHORT_PX: Final = 1067
#: Pixels of the frame for each of its stones.
_STONE_PIXELS: Final = 500


@dataclass(frozen=True)
class Framed:
    """A frame and the truth about its water."""

    pixels: Pixels
    cells: tuple[str, ...]
    axis_deg: float
    share: float


def rendered_frame(
    rng: np.random.Generator, length_px: float, fault: Field | None = None
) -> Framed:
    """A rendered fall or stream among rendered rock.

    Args:
        rng: for what is drawn.
        length_px: of the streaks [px].
        fault: kernel of a defocus or a shake of the whole frame.
    """
    shape = _shape(rng)
    rows, columns = _block(rng)
    window = _window(shape, rows, columns)
    plan = Streaks.drawn(rng, (window[0].stop - window[0].start,
                               window[1].stop - window[1].start), length_px)  # fmt: skip
    water, _ = rendered(plan, rng)
    light = stones(shape, rng)
    light[window] = water
    light = light if fault is None else blurred(light, fault)
    return Framed(
        _small_copy(rng).file_of(light, rng),
        _cells(rows, columns),
        plan.axis_deg,
        length_px / side_px(shape, plan.axis_deg),
    )


def shifted_frame(
    rng: np.random.Generator, light: Field, length_px: float, fault: Field | None = None
) -> Framed:
    """A real picture of water, averaged along an axis, among rendered rock.

    Args:
        rng: for what is drawn.
        light: of the picture, linear, shape (h, w, 3); it is mirrored where it is too small.
        length_px: of the average [px].
        fault: kernel of a defocus or a shake of the whole frame.
    """
    shape = _shape(rng)
    rows, columns = _block(rng)
    window = _window(shape, rows, columns)
    size = (window[0].stop - window[0].start, window[1].stop - window[1].start)
    axis = float(rng.uniform(0, 180))
    moved = shifted(_fitted(light, size, rng), length_px, axis)
    moved /= max(float(np.percentile(moved, 99)), 1e-3)
    frame = np.asarray(cv2.merge([stones(shape, rng)] * 3), np.float32)
    frame[window] = moved
    frame = frame if fault is None else blurred(frame, fault)
    pixels = _small_copy(rng).file_of(frame, rng)
    return Framed(pixels, _cells(rows, columns), axis, length_px / side_px(shape, axis))


def _small_copy(rng: np.random.Generator) -> Lens:
    """A lens and a file; a small copy of a large frame keeps little of the lens's blur."""
    return replace(Lens.drawn(rng), blur_px=float(rng.uniform(0.3, 0.6)))


def _fitted(light: Field, size: tuple[int, int], rng: np.random.Generator) -> Field:
    height, width = (min(side, most) for side, most in zip(size, light.shape[:2], strict=True))
    top = int(rng.integers(light.shape[0] - height + 1))
    left = int(rng.integers(light.shape[1] - width + 1))
    crop = light[top : top + height, left : left + width]
    down, right = size[0] - height, size[1] - width
    return np.asarray(np.pad(crop, ((0, down), (0, right), (0, 0)), mode="symmetric"), np.float32)


def side_px(shape: tuple[int, int], axis_deg: float) -> int:
    """The side of the frame that lies nearer to an axis [px]."""
    return shape[0] if 45 <= axis_deg % 180 <= 135 else shape[1]


def stones(shape: tuple[int, int], rng: np.random.Generator) -> Field:
    """Wet stones of all sizes, grained, with the edges that sharp stones have; linear light."""
    light = np.full(shape, 0.03, np.float32)
    count = shape[0] * shape[1] // _STONE_PIXELS
    sides = 2.0 + 0.5 * min(shape) / 12 * rng.pareto(2.0, (count, 1)).clip(0, 4) * rng.uniform(
        0.4, 1, (count, 2)
    )
    # The large ones lie below the small ones.
    for high, wide in sides[np.argsort(-sides.sum(axis=1))]:
        middle = int(rng.integers(shape[1])), int(rng.integers(shape[0]))
        level = float(0.07 * np.exp(rng.normal(0, 0.6)))
        size = max(1, round(wide)), max(1, round(high))
        cv2.ellipse(light, middle, size, float(rng.uniform(0, 180)), 0, 360, level, -1)
    grain = fractal(rng, shape, (shape[0] / 12, shape[1] / 12), 8, 0.8)
    return np.asarray(light * np.exp(0.3 * grain), np.float32)


def _shape(rng: np.random.Generator) -> tuple[int, int]:
    return (LONG_PX, SHORT_PX) if rng.random() < 0.5 else (SHORT_PX, LONG_PX)


def _block(rng: np.random.Generator) -> tuple[slice, slice]:
    """Rows and columns of the grid that the water takes: one to two each way."""
    sides = []
    for _ in range(2):
        count = int(rng.integers(1, 3))
        first = int(rng.integers(0, 5 - count))
        sides.append(slice(first, first + count))
    return sides[0], sides[1]


def _window(shape: tuple[int, int], rows: slice, columns: slice) -> tuple[slice, slice]:
    return (
        slice(rows.start * shape[0] // 4, rows.stop * shape[0] // 4),
        slice(columns.start * shape[1] // 4, columns.stop * shape[1] // 4),
    )


def _cells(rows: slice, columns: slice) -> tuple[str, ...]:
    return tuple(f"{row}{column}" for row in ROWS[rows] for column in COLUMNS[columns])
