"""Patches of water with streaks of a known length: rendered, or made of real pictures."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.camera import toned
from tests.scenes.flow import moved
from tests.scenes.noise import Field, Size, fractal

Pixels = NDArray[np.uint8]

#: Furthest that water goes astray sideways, standard deviation [px].
_MOST_ASTRAY_PX = 12.0


@dataclass(frozen=True)
class Lens:
    """What happens between the scene and the file.

    Args:
        blur_px: lens blur, standard deviation [px].
        level: light of the whitest water, 1 is where the file clips.
        full_well: electrons at 1; sets the shot noise.
        gamma: bends the tones beside the sRGB curve, 1 = not at all.
        quality: of the JPEG; None for none.
    """

    blur_px: float = 0.6
    level: float = 0.9
    full_well: float = 20_000.0
    gamma: float = 1.0
    quality: int | None = 92

    @staticmethod
    def drawn(rng: np.random.Generator) -> Lens:
        """A lens and a file as they come."""
        return Lens(
            blur_px=float(rng.uniform(0.3, 1.1)),
            level=float(rng.uniform(0.35, 1.1)),
            full_well=float(np.exp(rng.uniform(np.log(1500), np.log(40_000)))),
            gamma=float(rng.uniform(0.85, 1.2)),
            quality=int(rng.integers(78, 98)) if rng.random() < 0.7 else None,
        )

    def file_of(self, light: Field, rng: np.random.Generator) -> Pixels:
        """The file's pixels (h, w, 3) for linear light (h, w) or (h, w, 3), 1 = white water."""
        colours = light if light.ndim == 3 else cv2.merge([light, light, light])
        seen = cv2.GaussianBlur(colours, (0, 0), self.blur_px) * np.float32(self.level)
        spread = np.sqrt(np.maximum(seen, 0) * self.full_well + 9) / self.full_well
        seen = seen + spread.astype(np.float32) * rng.standard_normal(seen.shape, np.float32)
        bent = np.clip(seen, 0, 1) ** np.float32(self.gamma)
        pixels = toned(np.asarray(bent, np.float32))
        if self.quality is None:
            return pixels
        _, data = cv2.imencode(".jpg", pixels, [cv2.IMWRITE_JPEG_QUALITY, self.quality])
        return np.asarray(cv2.imdecode(data, cv2.IMREAD_COLOR), np.uint8)


@dataclass(frozen=True)
class Streaks:
    """A patch of water to render.

    Args:
        size: of the patch (h, w) [px].
        length_px: way of the water while the shutter is open, in the middle of the patch [px].
        axis_deg: of the flow, anticlockwise from the horizontal.
        fall: it gains speed along its way, from 0.75 to 1.25 of the middle's.
        elongation: length over width of the strands at a moment.
        width_px: width of the largest strands [px].
        layers: that move each at its own speed and a little across each other.
        standing: how much of the pattern stays where it is, 0 to 1.
        contrast: of the pattern, standard deviation of its logarithm.
        bed: how much of the bed shines through, 0 to 1.
        mist: white laid over all, 0 to 1.
        bend: how far the lines of flow swing sideways, over their length.
        swirl: how far the water also goes astray sideways, over its way.
        half_width: of the water, over the patch's short side; beyond is rock.
    """

    size: Size
    length_px: float
    axis_deg: float = 90.0
    fall: bool = True
    elongation: float = 3.0
    width_px: float = 20.0
    layers: int = 2
    standing: float = 0.3
    contrast: float = 0.7
    bed: float = 0.3
    mist: float = 0.1
    bend: float = 0.05
    swirl: float = 0.0
    half_width: float = 0.45

    @staticmethod
    def drawn(rng: np.random.Generator, size: Size, length_px: float) -> Streaks:
        """Water as it comes: a fall, or a stream that runs anywhere."""
        fall = bool(rng.random() < 0.55)
        axis = rng.normal(90, 12) if fall else rng.uniform(0, 180)
        stretch = rng.uniform(0, math.log(7)) if fall else rng.uniform(math.log(0.5), math.log(3))
        return Streaks(
            size=size,
            length_px=length_px,
            axis_deg=float(axis % 180),
            fall=fall,
            elongation=float(math.exp(stretch)),
            width_px=float(np.exp(rng.uniform(math.log(8), math.log(70)))),
            layers=int(rng.integers(1, 4)),
            standing=float(rng.uniform(0, 0.55)),
            contrast=float(rng.uniform(0.3, 1.1)),
            bed=float(rng.uniform(0, 0.6)),
            mist=float(rng.uniform(0, 0.5) ** 1.5),
            bend=float(rng.uniform(0, 0.12)),
            swirl=float(rng.uniform(0, 0.06)) if rng.random() < 0.5 else 0.0,
            half_width=float(rng.uniform(0.35, 0.8)),
        )


