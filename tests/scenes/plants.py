"""Leaves that hang into the frame, a bare branch, and the wood above the gorge."""

from __future__ import annotations

from itertools import pairwise

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.layers import LEAF, Colour, Layers
from tests.scenes.noise import Field, fractal, step_between

BARK: Colour = (0.3, 0.24, 0.17)


def lay_wood(layers: Layers, rows: tuple[float, float], rng: np.random.Generator) -> None:
    """Lay dark trees behind the lip: foliage in clumps, lighter above."""
    height, width = layers.size
    part = layers.window(slice(int(rows[0] * height), int(rows[1] * height)))
    clumps = fractal(rng, part.size, (width / 9, width / 12), 7, 0.72)
    down = np.linspace(0, 1, part.size[0], dtype=np.float32)[:, None]
    level = np.asarray(0.3 * np.exp(0.62 * clumps) * (1.2 - 0.7 * down), np.float32)
    part.cover(np.ones(part.size, np.float32), level, LEAF)


def lay_sky_gap(
    layers: Layers, middle: float, half_width: float, foot: float, rng: np.random.Generator
) -> None:
    """Open the sky at the top, down to `foot`, with a ragged edge of leaves."""
    height, width = layers.size
    part = layers.window(slice(0, int(foot * 1.6 * height)))
    columns = np.arange(width, dtype=np.float32)[None, :] / width
    rows = np.arange(part.size[0], dtype=np.float32)[:, None] / (foot * height)
    inside = 1 - np.abs((columns - middle) / half_width) ** 2.5 - rows
    ragged = 0.2 * fractal(rng, part.size, (width / 10, width / 10), 8, 0.7)
    part.cover_sky(step_between(0.0, 0.03, np.asarray(inside + ragged, np.float32)))


def lay_leaves(
    layers: Layers, start: tuple[float, float], end: tuple[float, float], rng: np.random.Generator
) -> None:
    """Hang a twig with leaves into the frame from `start` to `end` (down, across)."""
    short = min(layers.size)
    part, twig = _neighbourhood(layers, start, end, rng)
    stem = np.zeros(part.size, np.uint8)
    points = np.round(twig * 16).astype(np.int32)
    cv2.polylines(stem, [points], False, 255, max(1, short // 500), cv2.LINE_AA, 4)
    part.cover(_softened(stem, short), np.full(part.size, 0.16, np.float32), BARK)
    shades = (0.35, 0.6, 0.95)
    leaves = [np.zeros(part.size, np.uint8) for _ in shades]
    heading = np.arctan2(*(twig[-1] - twig[0])[::-1])
    for place in twig[6:]:
        for side in (-1, 1, -1, 1):
            length = short * rng.uniform(0.014, 0.034)
            angle = heading + side * rng.uniform(0.2, 1.4)
            _leaf(leaves[int(rng.integers(3))], place, length, float(angle), rng)
    grain = 1 + 0.16 * fractal(rng, part.size, (short / 40, short / 40), 3)
    for shade, mask in zip(shades, leaves, strict=True):
        part.cover(_softened(mask, short), np.asarray(shade * grain, np.float32), LEAF)


def _neighbourhood(
    layers: Layers, start: tuple[float, float], end: tuple[float, float], rng: np.random.Generator
) -> tuple[Layers, NDArray[np.float64]]:
    """The part of the frame that a twig and its leaves touch, and the twig's line in it [px]."""
    height, width = layers.size
    twig = _curve(start, end, rng) * (width, height)
    reach = 0.06 * min(height, width)
    first = np.maximum(twig.min(axis=0) - reach, 0).astype(int)
    last = (twig.max(axis=0) + reach).astype(int)
    part = layers.window(slice(first[1], last[1]), slice(first[0], last[0]))
    return part, np.asarray(twig - first)


def lay_branch(layers: Layers, start: tuple[float, float], end: tuple[float, float], thick: float,
               rng: np.random.Generator) -> Field:  # fmt: skip
    """Lay a bare dark branch from the border inwards; returns its share of each pixel."""
    height, width = layers.size
    line = _curve(start, end, rng) * (width, height)
    mask = np.zeros(layers.size, np.uint8)
    for index, (first, last) in enumerate(pairwise(line)):
        slim = 1 - 0.8 * index / len(line)
        ends = [tuple(np.round(point * 16).astype(int).tolist()) for point in (first, last)]
        wide = max(1, round(thick * min(layers.size) * slim))
        cv2.line(mask, ends[0], ends[1], 255, wide, cv2.LINE_AA, 4)
    share = _softened(mask, min(layers.size))
    layers.cover(share, np.full(layers.size, 0.1, np.float32), BARK)
    return share


def _curve(
    start: tuple[float, float], end: tuple[float, float], rng: np.random.Generator
) -> NDArray[np.float64]:
    """28 points (across, down) of a line that sags and wavers."""
    way = np.linspace(0, 1, 28)[:, None]
    first, last = np.array(start[::-1]), np.array(end[::-1])
    sag = np.sin(np.pi * way) * rng.normal(0, 0.012, 2) + way**2 * np.array([0, 0.02])
    return np.asarray(first + (last - first) * way + sag + rng.normal(0, 0.0016, (28, 2)))


def _leaf(
    mask: NDArray[np.uint8], foot: NDArray[np.float64], length: float, angle: float,
    rng: np.random.Generator,
) -> None:  # fmt: skip
    """A pointed leaf: two arcs from its foot to its tip."""
    along = np.linspace(0, 1, 9)
    wide = length * rng.uniform(0.16, 0.30) * np.sin(np.pi * along) ** 0.8
    outline = np.concatenate([
        np.stack([along * length, wide], 1), np.stack([along[::-1] * length, -wide[::-1]], 1)
    ])  # fmt: skip
    turn = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])
    points = np.round((foot + outline @ turn) * 16).astype(np.int32)
    cv2.fillPoly(mask, [points], 255, cv2.LINE_AA, 4)


def _softened(mask: NDArray[np.uint8], short: int) -> Field:
    blurred = cv2.GaussianBlur(mask, (0, 0), max(0.5, short / 2200))
    return np.asarray(blurred, dtype=np.float32) / np.float32(255)
