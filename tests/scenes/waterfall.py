"""A waterfall in a gorge: composed, exposed, and known pixel by pixel."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import Enum

import cv2
import numpy as np
from numpy.typing import NDArray

from tests.scenes.camera import Exposure, Sensor, level_stops, linear, toned
from tests.scenes.falling import Shot, Tier, lay_pool, lay_spray, lay_stream, lay_tier
from tests.scenes.layers import HAZE, WATER, Layers
from tests.scenes.noise import Field, Size, fractal, step_between
from tests.scenes.plants import lay_branch, lay_leaves, lay_sky_gap, lay_wood
from tests.scenes.rock import Boulder, Wall, lay_boulder, lay_wall


class Kind(Enum):
    """What clips."""

    WHITE_WATER = "white water"
    SPARKLE = "sparkle"
    SKY_GAP = "sky gap"


@dataclass(frozen=True)
class Plan:
    """What is in the scene, and how it is taken.

    Args:
        width, height: of the frame [px].
        seed: of all that is random; `moment` moves sparkle and water but no rock.
        exposure: settings.
        light_ev100: light of the scene [EV at ISO 100].
        white_stops: level of the whitest water above the mid-tone [stops].
        sparkle_share: share of the frame's pixels that are sparkle.
        sky_gap: open sky at the top.
        stream: white water that leaves the pool towards the camera.
        branch: a bare branch that comes in from the left border.
        coverage_m: height of what the frame covers at the fall [m].
        sensor: the camera's sensor.
        filter_stops: light taken by filters [stops].
    """

    width: int = 1000
    height: int = 1500
    seed: int = 1
    moment: int = 0
    exposure: Exposure = field(default_factory=Exposure)
    light_ev100: float = 8.9
    white_stops: float = 2.2
    sparkle_share: float = 0.0002
    sky_gap: bool = False
    stream: bool = True
    branch: bool = False
    coverage_m: float = 20.0
    sensor: Sensor = field(default_factory=Sensor)
    filter_stops: float = 0.0


@dataclass(frozen=True)
class Scene:
    """Light of a scene in stops of its mid-tone; (H, W, 3) is what `radiance` gives."""

    plan: Plan
    base: Field
    white: Field
    sky: Field
    sparkle: Field
    branch: Field

    #: Level of the open sky and of a glint above the mid-tone [stops].
    SKY_STOPS = 4.0
    SPARKLE_STOPS = 5.5

    def radiance(self) -> Field:
        """Shape (H, W, 3), 1 = mid-tone."""
        white = self.white * np.float32(2**self.plan.white_stops)
        white += self.sparkle * np.float32(2**self.SPARKLE_STOPS)
        sky = self.sky * np.float32(2**self.SKY_STOPS)
        planes = [
            self.base[..., channel] + white * np.float32(part) + sky
            for channel, part in enumerate(WATER)
        ]
        return np.asarray(cv2.merge(planes), dtype=np.float32)


@dataclass(frozen=True)
class Taken:
    """A frame and the truth about it.

    Attributes:
        pixels: shape (H, W, 3), uint8, RGB.
        clipped: for each kind, shape (H, W): any channel saturated in the sensor.
        by_channel: share of the frame saturated in red, green, blue, 0 to 1.
        stops_over: how far the brightest water lies over saturation [stops]; negative: under.
        level_stops: how much brighter than metered the frame is [stops].
        plan: what was asked for.
    """

    pixels: NDArray[np.uint8]
    clipped: dict[Kind, NDArray[np.bool_]] = field(repr=False)
    by_channel: dict[str, float]
    stops_over: float
    level_stops: float
    plan: Plan

    def share(self, kind: Kind) -> float:
        """Share of the frame's pixels that clip and are of that kind, 0 to 1."""
        return float(self.clipped[kind].mean())


