"""White water: tiers of a fall, its spray, the pool under it and the stream that leaves."""

from __future__ import annotations

from dataclasses import dataclass

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.flow import carried, moved, streak_px, time_of_fall
from tests.scenes.layers import POOL, Layers
from tests.scenes.noise import Field, Size, fractal, step_between


@dataclass(frozen=True)
class Shot:
    """What the moving water needs to know of the camera.

    Args:
        shutter_s: exposure time [s].
        coverage_m: height of what the frame covers at the fall [m].
    """

    shutter_s: float
    coverage_m: float


@dataclass(frozen=True)
class Tier:
    """One drop, in shares of the frame: rows of lip and foot, middles and half widths."""

    lip: float
    foot: float
    middle: tuple[float, float]
    half_width: tuple[float, float]
    thickness: float = 1.0
    level: float = 1.0  # of its whitest water, 1 = the full white of the scene


def lay_tier(
    layers: Layers,
    tier: Tier,
    shot: Shot,
    still: np.random.Generator,
    moving: np.random.Generator,
) -> None:
    """Lay one drop of the fall: strands that fan out, streaked by the open shutter.

    Args:
        layers: what lies behind.
        tier: the drop.
        shot: the camera.
        still: for what the rock gives the water: its edges and where it runs thick.
        moving: for what differs from moment to moment.
    """
    height, width = layers.size
    window = slice(int((tier.lip - 0.02) * height), min(height, int((tier.foot + 0.02) * height)))
    down = np.arange(window.start, window.stop) / height
    progress = np.clip((down - tier.lip) / (tier.foot - tier.lip), 0, 1)
    middle = np.interp(progress, [0, 1], tier.middle)
    # Free-falling sheets spread with the root of the drop.
    half = tier.half_width[0] + (tier.half_width[1] - tier.half_width[0]) * np.sqrt(progress)
    columns = np.arange(width) / width
    across = ((columns[None, :] - middle[:, None]) / half[:, None] + 1) / 2
    # The lip and the foot are uneven: columns start and end at rows of their own.
    uneven = 0.011 * fractal(still, (2, width), (2, width / 14), 6, 0.7)[0]
    below_m = (down[:, None] - tier.lip - 0.02 - uneven[None, :]) * shot.coverage_m
    time_s = time_of_fall(below_m)
    rows_per_s = 1.1 * len(down) / float(time_s.max())
    pattern = _strands((int(1.1 * len(down)) + 8, int(2 * half[-1] * width) + 8), still, moving)
    thick = carried(
        pattern,
        np.asarray(across, np.float32),
        np.asarray(time_s, np.float32),
        rows_per_s=rows_per_s,
        shutter_s=shot.shutter_s,
    )
    edge = np.asarray(1 - np.abs(2 * across - 1), np.float32)
    ragged = 0.2 * fractal(still, edge.shape, (height / 5, width / 90), 4)
    foot_m = (tier.foot - 0.006 - down[:, None] + 0.6 * uneven[None, ::-1]) * shot.coverage_m
    thick *= step_between(0.0, 0.5, edge + ragged * (edge < 0.7)) * (edge > -0.2)
    thick *= step_between(-0.05, 0.12, np.asarray(below_m, np.float32))
    thick *= step_between(-0.12, 0.3, np.asarray(foot_m, np.float32))
    thick *= np.float32(tier.thickness)
    share = np.asarray(1 - np.exp(-2.1 * thick), np.float32)
    # The foot stands freer under the open gap, and its water is whiter.
    lit = np.float32(tier.level) * (0.7 + 0.3 * progress[:, None])
    level = np.asarray(lit * (1 - 0.5 * np.exp(-0.75 * thick)), np.float32)
    layers.window(window).cover_white(share, level)


def _strands(size: Size, still: np.random.Generator, moving: np.random.Generator) -> Field:
    """Thickness of the water over (time, place): strands that hold, lumps that ride on them."""
    rows, columns = size
    strand = fractal(still, size, (rows * 1.2, columns / 5), 5, 0.72)
    braid = fractal(moving, size, (rows / 4, columns / 12), 4, 0.7)
    lumps = fractal(moving, size, (rows / 14, columns / 30), 4, 0.75)
    return np.asarray(np.exp(0.72 * strand + 0.45 * braid + 0.55 * lumps - 0.45), np.float32)


def lay_spray(
    layers: Layers, place: tuple[float, float], reach: tuple[float, float], amount: float,
    rng: np.random.Generator,
) -> None:  # fmt: skip
    """Lay the soft white of spray round (down, across), fading over `reach` (high, wide)."""
    height, width = layers.size
    down = (np.arange(height, dtype=np.float32)[:, None] / height - place[0]) / reach[0]
    across = (np.arange(width, dtype=np.float32)[None, :] / width - place[1]) / reach[1]
    down = np.where(down > 0, down * 2.4, down)
    puffs = fractal(rng, layers.size, (height / 14, width / 8), 5, 0.5)
    share = amount * np.exp(-(down**2) - across**2) * np.exp(0.22 * puffs)
    share = np.asarray(np.clip(share, 0, 0.97), np.float32)
    layers.cover_white(share, np.asarray(0.42 + 0.4 * share, np.float32))