def rendered(plan: Streaks, rng: np.random.Generator) -> tuple[Field, Field]:
    """Linear light of the patch, 1 = white water, and how much of each pixel is water."""
    height, width = plan.size
    along, across = _places(plan, rng)
    reach = math.hypot(height, width)
    rows, columns = int(1.3 * reach), int(1.15 * reach)
    light, cover = np.zeros(plan.size, np.float32), np.ones(plan.size, np.float32)
    cell = (plan.elongation * plan.width_px, plan.width_px)
    still = fractal(rng, (rows, columns), (rows, 2.5 * plan.width_px), 3, 0.7)
    for layer in range(plan.layers):
        pace = 1 + 0.18 * (2 * layer / max(plan.layers - 1, 1) - 1) * (plan.layers > 1)
        aside = np.float32(math.tan(math.radians(rng.normal(0, 4)))) if layer else np.float32(0)
        moving = fractal(rng, (rows, columns), cell, 5, float(rng.uniform(0.65, 0.9)))
        mixed = plan.standing * still + (1 - plan.standing) * moving
        mixed /= max(float(mixed.std()), 1e-6)
        moment = np.exp(np.float32(plan.contrast) * mixed - np.float32(0.5 * plan.contrast))
        thick = moved(np.asarray(1 - np.exp(-1.2 * moment), np.float32), plan.length_px * pace)
        if plan.swirl * plan.length_px > 0.3:
            astray = min(plan.swirl * plan.length_px, _MOST_ASTRAY_PX)
            thick = np.asarray(cv2.GaussianBlur(thick, (0, 0), astray, sigmaY=0.01), np.float32)
        where = across + aside * along + np.float32(columns / 2)
        share = cv2.remap(
            thick, where, along + np.float32(rows / 2), cv2.INTER_CUBIC,
            borderMode=cv2.BORDER_REFLECT,
        )  # fmt: skip
        share = np.clip(share, 0, 1)
        tone = np.float32(0.55 + 0.45 * (layer + 1) / plan.layers)
        light += cover * share * share * tone
        cover *= 1 - share
    rock = _rock(plan.size, rng)
    light += cover * np.float32(plan.bed) * rock
    light += np.float32(plan.mist) * (np.float32(0.75) - light)
    return _banked(plan, light, rock, across, rng)


def _places(plan: Streaks, rng: np.random.Generator) -> tuple[Field, Field]:
    """Places along the flow, in px of the middle's pace, and across it, from the middle [px]."""
    height, width = plan.size
    down, right = np.indices(plan.size, dtype=np.float32)
    down -= np.float32(height / 2)
    right -= np.float32(width / 2)
    turn = math.radians(plan.axis_deg)
    # Down the picture where the axis is upright: y counts downwards.
    along = down * np.float32(math.sin(turn)) - right * np.float32(math.cos(turn))
    across = right * np.float32(math.sin(turn)) + down * np.float32(math.cos(turn))
    reach = math.hypot(height, width)
    phase = rng.uniform(0, 2 * math.pi)
    swing = plan.bend * reach / math.pi
    across = across + np.float32(swing) * np.sin(along * np.float32(math.pi / reach) + phase)
    if plan.fall:
        # The pace goes from 0.75 to 1.25: time since the middle is the logarithm of the pace.
        slope = np.float32(0.5 / reach)
        along = np.log(np.maximum(1 + slope * along, 0.2)) / slope
    return np.asarray(along, np.float32), np.asarray(across, np.float32)


def _rock(size: Size, rng: np.random.Generator) -> Field:
    """Wet rock, fine and sharp, 2 to 12 % of the water's light."""
    grain = fractal(rng, size, (size[0] / 5, size[1] / 5), 8, 0.8)
    level = np.float32(np.exp(rng.uniform(math.log(0.02), math.log(0.12))))
    return np.asarray(level * np.exp(0.55 * grain), np.float32)


def _banked(
    plan: Streaks, light: Field, rock: Field, across: Field, rng: np.random.Generator
) -> tuple[Field, Field]:
    half = plan.half_width * min(plan.size)
    ragged = 0.12 * half * fractal(rng, plan.size, (plan.size[0] / 4, plan.size[1] / 8), 5, 0.7)
    share = np.clip((half - np.abs(across) + ragged) / np.float32(0.06 * half), 0, 1)
    return np.asarray(share * light + (1 - share) * rock, np.float32), np.asarray(share, np.float32)


def shifted(light: Field, length_px: float, axis_deg: float) -> Field:
    """A real picture's light averaged along an axis, and what of it is whole.

    Args:
        light: linear, shape (h, w, 3).
        length_px: of the box [px].
        axis_deg: anticlockwise from the horizontal.

    Returns:
        The upright square inside that no border reaches, turned back, shape (s, s, 3).
    """
    height, width = light.shape[:2]
    # With the axis turned upright, the box runs down the columns.
    turn = cv2.getRotationMatrix2D(((width - 1) / 2, (height - 1) / 2), 90 - axis_deg, 1.0)
    upright = cv2.warpAffine(light, turn, (width, height), flags=cv2.INTER_CUBIC,
                             borderMode=cv2.BORDER_REFLECT)  # fmt: skip
    planes = [moved(np.ascontiguousarray(plane), length_px) for plane in cv2.split(upright)]
    back = cv2.warpAffine(
        cv2.merge(planes), turn, (width, height), borderMode=cv2.BORDER_REFLECT,
        flags=cv2.INTER_CUBIC | cv2.WARP_INVERSE_MAP,
    )  # fmt: skip
    return np.asarray(np.maximum(back, 0), np.float32)


def at_length(plan: Streaks, length_px: float) -> Streaks:
    """The same water, longer or shorter exposed."""
    return replace(plan, length_px=length_px)
