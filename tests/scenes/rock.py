"""Stone: broken walls in layers of depth, and boulders near the camera."""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np

from tests.scenes.layers import LICHEN, MOSS, STONE, WET_STONE, Layers
from tests.scenes.noise import Field, Size, facets, fractal, step_between


def stone(rng: np.random.Generator, size: Size, scale_px: float) -> Field:
    """Level of a broken, bedded wall, around 1; `scale_px` is the width of the large blocks."""
    blocks, wide_cracks = facets(rng, size, (0.5 * scale_px, 1.0 * scale_px))
    chips, cracks = facets(rng, size, (0.13 * scale_px, 0.34 * scale_px))
    grain = fractal(rng, size, (scale_px / 6, scale_px / 3), 6, 0.62)
    level = np.exp(0.34 * blocks + 0.26 * chips + 0.2 * grain)
    hollow = (1 - 0.55 * np.minimum(wide_cracks, 1)) * (1 - 0.3 * np.minimum(cracks, 1))
    lit = np.clip(1 - 2.2 * cv2.Sobel(cv2.GaussianBlur(level, (0, 0), 1.6), -1, 0, 1), 0.45, 1.8)
    return np.asarray(level * hollow * lit, dtype=np.float32)


def wall_edge(
    rng: np.random.Generator, height: int, width: int, places: list[tuple[float, float]]
) -> Field:
    """Column of a wall's edge for each row [px]: through `places` (down, across), roughened."""
    down = np.linspace(0, 1, height)
    line = np.interp(down, [place[0] for place in places], [place[1] for place in places])
    rough = fractal(rng, (height, 2), (height / 7, 2), 7, 0.6)[:, 0]
    return np.asarray(
        line * width + (0.020 * width) * rough + _notches(rng, height, width), dtype=np.float32
    )


def _notches(rng: np.random.Generator, height: int, width: int) -> Field:
    """Steps in an edge, where beds of stone end one over the other."""
    places = np.sort(rng.integers(0, height, 18))
    steps = rng.normal(0, 0.009 * width, 19).astype(np.float32)
    sharp = steps[np.searchsorted(places, np.arange(height))][:, None]
    smooth = cv2.GaussianBlur(sharp, (1, 2 * (height // 260) + 3), 0)
    return np.asarray(smooth[:, 0], dtype=np.float32)


@dataclass(frozen=True)
class Wall:
    """One layer of the gorge's side: its edge, how far away, how light."""

    left: bool
    places: list[tuple[float, float]]
    scale: float  # width of its blocks over the frame's short side
    light: float
    moss: float


def lay_wall(layers: Layers, wall: Wall, rng: np.random.Generator) -> None:
    """Lay one wall over what is behind it, lighter above, mossy where it faces up."""
    height, width = layers.size
    edge = wall_edge(rng, height, width, wall.places)
    touched = slice(0, int(edge.max()) + 3) if wall.left else slice(int(edge.min()) - 3, width)
    part = layers.window(slice(0, height), slice(max(0, touched.start), min(width, touched.stop)))
    columns = np.arange(width, dtype=np.float32)[None, touched]
    inside = (edge[:, None] - columns) * (1 if wall.left else -1)
    share = step_between(-1.5, 1.5, inside)
    level = stone(rng, part.size, wall.scale * min(layers.size))
    down = np.linspace(0, 1, height, dtype=np.float32)[:, None]
    # The light falls in through the gap above: less of it lower down and away from the edge.
    depth = np.clip(inside / (0.45 * width), 0, 1)
    level *= (1.25 - 0.75 * down) * (1.0 - 0.55 * depth) * np.float32(wall.light)
    part.cover(share, level, STONE)
    hue = fractal(rng, part.size, (height / 8, width / 4), 4)
    part.tint(np.asarray(share * np.clip(0.25 + 0.3 * hue, 0, 0.8), np.float32), LICHEN)
    grown = fractal(rng, part.size, (width / 7, width / 6), 6, 0.7)
    mossy = 0.85 * share * step_between(0.9 - wall.moss, 1.9 - wall.moss, grown)
    part.tint(np.asarray(mossy, np.float32), MOSS)


@dataclass(frozen=True)
class Boulder:
    """A near rock: centre, half width and half height, over the frame's width and height."""

    across: float
    down: float
    half_wide: float
    half_high: float


def lay_boulder(layers: Layers, boulder: Boulder, rng: np.random.Generator) -> None:
    """Lay a wet, rounded rock with moss on its crown over what is behind."""
    height, width = layers.size
    window, across, down = _window(boulder, height, width)
    if not across.size:
        return
    size = (across.shape[0], across.shape[1])
    bumps = fractal(rng, size, (size[0] / 2.2, size[1] / 2.2), 7, 0.5)
    # A rounded block: fourth powers stand between an egg and a box.
    swell = 1 - np.abs(across) ** 2.6 - np.abs(down) ** 2.6 + 0.13 * bumps
    share = step_between(0.0, 0.012, np.asarray(swell, np.float32))
    form = np.sqrt(np.clip(swell, 0, 1)) + 0.022 * bumps
    form = cv2.GaussianBlur(np.asarray(form, np.float32), (0, 0), 1.2)
    slope_y = cv2.Sobel(form, -1, 0, 1, scale=boulder.half_high * height / 16)
    slope_x = cv2.Sobel(form, -1, 1, 0, scale=boulder.half_wide * width / 16)
    steep = np.sqrt(1 + slope_x**2 + slope_y**2)
    facing = np.clip((0.42 + 0.95 * slope_y + 0.22 * slope_x) / steep, 0, None)
    grain = fractal(rng, size, (24, 30), 5, 0.8)
    level = (0.16 + 1.15 * facing) * np.exp(0.18 * grain)
    shine = np.clip((facing - 0.88) / 0.12, 0, 1) ** 2 * (grain > 0.5) * 1.3
    part = layers.window(*window)
    part.cover(share, np.asarray(level + shine, np.float32), WET_STONE)
    mossy = share * step_between(0.45, 0.95, np.asarray(facing + 0.16 * bumps, np.float32))
    tufts = np.exp(0.35 * fractal(rng, size, (9, 7), 3, 0.9))
    part.cover(np.asarray(0.8 * mossy, np.float32), np.asarray(0.75 * facing * tufts, "f4"), MOSS)


def _window(boulder: Boulder, height: int, width: int) -> tuple[tuple[slice, slice], Field, Field]:
    """The part of the frame it may touch, and places in it over its half sizes."""
    reach = 1.35
    rows = slice(
        max(0, int((boulder.down - reach * boulder.half_high) * height)),
        max(0, min(height, int((boulder.down + reach * boulder.half_high) * height))),
    )
    columns = slice(
        max(0, int((boulder.across - reach * boulder.half_wide) * width)),
        max(0, min(width, int((boulder.across + reach * boulder.half_wide) * width))),
    )
    down = np.arange(rows.start, rows.stop, dtype=np.float32)[:, None] / height
    across = np.arange(columns.start, columns.stop, dtype=np.float32)[None, :] / width
    ones = np.ones((down.size, across.size), np.float32)
    return (
        (rows, columns),
        np.asarray(ones * ((across - boulder.across) / boulder.half_wide), np.float32),
        np.asarray(ones * ((down - boulder.down) / boulder.half_high), np.float32),
    )
