"""Photographs whose bright parts were told apart by eye, and pictures made of them."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Final

import cv2
import numpy as np

from tests.scenes.camera import codes_of, light_of_codes
from tests.scenes.noise import Field, fractal, step_between
from tests.scenes.whites import Bright, Whites
from tests.training.pictures import light_of

Rng = np.random.Generator

#: A part of a photograph: what is bright there, and left, top, right, bottom in shares.
Part = tuple[Bright, float, float, float, float]

_NOTHING, _WATER, _SKY, _LAMP, _PALE = (
    Bright.NOTHING, Bright.WATER, Bright.SKY, Bright.LAMP, Bright.PALE,
)  # fmt: skip
_ALL_PALE: Final = ((_PALE, 0, 0, 1, 1),)

#: Photographs of the Debian packages tuxpaint-data 0.9.28, palapeli-data 22.12, opencv-doc 4.6.0,
#: mate-backgrounds 1.26.0, lomiri-wallpapers 20.04.0 (both years) and plasma-workspace-wallpapers
#: 5.27.5 (the largest size), copied into one folder, and of scikit-image and scikit-learn. The
#: first part that holds a pixel tells what it shows; none of them is a picture of the figures.
SEEN: Final[dict[str, tuple[Part, ...]]] = {
    "ocean_splash.jpg": ((_WATER, 0, 0, 1, 1),),
    "ocean_waves.jpg": ((_WATER, 0, 0.1, 1, 1),),
    "redwoods_above.jpg": ((_SKY, 0, 0, 1, 0.6), (_PALE, 0, 0.6, 1, 1)),
    "trees_above.jpg": ((_PALE, 0.55, 0.7, 0.95, 1), (_SKY, 0, 0, 1, 1)),
    "sun_behind_clouds.jpg": ((_SKY, 0, 0, 1, 1),),
    "sun_behind_leaves.jpg": _ALL_PALE,
    "trees_at_dusk.jpg": ((_SKY, 0, 0, 1, 1),),
    "sheep.jpg": ((_SKY, 0, 0, 1, 0.36), (_PALE, 0, 0.36, 1, 1)),
    "spiders_web.jpg": ((_PALE, 0, 0.5, 1, 1),),
    "mossy_log.jpg": _ALL_PALE,
    "mudstone.jpg": _ALL_PALE,
    "rocks.jpg": _ALL_PALE,
    "cliff.jpg": (
        (_SKY, 0, 0, 1, 0.12), (_SKY, 0, 0, 0.25, 0.3), (_SKY, 0, 0, 0.12, 0.5),
        (_SKY, 0.75, 0, 1, 0.3), (_SKY, 0.95, 0, 1, 0.42), (_PALE, 0, 0, 1, 1),
    ),
    "lighthouse.jpg": (
        (_SKY, 0, 0, 0.13, 0.6), (_SKY, 0, 0.6, 0.22, 1), (_SKY, 0.9, 0, 1, 0.6),
        (_SKY, 0.82, 0.6, 1, 1), (_SKY, 0, 0, 1, 0.08), (_SKY, 0.13, 0.08, 0.36, 0.32),
        (_SKY, 0.64, 0.08, 0.9, 0.32), (_PALE, 0, 0, 1, 1),
    ),
    "castle-maintenon.jpg": (
        (_PALE, 0.08, 0.12, 0.33, 1), (_PALE, 0.68, 0.25, 0.84, 1), (_PALE, 0, 0.42, 1, 1),
        (_SKY, 0, 0, 1, 0.42),
    ),
    "cincinnati-bridge.jpg": (
        (_PALE, 0, 0.68, 1, 1), (_PALE, 0.25, 0.08, 0.5, 0.65), (_LAMP, 0, 0, 1, 0.66),
    ),
    "citrus-fruits.jpg": _ALL_PALE,
    "european-honey-bee.jpg": _ALL_PALE,
    "building.jpg": ((_SKY, 0, 0, 0.36, 0.5), (_PALE, 0, 0, 1, 1)),
    "home.jpg": (
        (_SKY, 0, 0, 0.2, 0.75), (_SKY, 0, 0, 0.45, 0.55), (_SKY, 0, 0, 0.62, 0.3),
        (_PALE, 0.2, 0.1, 1, 1),
    ),
    "leuvenA.jpg": ((_SKY, 0, 0, 1, 0.48), (_PALE, 0, 0.5, 1, 1)),
    "fruits.jpg": _ALL_PALE,
    "butterfly.jpg": _ALL_PALE,
    "Bridge_by_Sander_Klootwijk.jpg": ((_SKY, 0, 0, 1, 0.68), (_PALE, 0, 0.7, 1, 1)),
    "Kleiber_by_Lukas_Baubkus.jpg": _ALL_PALE,
    "aitzgorri_by_Aitzol_Berasategi.jpg": ((_SKY, 0, 0, 1, 0.25), (_PALE, 0, 0.3, 1, 1)),
    "free_by_Peter_Nerlich.jpg": ((_LAMP, 0, 0, 1, 0.48), (_PALE, 0, 0.5, 1, 1)),
    "friends_by_Aitzol_Berasategi.jpg": _ALL_PALE,
    "picosdeeuropa_by_Aitzol_Berasategi.jpg": (
        (_SKY, 0, 0, 0.45, 0.45), (_SKY, 0, 0, 1, 0.1), (_PALE, 0, 0.2, 1, 1),
    ),
    "seeding_by_Clements_Engelhardt.jpg": ((_PALE, 0, 0.3, 1, 1),),
    "Dune.jpg": ((_SKY, 0, 0, 1, 0.3), (_PALE, 0, 0.35, 1, 1)),
    "Storm.jpg": ((_SKY, 0, 0, 1, 0.6), (_PALE, 0, 0.68, 1, 1)),
    "greentock_by_Peter_Nerlich.jpg": _ALL_PALE,
    "BytheWater.jpg": ((_SKY, 0, 0, 1, 0.25), (_PALE, 0, 0.45, 1, 1)),
    "DarkestHour.jpg": ((_SKY, 0, 0, 1, 0.45),),
    "EveningGlow.jpg": ((_SKY, 0, 0, 1, 0.35), (_PALE, 0, 0.52, 1, 1)),
    "Grey.jpg": _ALL_PALE,
    "Kite.jpg": ((_SKY, 0, 0, 1, 1),),
    "Path.jpg": ((_SKY, 0, 0, 1, 0.42), (_PALE, 0, 0.5, 1, 1)),
    "summer_1am.jpg": ((_SKY, 0, 0, 1, 0.5),),
    "OneStandsOut.jpg": _ALL_PALE,
    "FallenLeaf.jpg": _ALL_PALE,
    "Garden.jpg": _ALL_PALE,
    "YellowFlower.jpg": _ALL_PALE,
    "LadyBird.jpg": _ALL_PALE,
    "RainDrops.jpg": _ALL_PALE,
    "TwoWings.jpg": _ALL_PALE,
    "astronaut.png": _ALL_PALE,
    "coffee.png": _ALL_PALE,
    "chelsea.png": _ALL_PALE,
    "motorcycle_left.png": _ALL_PALE,
    "flower.jpg": _ALL_PALE,
}  # fmt: skip
#: More of them, also of enlightenment-data 0.25.4 (.edj, the first of its sizes); only pushed.
SEEN_TOO: Final[dict[str, tuple[Part, ...]]] = {
    "ColdRipple.jpg": ((_SKY, 0, 0, 1, 0.42), (_PALE, 0, 0.54, 1, 1)),
    "Dragonfly_by_Bolly.jpg": ((_SKY, 0, 0, 0.3, 0.45),),
    "God-Rays.edj": ((_SKY, 0, 0, 1, 1),),
    "Mountain.edj": ((_SKY, 0, 0, 1, 0.42), (_PALE, 0, 0.6, 1, 1)),
    "Peaks.edj": ((_SKY, 0, 0, 1, 0.48), (_PALE, 0, 0.65, 1, 1)),
    "Snow-Trees.edj": _ALL_PALE,
    "Sunset-Clouds.edj": ((_SKY, 0, 0, 1, 1),),
    "Sunset-Hills.edj": ((_SKY, 0, 0, 1, 0.34),),
    "White-Flower.edj": _ALL_PALE,
    "Yellow-Flower.edj": _ALL_PALE,
    "Sea-of-Lanterns.edj": _ALL_PALE,
    "Wine_by_Jakkub_Mede.jpg": ((_PALE, 0, 0.3, 1, 1),),
    "Wood.jpg": _ALL_PALE,
    "aloeL.jpg": _ALL_PALE,
    "burnt_bark.jpg": _ALL_PALE,
    "scenetext02.jpg": _ALL_PALE,
    "scenetext03.jpg": ((_PALE, 0, 0, 0.8, 0.8),),
    "scenetext04.jpg": ((_PALE, 0, 0, 0.34, 1), (_SKY, 0.34, 0, 1, 0.3), (_PALE, 0, 0.4, 1, 1)),
}
#: Those that come with packages of Python.
PACKAGED: Final = frozenset(
    {"astronaut.png", "coffee.png", "chelsea.png", "motorcycle_left.png", "flower.jpg"}
)
#: Those with the foam of real water, and from which row on it is foam.
_FOAM: Final = (("ocean_splash.jpg", 0.0), ("ocean_waves.jpg", 0.55))
#: Photographs of the folder before which things are planted.
BACKDROPS: Final = tuple(
    name for name in SEEN
    if name not in PACKAGED
    and not any(what in {_WATER, _LAMP} for what, *_ in SEEN[name])
)  # fmt: skip

#: How a JPEG begins. Source: ITU-T T.81, B.1.1.
_JPEG: Final = b"\xff\xd8\xff"
#: Long side at which photographs are read [px].
_LONG_PX: Final = 1800
#: Most that a photograph is pushed [stops].
_MOST_PUSH: Final = 2.2


@lru_cache(maxsize=8)
def photograph(name: str, folder: Path | None) -> Field:
    """Linear light of a photograph, the sRGB curve assumed, shape (h, w, 3), 0 to 1.

    Args:
        name: one of `SEEN` or `SEEN_TOO`.
        folder: of the photographs that come with no package of Python.
    """
    if name in PACKAGED:
        return light_of(name)
    data = ((folder or Path()) / name).read_bytes()
    codes = codes_of(data[data.index(_JPEG) :])
    scale = min(1.0, _LONG_PX / max(codes.shape))
    return light_of_codes(cv2.resize(codes, None, fx=scale, fy=scale, interpolation=cv2.INTER_AREA))


def pushed(name: str, rng: Rng, folder: Path | None) -> Whites:
    """A piece of a photograph, pushed until some of it clips, and what it shows."""
    light = photograph(name, folder)
    shows = _shown(name, (light.shape[0], light.shape[1]))
    rows, columns = (_stretch(side, rng) for side in light.shape[:2])
    light, shows = light[rows, columns], shows[rows, columns]
    if rng.random() < 0.5:
        light, shows = light[:, ::-1], shows[:, ::-1]
    scale = float(rng.uniform(850, 1500)) / max(light.shape)
    size = (round(light.shape[1] * scale), round(light.shape[0] * scale))
    way = cv2.INTER_AREA if scale < 1 else cv2.INTER_CUBIC
    large = cv2.resize(np.ascontiguousarray(light), size, interpolation=way)
    share = float(np.exp(rng.uniform(np.log(5e-4), np.log(0.25))))
    top = float(np.quantile(large.max(axis=2), 1 - share))
    gain = min(max(1 / max(top, 1e-3), 1.0), 2**_MOST_PUSH)
    labels = cv2.resize(np.ascontiguousarray(shows), size, interpolation=cv2.INTER_NEAREST)
    lit = np.asarray(np.maximum(large, 0) * np.float32(gain), np.float32)
    return Whites(lit, np.asarray(labels, np.uint8))


def _shown(name: str, size: tuple[int, int]) -> np.ndarray[tuple[int, int], np.dtype[np.uint8]]:
    shows = np.zeros(size, np.uint8)
    for what, left, top, right, bottom in reversed((SEEN | SEEN_TOO)[name]):
        rows = slice(round(top * size[0]), round(bottom * size[0]))
        shows[rows, round(left * size[1]) : round(right * size[1])] = what
    return shows


def _stretch(side: int, rng: Rng) -> slice:
    """Three fifths of a side or more."""
    length = int(rng.uniform(0.6, 1) * side)
    first = int(rng.integers(side - length + 1))
    return slice(first, first + length)


def lay_foam(whites: Whites, rng: Rng, folder: Path | None) -> None:
    """The foam of real water, as a ragged fall or sheet."""
    height, width = whites.size
    name, first = _FOAM[int(rng.integers(len(_FOAM)))]
    light = photograph(name, folder)
    light = light[round(first * light.shape[0]) :]
    falls = bool(rng.random() < 0.5)
    if falls and rng.random() < 0.7:
        light = np.rot90(light)
    rows, columns = (_stretch(side, rng) for side in light.shape[:2])
    piece = np.ascontiguousarray(light[rows, columns])
    large = np.maximum(cv2.resize(piece, (width, height), interpolation=cv2.INTER_CUBIC), 0)
    down = np.linspace(0, 1, height, dtype=np.float32)[:, None]
    across = np.linspace(0, 1, width, dtype=np.float32)[None, :]
    tall, wide = (rng.uniform(0.15, 0.45), rng.uniform(0.03, 0.2)) if falls else (
        rng.uniform(0.05, 0.3), rng.uniform(0.15, 0.6))  # fmt: skip
    row, column = rng.uniform(0.2, 0.95), rng.uniform(0.1, 0.9)
    ragged = fractal(rng, (height, width), (height / 8, width / 12), 6, 0.7)
    near = 1 - np.maximum(np.abs(down - row) / tall, np.abs(across - column) / wide)
    share = step_between(0.0, 0.3, np.asarray(near + 0.35 * ragged - 0.1, np.float32))
    inside = large.max(axis=2)[share > 0.5]
    if inside.size == 0:
        return
    top = max(float(np.quantile(inside, float(rng.uniform(0.4, 0.97)))), 1e-3)
    covered = share[..., None]
    whites.light += covered * (large / np.float32(top) - whites.light)
    whites.shows[share > 0.5] = Bright.WATER