def compose(plan: Plan) -> Scene:
    """Lay down the whole scene; the same plan gives the same scene."""
    layers = Layers((plan.height, plan.width))
    still = np.random.default_rng(plan.seed)
    moving = np.random.default_rng((plan.seed, plan.moment))
    shot = Shot(plan.exposure.shutter_s, plan.coverage_m)
    wide = plan.width > plan.height
    _lay_far(layers, plan, still)
    _lay_fall(layers, shot, still, moving, wide=wide)
    _lay_sides(layers, still, wide=wide)
    lay_pool(layers, (0.70, 1.0), 0.53, shot, moving)
    lay_spray(layers, (0.70, 0.53), (0.055, 0.17), 0.8, moving)
    if plan.stream:
        course = [(0.80, 0.53, 0.06), (0.90, 0.45, 0.08), (1.0, 0.50, 0.15)]
        lay_stream(layers, course, shot, moving)
    for boulder in BOULDERS_WIDE if wide else BOULDERS_TALL:
        lay_boulder(layers, boulder, still)
    for start, end in TWIGS:
        lay_leaves(layers, start, end, still)
    branch = np.zeros(layers.size, np.float32)
    if plan.branch:
        branch = lay_branch(layers, (0.58, -0.01), (0.5, 0.2), 0.02, still)
    sparkle = _sparkle(layers.size, plan.sparkle_share, moving)
    return Scene(plan, layers.base, layers.white, layers.sky, sparkle, branch)


#: Leaves that hang in: from and to (down, across).
TWIGS = (
    ((0.0, 0.10), (0.16, 0.27)),
    ((-0.01, 0.02), (0.20, 0.15)),
    ((0.05, -0.02), (0.25, 0.06)),
    ((0.0, 0.96), (0.19, 0.86)),
    ((0.08, 1.02), (0.24, 0.93)),
)

#: Far to near.
BOULDERS_TALL = (
    Boulder(0.10, 0.755, 0.10, 0.030),
    Boulder(0.88, 0.765, 0.12, 0.036),
    Boulder(0.70, 0.80, 0.085, 0.028),
    Boulder(0.27, 0.83, 0.11, 0.036),
    Boulder(0.86, 0.875, 0.16, 0.060),
    Boulder(0.08, 0.91, 0.20, 0.075),
    Boulder(0.66, 0.945, 0.10, 0.042),
    Boulder(0.30, 0.985, 0.13, 0.052),
    Boulder(0.93, 1.02, 0.22, 0.085),
)
BOULDERS_WIDE = (
    Boulder(0.14, 0.76, 0.07, 0.045),
    Boulder(0.82, 0.77, 0.08, 0.05),
    Boulder(0.68, 0.81, 0.055, 0.04),
    Boulder(0.32, 0.84, 0.07, 0.05),
    Boulder(0.80, 0.90, 0.11, 0.085),
    Boulder(0.14, 0.93, 0.14, 0.10),
    Boulder(0.64, 0.97, 0.06, 0.05),
    Boulder(0.33, 1.0, 0.07, 0.06),
    Boulder(0.97, 1.0, 0.13, 0.11),
)


def _lay_far(layers: Layers, plan: Plan, rng: np.random.Generator) -> None:
    lay_wood(layers, (0.0, 0.16), rng)
    if plan.sky_gap:
        lay_sky_gap(layers, 0.5, 0.22, 0.09, rng)
    back = [(0.0, 1.2), (1.0, 1.2)]
    sill = Layers(layers.size)
    lay_wall(sill, Wall(True, back, 0.2, 0.8, 0.5), rng)
    rows = np.arange(plan.height, dtype=np.float32)[:, None]
    edge = 0.118 + 0.012 * fractal(rng, (2, plan.width), (2, plan.width / 6), 7, 0.65)[:1]
    share = step_between(-1.5, 1.5, np.asarray(rows - edge * plan.height, np.float32))
    layers.base += share[..., None] * (sill.base - layers.base)
    layers.sky *= 1 - share


def _lay_fall(
    layers: Layers,
    shot: Shot,
    still: np.random.Generator,
    moving: np.random.Generator,
    *,
    wide: bool,
) -> None:
    """Two drops with a ledge between them, side threads, and their spray."""
    slim = 0.62 if wide else 1.0
    tiers = (
        Tier(0.115, 0.395, (0.555, 0.535), (0.045 * slim, 0.075 * slim), 1.25, 0.74),
        Tier(0.21, 0.40, (0.475, 0.465), (0.006, 0.014 * slim), 0.7, 0.7),
        Tier(0.385, 0.70, (0.53, 0.525), (0.105 * slim, 0.135 * slim), 1.0),
        Tier(0.40, 0.69, (0.665, 0.68), (0.012, 0.024 * slim), 0.75, 0.7),
    )
    for tier in tiers:
        lay_tier(layers, tier, shot, still, moving)
    lay_spray(layers, (0.41, 0.53), (0.035, 0.10), 0.55, moving)
    lay_spray(layers, (0.66, 0.53), (0.16, 0.26), 0.16, moving)


