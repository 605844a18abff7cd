"""Whole frames with water of a known streak length in known cells, sharp, defocused or shaken."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import cv2
import numpy as np

from core.frame.water_area import COLUMNS, ROWS
from tests.scenes.noise import Field, facets, fractal
from tests.training.streaks import Lens, Pixels, Streaks, rendered, shifted

#: Sides of the working copy of a frame of 3 : 2 [px].
LONG_PX: Final = 1600
SHORT_PX: Final = 1067


@dataclass(frozen=True)
class Framed:
    """A frame and the truth about its water."""

    pixels: Pixels
    cells: tuple[str, ...]
    axis_deg: float
    share: float


@dataclass(frozen=True)
class Fault:
    """What is wrong with the whole frame: a disc of defocus, or a line of shake [px]."""

    defocus_px: float = 0.0
    shake_px: float = 0.0
    shake_deg: float = 0.0

    def spoiled(self, light: Field) -> Field:
        """The light as such a frame gathers it."""
        reach = math.ceil(max(self.defocus_px, self.shake_px / 2)) + 1
        across, down = np.meshgrid(*(np.arange(-reach, reach + 1, 1 / 4),) * 2)
        turn = math.radians(self.shake_deg)
        along = across * math.cos(turn) - down * math.sin(turn)
        aside = across * math.sin(turn) + down * math.cos(turn)
        if self.defocus_px > 0:
            fine = across**2 + down**2 <= self.defocus_px**2
        elif self.shake_px > 0:
            fine = (np.abs(along) <= self.shake_px / 2) & (np.abs(aside) <= 0.5)
        else:
            return light
        kernel = cv2.resize(fine.astype(np.float32), (2 * reach + 1, 2 * reach + 1),
                            interpolation=cv2.INTER_AREA)  # fmt: skip
        return np.asarray(cv2.filter2D(light, -1, kernel / kernel.sum()), np.float32)


def rendered_frame(
    rng: np.random.Generator, length_px: float, fault: Fault | None = None
) -> Framed:
    """A rendered fall or stream among rendered rock."""
    shape = _shape(rng)
    rows, columns = _block(rng)
    window = _window(shape, rows, columns)
    plan = Streaks.drawn(rng, (window[0].stop - window[0].start,
                               window[1].stop - window[1].start), length_px)  # fmt: skip
    water, _ = rendered(plan, rng)
    light = stones(shape, rng)
    light[window] = water
    light = (fault or Fault()).spoiled(light)
    return Framed(
        Lens.drawn(rng).file_of(light, rng),
        _cells(rows, columns),
        plan.axis_deg,
        length_px / side_px(shape, plan.axis_deg),
    )


def shifted_frame(
    rng: np.random.Generator, light: Field, length_px: float, fault: Fault | None = None
) -> Framed:
    """A real picture of water, averaged along an axis, among rendered rock.

    Args:
        rng: for what is drawn.
        light: of the picture, linear, shape (h, w, 3); it is mirrored where it is too small.
        length_px: of the average [px].
        fault: of the whole frame.
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
    lens = Lens.drawn(rng)
    lens = Lens(0.3, lens.level, lens.full_well, lens.gamma, lens.quality)
    pixels = lens.file_of((fault or Fault()).spoiled(frame), rng)
    return Framed(pixels, _cells(rows, columns), axis, length_px / side_px(shape, axis))


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
    """Wet stones with cracks and edges, linear light, dark."""
    level, crack = facets(rng, shape, (shape[0] / 9, shape[1] / 9))
    grain = fractal(rng, shape, (shape[0] / 12, shape[1] / 12), 7, 0.75)
    light = 0.07 * np.exp(0.5 * level + 0.5 * grain) * (1 - 0.7 * crack)
    return np.asarray(light, np.float32)


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
