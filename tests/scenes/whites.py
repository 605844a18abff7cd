"""Bright things planted into the light of a picture, each known pixel by pixel."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import IntEnum
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.noise import Field, Size, facets, fractal, step_between

Rng = np.random.Generator


class Bright(IntEnum):
    """What a pixel shows."""

    NOTHING = 0
    WATER = 1
    SPARKLE = 2
    SKY = 3
    LAMP = 4  # a lamp or the sun
    PALE = 5  # snow, sunlit stone, white things


@dataclass
class Whites:
    """Light, shape (H, W, 3), 1 = saturation, and what each pixel shows, shape (H, W)."""

    light: Field
    shows: NDArray[np.uint8]

    @classmethod
    def over(cls, light: Field) -> Whites:
        """Nothing planted yet."""
        return cls(light.copy(), np.zeros(light.shape[:2], np.uint8))

    @property
    def size(self) -> Size:
        """Height and width [px]."""
        return (self.shows.shape[0], self.shows.shape[1])

    def lay(self, share: Field, level: Field, colour: tuple[float, ...], what: Bright) -> None:
        """Lay a thing over all; it is what a pixel shows where it has half of it."""
        covered = share[..., None]
        self.light *= 1 - covered
        self.light += covered * level[..., None] * np.asarray(colour, np.float32)
        self.shows[share > 0.5] = what


def _grid(size: Size) -> tuple[Field, Field]:
    """Down and across, 0 to 1."""
    height, width = size
    down = np.linspace(0, 1, height, dtype=np.float32)[:, None]
    across = np.linspace(0, 1, width, dtype=np.float32)[None, :]
    return np.broadcast_to(down, size), np.broadcast_to(across, size)


def _white(rng: Rng, spread: float = 0.06) -> tuple[float, ...]:
    """A white under bluish or warm light."""
    warm = float(rng.normal(-0.02, spread))
    return (1 + warm, 1.0, 1 - warm)


def lay_fall(whites: Whites, rng: Rng) -> None:
    """A drop of white water with strands, from anywhere above to anywhere below."""
    size = whites.size
    down, across = _grid(size)
    high = float(rng.uniform(0.15, 0.85))
    top = float(rng.uniform(-0.05, 1 - high))
    ratio = size[0] / size[1]
    half = float(rng.uniform(0.02, 0.14)) * min(1.0, ratio) * (1 + high)
    way = (down - top) / high
    waver = fractal(rng, (size[0], 2), (size[0] / 3, 2), 5)[:, :1] * half * 0.25
    middle = float(rng.uniform(0.15, 0.85)) + waver + float(rng.normal(0, 0.06)) * way
    wide = half * (1 + float(rng.uniform(0, 1.2)) * way)
    long = float(rng.uniform(0.04, 0.5)) * high
    narrow = float(rng.uniform(0.008, 0.05))
    strands = fractal(rng, size, (long * size[0], narrow * size[1]), 6, 0.7)
    edge = 1 - np.abs(across - middle) / wide
    ends = np.minimum(way, 1 - way) * high / 0.03
    inside = np.minimum(edge, ends) + float(rng.uniform(0.15, 0.45)) * strands
    share = step_between(0.0, float(rng.uniform(0.15, 0.7)), np.asarray(inside, np.float32))
    spread = float(rng.uniform(0.15, 0.5))
    level = float(rng.uniform(0.45, 1.8)) * np.exp(spread * strands)
    whites.lay(share, np.asarray(level, np.float32), _white(rng), Bright.WATER)


def lay_rapids(whites: Whites, rng: Rng) -> None:
    """White water of a stream: streaks and foam that lie, in patches, in darker water."""
    size = whites.size
    down, across = _grid(size)
    row = float(rng.uniform(0.3, 0.95))
    tall = float(rng.uniform(0.05, 0.25))
    column, reach = float(rng.uniform(0.1, 0.9)), float(rng.uniform(0.1, 0.6))
    slope = float(rng.normal(0, 0.2))
    near = 1 - np.hypot((down - row - slope * (across - column)) / tall, (across - column) / reach)
    lump = float(rng.uniform(0.05, 0.25))
    cell = (lump * float(rng.uniform(0.15, 0.8)) * size[0], lump * size[1])
    foam = fractal(rng, size, cell, 7, float(rng.uniform(0.5, 0.75)))
    bed = step_between(0.0, 0.3, np.asarray(near, np.float32))
    whites.light *= 1 - 0.75 * bed[..., None]
    whites.light += bed[..., None] * np.asarray((0.03, 0.045, 0.045), np.float32)
    inside = near + 0.5 * foam - float(rng.uniform(0.1, 0.5))
    share = step_between(0.0, float(rng.uniform(0.2, 0.8)), np.asarray(inside, np.float32))
    level = float(rng.uniform(0.5, 1.8)) * np.exp(0.35 * foam)
    whites.lay(share, np.asarray(level, np.float32), _white(rng), Bright.WATER)


def lay_sparkle(whites: Whites, rng: Rng) -> None:
    """Glints strewn over a dark part."""
    height, width = whites.size
    row, column = rng.uniform(0.35, 0.9) * height, rng.uniform(0.2, 0.8) * width
    spread = float(rng.uniform(0.04, 0.2)) * height
    glints = np.zeros(whites.size, np.float32)
    for _ in range(int(rng.integers(30, 250))):
        down, across = int(rng.normal(row, 0.5 * spread)), int(rng.normal(column, spread))
        high, wide = int(rng.integers(1, 3)), int(rng.integers(1, 5))
        glints[max(down, 0) : max(down + high, 0), max(across, 0) : max(across + wide, 0)] = 1
    dark = np.full(whites.size, 0.04, np.float32)
    near = fractal(rng, whites.size, (height / 4, width / 4), 4)
    rows, columns = _grid(whites.size)
    away = np.hypot(rows * height - row, (columns * width - column) * 0.7) / spread
    bed = step_between(0.0, 0.5, np.asarray(2 - away + 0.3 * near, np.float32))
    whites.light *= 1 - 0.8 * bed[..., None]
    whites.light += 0.8 * bed[..., None] * dark[..., None]
    level = np.full(whites.size, float(rng.uniform(1, 4)), np.float32)
    whites.lay(glints, level, (1.0, 1.0, 1.0), Bright.SPARKLE)


def lay_sky(whites: Whites, rng: Rng) -> None:
    """Sky: above a ridge, in a gap with ragged leaves, or in holes between leaves."""
    size = whites.size
    down, across = _grid(size)
    foot = float(rng.uniform(0.05, 0.6))
    ragged = fractal(rng, size, (size[1] / 9, size[1] / 9), 8, float(rng.uniform(0.5, 0.75)))
    ridge = fractal(rng, (2, size[1]), (2, size[1] / 3), 7, 0.6)[:1]
    form = int(rng.integers(3))
    if form == 0:
        inside = (foot - down) / 0.1 + 0.8 * ridge
    elif form == 1:
        half = float(rng.uniform(0.08, 0.4))
        bowl = 1 - np.abs((across - float(rng.uniform(0, 1))) / half) ** 2.5 - down / foot
        inside = bowl + 0.25 * ragged
    else:
        inside = (foot - down) * 4 + 0.7 * ragged - float(rng.uniform(0.5, 1.2))
    hard = float(rng.uniform(0.02, 0.15))
    share = step_between(0.0, hard, np.asarray(inside, np.float32))
    clouds = fractal(rng, size, (size[0] / 4, size[1] / 2), 5)
    level = float(rng.uniform(0.7, 3)) * np.exp(float(rng.uniform(0, 0.25)) * clouds)
    whites.lay(share, np.asarray(level, np.float32), _white(rng, 0.1), Bright.SKY)


def lay_clouds(whites: Whites, rng: Rng) -> None:
    """White clouds in a blue or grey sky above a ridge."""
    size = whites.size
    down, _ = _grid(size)
    foot = float(rng.uniform(0.2, 0.8))
    ridge = fractal(rng, (2, size[1]), (2, size[1] / 3), 7, 0.6)[:1]
    inside = step_between(0.0, 0.05, np.asarray((foot - down) / 0.1 + 0.8 * ridge, np.float32))
    blue = float(rng.uniform(0, 1))
    ground = (0.35 - 0.25 * blue, 0.42 - 0.12 * blue, 0.5 + 0.1 * blue)
    whites.lay(inside, np.ones(size, np.float32), ground, Bright.SKY)
    puffs = fractal(rng, size, (size[0] / 3, size[1] / 2), 7, float(rng.uniform(0.45, 0.65)))
    share = inside * step_between(0.0, float(rng.uniform(0.4, 1.6)), puffs)
    level = float(rng.uniform(0.6, 1.8)) * np.exp(0.2 * puffs)
    whites.lay(np.asarray(share, np.float32), np.asarray(level, np.float32), _white(rng),
               Bright.SKY)  # fmt: skip


def lay_lamp(whites: Whites, rng: Rng) -> None:
    """A lamp or the sun: a core and a glow that falls off all round."""
    height, width = whites.size
    short = min(height, width)
    row, column = rng.uniform(0.05, 0.8) * height, rng.uniform(0.05, 0.95) * width
    radius = short * float(np.exp(rng.uniform(np.log(0.004), np.log(0.05))))
    flat = float(rng.uniform(0.6, 1.6))
    rows, columns = np.mgrid[0:height, 0:width].astype(np.float32)
    away = np.hypot((rows - row) * flat, columns - column) / radius
    colour = (1.0, float(rng.uniform(0.7, 1.0)), float(rng.uniform(0.35, 1.0)))
    power = float(rng.uniform(1.5, 3.5))
    glow = float(rng.uniform(0.3, 2.5)) / (1 + away**power) + 0.08 * np.exp(-away / 20)
    whites.light += glow[..., None] * np.asarray(colour, np.float32)
    reach = np.sqrt(np.maximum(float(rng.uniform(1.2, 8)) / (1 + away**power), 0))
    core = step_between(0.8, 1.2, np.asarray(reach, np.float32))
    level = np.full(whites.size, float(rng.uniform(2, 20)), np.float32)
    whites.lay(core, level, colour, Bright.LAMP)
    whites.shows[(away < 12) & (whites.light.max(axis=2) >= 1) & (glow > 0.15)] = Bright.LAMP


def lay_snow(whites: Whites, rng: Rng) -> None:
    """Snow on the ground, on slopes or on stones."""
    size = whites.size
    down, _ = _grid(size)
    edge = float(rng.uniform(0.3, 0.9))
    patchy = fractal(rng, size, (size[0] / 4, size[1] / 4), 8, float(rng.uniform(0.5, 0.7)))
    band = float(rng.uniform(0.1, 0.6))
    inside = np.minimum(down - edge, edge + band - down) / 0.12 + float(rng.uniform(0, 1)) * patchy
    share = step_between(0.0, float(rng.uniform(0.03, 0.3)), np.asarray(inside, np.float32))
    lumps = fractal(rng, size, (size[0] / 5, size[1] / 4), 6, float(rng.uniform(0.35, 0.6)))
    level = float(rng.uniform(0.5, 1.3)) * np.exp(float(rng.uniform(0.05, 0.3)) * lumps)
    whites.lay(share, np.asarray(level, np.float32), _white(rng, 0.05), Bright.PALE)


def lay_pale_stone(whites: Whites, rng: Rng) -> None:
    """Stone, gravel or a path in the sun, with facets and hard shadows."""
    size = whites.size
    down, across = _grid(size)
    row, column = float(rng.uniform(0.2, 1)), float(rng.uniform(0, 1))
    tall, wide = float(rng.uniform(0.06, 0.35)), float(rng.uniform(0.06, 0.5))
    rough = fractal(rng, size, (size[0] / 6, size[1] / 6), 7, 0.6)
    near = 1 - np.hypot((down - row) / tall, (across - column) / wide) + 0.2 * rough
    share = step_between(0.0, 0.06, np.asarray(near, np.float32))
    cell = float(rng.uniform(0.01, 0.15))
    facet, crack = facets(rng, size, (cell * size[0], cell * size[0] * 1.4))
    grain = fractal(rng, size, (size[0] / 60, size[1] / 60), 5, 0.8)
    level = np.exp(0.4 * facet + float(rng.uniform(0.05, 0.25)) * grain) * (1 - 0.7 * crack)
    warm = float(rng.uniform(0, 0.16))
    whites.lay(share, np.asarray(float(rng.uniform(0.5, 1.3)) * level, np.float32),
               (1 + warm, 1.0, 1 - warm), Bright.PALE)  # fmt: skip


def lay_sunlit(whites: Whites, rng: Rng) -> None:
    """Patches of sun on what is there: stones, leaves, a path in dappled light."""
    size = whites.size
    down, across = _grid(size)
    lump = float(rng.uniform(0.05, 0.4))
    dapple = fractal(rng, size, (lump * size[0], lump * size[0]), 6, float(rng.uniform(0.4, 0.7)))
    row, column = float(rng.uniform(0.1, 1)), float(rng.uniform(0, 1))
    near = 1.2 - np.hypot(down - row, across - column) / float(rng.uniform(0.2, 0.8))
    share = step_between(0.0, float(rng.uniform(0.05, 0.4)), np.asarray(dapple + near, np.float32))
    share[whites.shows == Bright.SKY] = 0
    lit = whites.light.mean(axis=2)[share > 0.5]
    if lit.size == 0:
        return
    grey = whites.light.mean(axis=2, keepdims=True)
    pale = whites.light + float(rng.uniform(0.3, 0.95)) * (grey - whites.light)
    gain = float(rng.uniform(0.7, 1.6)) / max(float(np.quantile(lit, 0.9)), 1e-3)
    whites.light += share[..., None] * (pale * np.float32(gain) - whites.light)
    whites.shows[share > 0.5] = Bright.PALE


def lay_thing(whites: Whites, rng: Rng) -> None:
    """A white thing with hard edges: a sign, a wall, a shirt."""
    height, width = whites.size
    short = min(height, width)
    mask = np.zeros(whites.size, np.uint8)
    middle = np.array([rng.uniform(0.05, 0.95) * width, rng.uniform(0.1, 0.95) * height])
    side = short * np.exp(rng.uniform(np.log(0.02), np.log(0.35), 2))
    turn = float(rng.uniform(-30, 30))
    if rng.random() < 0.5:
        corners = cv2.boxPoints(((middle[0], middle[1]), (side[0], side[1]), turn))
        cv2.fillPoly(mask, [np.round(corners * 16).astype(np.int32)], 255, cv2.LINE_AA, 4)
    else:
        ends = (round(float(middle[0])), round(float(middle[1])))
        axes = (max(1, round(side[0] / 2)), max(1, round(side[1] / 2)))
        cv2.ellipse(mask, ends, axes, turn, 0, 360, 255, -1, cv2.LINE_AA)
    share = np.asarray(cv2.GaussianBlur(mask, (0, 0), float(rng.uniform(0.5, 2.5))), np.float32)
    shade = fractal(rng, whites.size, (short / 3, short / 3), 3)
    level = float(rng.uniform(0.8, 2)) * np.exp(float(rng.uniform(0.02, 0.25)) * shade)
    whites.lay(share / np.float32(255), np.asarray(level, np.float32), _white(rng, 0.12),
               Bright.PALE)  # fmt: skip


#: What may be planted, far things first, and how likely each is in a picture.
PLANTS: Final[tuple[tuple[Callable[[Whites, Rng], None], float], ...]] = (
    (lay_sky, 0.35),
    (lay_clouds, 0.2),
    (lay_snow, 0.2),
    (lay_pale_stone, 0.25),
    (lay_sunlit, 0.3),
    (lay_fall, 0.45),
    (lay_rapids, 0.35),
    (lay_sparkle, 0.2),
    (lay_thing, 0.3),
    (lay_lamp, 0.3),
    (lay_lamp, 0.2),
)


def planted(light: Field, rng: Rng) -> Whites:
    """A picture with some bright things; `light` is dim, shape (H, W, 3)."""
    whites = Whites.over(light)
    plant(whites, rng)
    return whites


def plant(whites: Whites, rng: Rng) -> None:
    """Some bright things, over what is there."""
    for lay, chance in PLANTS:
        if rng.random() < chance:
            lay(whites, rng)
