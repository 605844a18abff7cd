"""Random fields that look like rock, moss and water; every one from a generator given."""

from __future__ import annotations

import cv2
import numpy as np
from numpy.typing import NDArray

Field = NDArray[np.float32]
Size = tuple[int, int]  # (height, width) [px]


def _blown_up(grid: Field, size: Size, way: int = cv2.INTER_CUBIC) -> Field:
    height, width = size
    return np.asarray(cv2.resize(grid, (width, height), interpolation=way), dtype=np.float32)


def fractal(
    rng: np.random.Generator,
    size: Size,
    cell: tuple[float, float],
    octaves: int = 5,
    fall_off: float = 0.55,
) -> Field:
    """Noise of mean 0 and standard deviation 1; `cell` is the largest lump (high, wide) [px]."""
    # Lumps of many pixels are added up on a small canvas: the same look, four times as quick.
    small = (max(2, size[0] // 4), max(2, size[1] // 4))
    coarse, fine = np.zeros(small, np.float32), np.zeros(size, np.float32)
    for octave in range(octaves):
        lump = (cell[0] / 2**octave, cell[1] / 2**octave)
        if octave and min(lump) < 1:
            break
        grid = (max(2, round(size[0] / lump[0]) + 2), max(2, round(size[1] / lump[1]) + 2))
        values = rng.standard_normal(grid, dtype=np.float32) * np.float32(fall_off**octave)
        if min(lump) >= 16 and min(size) >= 64:
            coarse += _blown_up(values, small)
        else:
            fine += _blown_up(values, size)
    total = cv2.add(fine, _blown_up(coarse, size))
    mean, spread = cv2.meanStdDev(total)
    scale = 1 / max(spread.item(), 1e-9)
    return np.asarray(cv2.addWeighted(total, scale, total, 0, -mean.item() * scale), np.float32)


def facets(rng: np.random.Generator, size: Size, cell: tuple[float, float]) -> tuple[Field, Field]:
    """Broken stone: (a level for each facet, -1 to 1; how near the crack is, 1 on it, 0 away).

    Facets are the cells round random points (a Voronoi diagram), about `cell` (high, wide) [px].
    """
    height, width = size
    rows, columns = max(2, round(height / cell[0])), max(2, round(width / cell[1]))
    # The diagram is made with square cells on a smaller canvas, then stretched.
    shape = (rows * 24, columns * 24)
    points = np.ones(shape, np.uint8)
    count = rows * columns
    points[rng.integers(0, shape[0], count), rng.integers(0, shape[1], count)] = 0
    # A mask of 5 x 5 is the only one that also gives the labels.
    _, labels = cv2.distanceTransformWithLabels(
        points, cv2.DIST_L2, 5, labelType=cv2.DIST_LABEL_PIXEL
    )
    values = rng.uniform(-1, 1, int(labels.max()) + 1).astype(np.float32)
    level = values[labels]
    smooth = cv2.blur(level, (3, 3))
    crack = (np.abs(level - smooth) > 0.01).astype(np.float32)
    crack = np.asarray(cv2.GaussianBlur(crack, (0, 0), 0.8), dtype=np.float32)
    maps = _bent(rng, size, cell)
    return _through(_blown_up(level, size, cv2.INTER_LINEAR), maps), _through(
        _blown_up(crack, size, cv2.INTER_LINEAR), maps
    )


def _bent(rng: np.random.Generator, size: Size, cell: tuple[float, float]) -> tuple[Field, Field]:
    """Where each pixel looks (columns, rows), so that straight lines come out a little bent."""
    down, across = np.indices(size, dtype=np.float32)
    bend = np.float32(0.14 * min(cell))
    return across + bend * fractal(rng, size, cell, 4), down + bend * fractal(rng, size, cell, 4)


def _through(field: Field, maps: tuple[Field, Field]) -> Field:
    bent = cv2.remap(field, *maps, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REFLECT)
    return np.asarray(bent, dtype=np.float32)


def step_between(low: float, high: float, values: Field) -> Field:
    """0 up to `low`, 1 from `high` on, a smooth cubic between; also for falling edges."""
    share = np.clip((values - np.float32(low)) / np.float32(high - low), 0, 1)
    return np.asarray(share * share * (3 - 2 * share), dtype=np.float32)
