"""Light of pictures at whose borders things are planted: pieces of photographs, gorges, noise."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final, TypeVar

import cv2
import numpy as np
from numpy.typing import NDArray

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
_Any = TypeVar("_Any", bound=np.generic)


@dataclass(frozen=True)
class Piece:
    """Which piece of a picture is taken: `turns` to the left first, then its box, then mirrored.

    The box is in pixels of the picture as turned: first row and column, rows and columns.
    """

    turns: int
    box: tuple[int, int, int, int]
    mirrored: bool

    @classmethod
    def drawn(cls, shape: tuple[int, ...], rng: Rng, size: tuple[int, int], least: float) -> Piece:
        """A piece of a picture of a shape that becomes a frame of a size, height and width."""
        turns = int(rng.integers(4)) if rng.random() < 0.3 else 0
        rows, columns = shape[:2] if turns % 2 == 0 else shape[1::-1]
        scale = float(rng.uniform(least, 1)) * min(rows / size[0], columns / size[1])
        high, wide = int(scale * size[0]), int(scale * size[1])
        top = int(rng.integers(rows - high + 1))
        left = int(rng.integers(columns - wide + 1))
        return cls(turns, (top, left, high, wide), bool(rng.random() < 0.5))

    def of(self, picture: NDArray[_Any]) -> NDArray[_Any]:
        """That piece, at its own size."""
        top, left, high, wide = self.box
        piece = np.rot90(picture, self.turns)[top : top + high, left : left + wide]
        return np.ascontiguousarray(piece[:, ::-1] if self.mirrored else piece)


def backdrop(source: str, rng: Rng, folder: Path | None = None, least: float = 0.8) -> Field:
    """Light of a picture, of a rendered gorge or of noise before anything is planted.

    Args:
        source: a name of `PHOTOGRAPHS`, a packaged picture's, one of `GORGES`, or "noise".
        rng: draws the piece and its brightness.
        folder: of the `PHOTOGRAPHS`.
        least: the smallest piece of one, over the whole.
    """
    return drawn_backdrop(source, rng, folder, least).light


@dataclass(frozen=True)
class Backdrop:
    """Light, which piece of its picture that is (noise is of none), and where white was laid."""

    light: Field
    piece: Piece | None
    white: NDArray[np.bool_]


def drawn_backdrop(
    source: str, rng: Rng, folder: Path | None = None, least: float = 0.8
) -> Backdrop:
    """As `backdrop`, with what is known of it."""
    long = int(rng.integers(1000, 1300))
    short = round(long * float(rng.choice([2 / 3, 3 / 4, 9 / 16])))
    size = (short, long) if rng.random() < 0.65 else (long, short)
    light, piece = _unlit(source, rng, folder, size, least)
    top = max(float(np.percentile(light, 99.5)), 1e-3)
    level = float(np.exp(rng.uniform(np.log(0.08), np.log(0.95))))
    whites = Whites.over(np.asarray(np.clip(light * (level / top), 0, 1), np.float32))
    if rng.random() < _WHITE:
        lay = (lay_fall, lay_rapids, lay_rapids, lay_snow)[int(rng.integers(4))]
        lay(whites, rng)
    return Backdrop(whites.light, piece, whites.shows > 0)


def _unlit(
    source: str, rng: Rng, folder: Path | None, size: tuple[int, int], least: float
) -> tuple[Field, Piece | None]:
    if source == "noise":
        lumps = fractal(rng, size, (size[0] / 4, size[1] / 4), 8, 0.7)
        tint = rng.uniform(0.4, 1, 3).astype(np.float32)
        return np.exp(0.7 * lumps)[..., None] * tint * 0.15, None
    if source in GORGES:
        number = GORGES[source][int(rng.integers(len(GORGES[source])))]
        picture, least = _gorge(number), 0.8
    elif source in PHOTOGRAPHS:
        picture = _photograph(str(folder), source)
    else:
        picture, least = light_of(source), 0.5
    piece = Piece.drawn(picture.shape, rng, size, least)
    return _enlarged(piece.of(picture), rng, size), piece


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


def _enlarged(piece: Field, rng: Rng, size: tuple[int, int]) -> Field:
    """A piece at another size, height and width, with grain of its own."""
    large = cv2.resize(piece, size[::-1], interpolation=cv2.INTER_CUBIC)
    grain = fractal(rng, size, (12.0, 12.0), 4, 0.9)
    return np.asarray(np.maximum(large, 0) * np.exp(0.1 * grain)[..., None], np.float32)