def _lay_sides(layers: Layers, rng: np.random.Generator, *, wide: bool) -> None:
    """The gorge's walls from far to near, the nearer the darker."""
    far_l, far_r = (0.36, 0.70) if wide else (0.27, 0.80)
    walls = (
        Wall(False, [(0, far_r + 0.02), (0.5, far_r + 0.03), (0.75, far_r - 0.02), (1, 0.7)],
             0.16, 0.74, 0.6),
        Wall(True, [(0, far_l - 0.05), (0.45, far_l), (0.72, far_l + 0.04), (1, 0.4)],
             0.2, 0.62, 0.6),
        Wall(False, [(0, far_r + 0.1), (0.4, far_r + 0.09), (0.7, far_r + 0.1), (1, 0.8)],
             0.3, 0.50, 0.6),
        Wall(True, [(0, far_l - 0.11), (0.35, far_l - 0.14), (0.7, far_l - 0.09), (1, 0.2)],
             0.34, 0.40, 0.6),
    )  # fmt: skip
    for index, wall in enumerate(walls):
        lay_wall(layers, wall, rng)
        if index == 1:
            # Air with fine drops between the far walls and the near ones.
            layers.cover(np.full(layers.size, 0.05, np.float32),
                         np.ones(layers.size, np.float32), HAZE)  # fmt: skip


def _sparkle(size: Size, share: float, rng: np.random.Generator) -> Field:
    """Glints of one to a few pixels on the wet stones and the pool; 1 in a glint."""
    height, width = size
    glints = np.zeros(size, np.float32)
    left = round(share * height * width)
    while left > 0:
        down = int(rng.normal(0.79, 0.07) * height)
        across = int(rng.normal(0.52, 0.22) * width)
        high, long = int(rng.integers(1, 3)), int(rng.integers(1, 5))
        if 0 <= down < height - 3 and 0 <= across < width - 5:
            glint = glints[down : down + high, across : across + long]
            left -= int(np.count_nonzero(glint == 0))
            glint[:] = 1
    return glints


def take(scene: Scene) -> Taken:
    """Expose the scene as its plan says."""
    plan = scene.plan
    values = linear(
        scene.radiance(),
        plan.exposure,
        plan.light_ev100,
        plan.sensor,
        rng=np.random.default_rng((plan.seed, plan.moment, 9)),
        filter_stops=plan.filter_stops,
    )
    over = values >= 1
    anywhere = np.asarray(over.any(axis=2), dtype=np.bool_)
    sparkle, sky = scene.sparkle > 0, scene.sky > 0.5
    clipped = {
        Kind.SPARKLE: anywhere & sparkle,
        Kind.SKY_GAP: anywhere & sky & ~sparkle,
        Kind.WHITE_WATER: anywhere & ~sky & ~sparkle,
    }
    shares = over.mean(axis=(0, 1))
    level = level_stops(plan.exposure, plan.light_ev100, plan.filter_stops)
    return Taken(
        pixels=toned(values),
        clipped=clipped,
        by_channel=dict(zip(("red", "green", "blue"), map(float, shares), strict=True)),
        stops_over=plan.white_stops + level - plan.sensor.saturation_stops,
        level_stops=level,
        plan=plan,
    )


def with_clipped_share(scene: Scene, share: float) -> Scene:
    """The same scene with its water at the level at which `share` of the frame clips.

    Noise lifts some pixels over and drops others; the share comes out within a tenth of it.
    """
    plan = scene.plan
    stops = plan.sensor.saturation_stops - level_stops(
        plan.exposure, plan.light_ev100, plan.filter_stops
    )
    gains = np.asarray(plan.sensor.balance, np.float32)
    room = np.float32(2.0**stops) / gains - scene.base
    needed = np.min(room / np.asarray(WATER, np.float32), axis=2)
    water = (scene.white > 0.05) & (scene.sky < 0.5) & (scene.sparkle == 0)
    factors = np.sort(needed[water] / scene.white[water])
    place = min(len(factors) - 1, round(share * scene.white.size))
    return replace(scene, plan=replace(plan, white_stops=float(np.log2(factors[place]))))
