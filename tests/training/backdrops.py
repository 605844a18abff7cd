"""Light of pictures at whose borders things are planted: pieces of photographs, gorges, noise."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Final

import cv2
import numpy as np

from tests.scenes.camera import codes_of, light_of_codes
from tests.scenes.noise import Field, fractal
from tests.scenes.waterfall import Plan, compose
from tests.scenes.whites import Whites, lay_fall, lay_rapids, lay_snow
from tests.training.pictures import light_of

#: Photographs to train on, of the Debian packages mate-backgrounds 1.26.0, lomiri-wallpapers
#: 20.04.0, plasma-workspace-wallpapers 5.27.5 (the largest size, of those added 2560x1600) and
#: enlightenment-data 0.25.4 (.edj), copied into one folder; the last ones also of tuxpaint-data
#: 0.9.28, palapeli-data 22.12 and opencv-doc 4.6.0.
FIRST: Final = (
    "Dragonfly_by_Bolly.jpg", "aitzgorri_by_Aitzol_Berasategi.jpg",
    "picosdeeuropa_by_Aitzol_Berasategi.jpg", "seeding_by_Clements_Engelhardt.jpg", "Dune.jpg",
    "Blinds.jpg", "GreenMeadow.jpg", "RainDrops.jpg", "LadyBird.jpg", "Storm.jpg", "TwoWings.jpg",
    "YellowFlower.jpg", "BytheWater.jpg", "EveningGlow.jpg", "FallenLeaf.jpg",
    "OneStandsOut.jpg", "summer_1am.jpg", "Volna.jpg",
)  # fmt: skip
ADDED: Final = (
    "Aqua.jpg", "Garden.jpg", "Wood.jpg", "ColdRipple.jpg", "DarkestHour.jpg", "Kite.jpg",
    "Foggy-Trees.edj", "God-Rays.edj", "Green-Maple.edj", "Lichen-Branches.edj", "Mountain.edj",
    "Sea-of-Lanterns.edj", "Snow-Trees.edj", "Sunset-Clouds.edj", "Sunset-Hills.edj",
    "White-Flower.edj", "Yellow-Flower.edj",
)  # fmt: skip
LAST: Final = (
    "Bridge_by_Sander_Klootwijk.jpg", "Grey.jpg", "Kleiber_by_Lukas_Baubkus.jpg", "Path.jpg",
    "Wine_by_Jakkub_Mede.jpg", "aloeL.jpg", "burnt_bark.jpg", "castle-maintenon.jpg",
    "cincinnati-bridge.jpg", "citrus-fruits.jpg", "cliff.jpg", "corn_maze.jpg",
    "european-honey-bee.jpg", "free_by_Peter_Nerlich.jpg", "friends_by_Aitzol_Berasategi.jpg",
    "greentock_by_Peter_Nerlich.jpg", "jellyfish.jpg", "lighthouse.jpg", "mossy_log.jpg",
    "mudstone.jpg", "ocean_splash.jpg", "ocean_waves.jpg", "panther-chameleon-female.jpg",
    "redwoods_above.jpg", "rocks.jpg", "scenetext02.jpg", "scenetext03.jpg", "scenetext04.jpg",
    "sheep.jpg", "spiders_web.jpg", "sun_behind_clouds.jpg", "sun_behind_leaves.jpg",
)  # fmt: skip
PHOTOGRAPHS: Final = (*FIRST, *ADDED, *LAST)
#: Rendered gorges; those unseen are only for the figures.
GORGES: Final = {
    "gorge": range(6), "other gorge": range(6, 30), "unseen gorge": range(30, 36),
    "third gorge": range(36, 136),
}  # fmt: skip
#: How often some white that belongs there is laid first.
_WHITE: Final = 0.4
#: Long side at which photographs are read [px].
_LONG_PX: Final = 1800
#: How a JPEG begins. Source: ITU-T T.81, B.1.1.
_JPEG: Final = b"\xff\xd8\xff"

Rng = np.random.Generator


def backdrop(source: str, rng: Rng, folder: Path | None = None, least: float = 0.8) -> Field:
    """Light of a picture, of a rendered gorge or of noise before anything is planted.

    Args:
        source: a name of `PHOTOGRAPHS`, a packaged picture's, one of `GORGES`, or "noise".
        rng: draws the piece and its brightness.
        folder: of the `PHOTOGRAPHS`.
        least: the smallest piece of one, over the whole.
    """
    long = int(rng.integers(1000, 1300))
    short = round(long * float(rng.choice([2 / 3, 3 / 4, 9 / 16])))
    height, width = (short, long) if rng.random() < 0.65 else (long, short)
    if source in GORGES:
        number = GORGES[source][int(rng.integers(len(GORGES[source])))]
        light = _piece(_gorge(number), rng, height, width, least=0.8)
    elif source == "noise":
        lumps = fractal(rng, (height, width), (height / 4, width / 4), 8, 0.7)
        light = np.exp(0.7 * lumps)[..., None] * rng.uniform(0.4, 1, 3).astype(np.float32) * 0.15
    elif source in PHOTOGRAPHS:
        light = _piece(_photograph(str(folder), source), rng, height, width, least)
    else:
        light = _piece(light_of(source), rng, height, width, least=0.5)
    top = max(float(np.percentile(light, 99.5)), 1e-3)
    level = float(np.exp(rng.uniform(np.log(0.08), np.log(0.95))))
    lit = np.asarray(np.clip(light * (level / top), 0, 1), np.float32)
    return _with_white(lit, rng) if rng.random() < _WHITE else lit


def _with_white(light: Field, rng: Rng) -> Field:
    """White water or snow, which belong where they are."""
    whites = Whites.over(light)
    lay = (lay_fall, lay_rapids, lay_rapids, lay_snow)[int(rng.integers(4))]
    lay(whites, rng)
    return whites.light


@lru_cache(maxsize=24)
def _gorge(number: int) -> Field:
    """A rendered fall, without what could be taken for something planted at its top."""
    wide = number % 2 == 0
    width, height = (1200, 800) if wide else (800, 1200)
    scene = compose(Plan(width, height, seed=number, stream=number % 3 == 0))
    light = np.ascontiguousarray(scene.radiance()[round(0.35 * height) :]) * np.float32(0.18)
    light.flags.writeable = False
    return light


@lru_cache(maxsize=len(PHOTOGRAPHS))
def _photograph(folder: str, name: str) -> Field:
    """Linear light of a photograph at the size of a working copy, the sRGB curve assumed."""
    data = (Path(folder) / name).read_bytes()
    codes = codes_of(data[data.index(_JPEG) :])  # .edj: the first of its sizes
    scale = _LONG_PX / max(codes.shape)
    size = (round(codes.shape[1] * scale), round(codes.shape[0] * scale))
    return light_of_codes(cv2.resize(codes, size, interpolation=cv2.INTER_AREA))


def _piece(light: Field, rng: Rng, height: int, width: int, least: float) -> Field:
    """A piece of a picture, turned or mirrored, at another size, with grain of its own."""
    light = np.rot90(light, int(rng.integers(4))) if rng.random() < 0.3 else light
    scale = float(rng.uniform(least, 1)) * min(light.shape[0] / height, light.shape[1] / width)
    high, wide = int(scale * height), int(scale * width)
    top = int(rng.integers(light.shape[0] - high + 1))
    left = int(rng.integers(light.shape[1] - wide + 1))
    piece = light[top : top + high, left : left + wide]
    piece = np.ascontiguousarray(piece[:, ::-1] if rng.random() < 0.5 else piece)
    large = cv2.resize(piece, (width, height), interpolation=cv2.INTER_CUBIC)
    grain = fractal(rng, (height, width), (12.0, 12.0), 4, 0.9)
    return np.asarray(np.maximum(large, 0) * np.exp(0.1 * grain)[..., None], np.float32)