def lay_pool(
    layers: Layers, rows: tuple[float, float], middle: float, shot: Shot, rng: np.random.Generator
) -> None:
    """Lay the pool: a mirror of what stands above it, ripples, and foam that drifts."""
    height, width = layers.size
    top, foot = int(rows[0] * height), int(rows[1] * height)
    window = slice(top, foot)
    size = (foot - top, width)
    near = np.linspace(0, 1, size[0], dtype=np.float32)[:, None]
    # Rows are squeezed far away: noise over the logarithm of the depth keeps the perspective.
    ripples = _receding(fractal(rng, size, (10, width / 22), 4, 0.75))
    part = layers.window(window)
    mirror = _mirror(layers, top, size[0])
    for channel, reflectance in enumerate(POOL):
        still = 0.5 * mirror[..., channel] + np.float32(0.55 * reflectance)
        part.base[..., channel] = still * np.exp(0.28 * ripples) * (1.1 - 0.45 * near)
    white_mirror = _mirror_of_white(layers, top, size[0])
    part.white[:] = 0.28 * white_mirror * np.exp(0.35 * ripples)
    part.sky[:] = 0
    drift = streak_px(0.35, shot.shutter_s, shot.coverage_m, height)  # a slow pool: 0.35 m/s
    foam = moved(np.ascontiguousarray(_receding(fractal(rng, size, (14, width / 26), 5, 0.8)).T),
                 drift).T  # fmt: skip
    columns = np.arange(width, dtype=np.float32)[None, :] / width
    strewn = np.exp(-(((columns - middle) / (0.17 + 0.15 * near)) ** 2)) * (1.3 - 1.9 * near)
    share = step_between(0.25, 2.2, np.asarray(foam + 2.2 * strewn - 1.3, np.float32))
    part.cover_white(np.asarray(0.85 * share, np.float32), np.asarray(0.22 + 0.5 * share, "f4"))


def _mirror(layers: Layers, top: int, rows: int) -> Field:
    """What stands above the pool, upside down and smeared by ripples."""
    seen = layers.base[max(0, top - rows) : top][::-1]
    full = cv2.resize(np.ascontiguousarray(seen), (layers.size[1], rows))
    smeared = cv2.GaussianBlur(full, (0, 0), sigmaX=3, sigmaY=rows / 14)
    return np.asarray(smeared, dtype=np.float32)


def _mirror_of_white(layers: Layers, top: int, rows: int) -> Field:
    seen = np.ascontiguousarray(layers.white[max(0, top - rows) : top][::-1])
    full = cv2.resize(seen, (layers.size[1], rows))
    return np.asarray(cv2.GaussianBlur(full, (0, 0), sigmaX=5, sigmaY=rows / 9), np.float32)


def _receding(field: Field) -> Field:
    """A field laid on level water: squeezed towards the far side (the top)."""
    rows, columns = field.shape
    near = np.linspace(0.0, 1.0, rows)
    source = ((1 / (0.25 + near) - 0.8) / (4 - 0.8) * (rows - 1)).astype(np.float32)
    across = np.broadcast_to(np.arange(columns, dtype=np.float32), field.shape).copy()
    down = np.broadcast_to(source[:, None], field.shape).copy()
    laid = cv2.remap(field, across, down, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REFLECT)
    return np.asarray(laid, np.float32)


def lay_stream(
    layers: Layers, course: list[tuple[float, float, float]], shot: Shot, rng: np.random.Generator
) -> None:
    """Lay a stream that runs towards the camera along (down, across, half width) places."""
    height, width = layers.size
    window = slice(int(course[0][0] * height), height)
    down = np.arange(window.start, window.stop) / height
    downs = [place[0] for place in course]
    middle = _rounded(np.interp(down, downs, [place[1] for place in course]))
    half = _rounded(np.interp(down, downs, [place[2] for place in course]))
    columns = np.arange(width) / width
    across = np.asarray(((columns[None, :] - middle[:, None]) / half[:, None] + 1) / 2, "f4")
    size = (across.shape[0], int(2.2 * half.max() * width))
    tall = size[0]
    threads = fractal(rng, size, (tall / 2, size[1] / 8), 5, 0.7)
    lumps = fractal(rng, size, (tall / 12, size[1] / 16), 4, 0.8)
    pattern = np.asarray(np.exp(0.75 * threads + 0.6 * lumps - 0.7), np.float32)
    # Nearer than the fall: its metre is about three times as long in the frame.
    rows_per_s = streak_px(1.6, 1.0, shot.coverage_m / 3, height)
    time_s = np.broadcast_to(((down - down[0]) * height / rows_per_s)[:, None], across.shape)
    thick = carried(pattern, across, time_s.astype(np.float32), rows_per_s=rows_per_s,
                    shutter_s=shot.shutter_s)  # fmt: skip
    edge = np.asarray(1 - np.abs(2 * across - 1), np.float32)
    ragged = 0.25 * fractal(rng, edge.shape, (tall / 9, width / 30), 5)
    begins = step_between(0, 0.25, np.asarray(time_s / time_s.max() + 0.3 * ragged, np.float32))
    bed = step_between(0, 0.7, edge + ragged * (edge < 0.8)) * begins
    share = np.asarray(bed * (1 - np.exp(-0.9 * thick)), np.float32)
    part = layers.window(window)
    part.cover_white(share, np.asarray(0.16 + 0.5 * share, np.float32))


def _rounded(line: NDArray[np.float64]) -> NDArray[np.float64]:
    """A course without corners."""
    wide = len(line) // 3 | 1
    padded = np.pad(line, wide // 2, mode="reflect", reflect_type="odd")
    for _ in range(2):
        padded = np.pad(padded, wide // 2, mode="edge")
        padded = np.convolve(padded, np.full(wide, 1 / wide), mode="valid")
    return np.asarray(padded[wide // 2 : wide // 2 + len(line)])
