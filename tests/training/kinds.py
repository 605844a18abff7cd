"""Train what clipped areas are told apart with: `python -m tests.training.kinds FOLDER`."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.clipped_pixels import clipping_ends
from core.frame.clipping import coverage_of
from core.frame.histogram import brightest_channel, code_counts
from core.frame.kind_trees import KNOWN
from core.frame.kinds import Divided, divide
from tests.scenes.camera import Curve, codes_of, linear, toned
from tests.scenes.noise import Field, fractal
from tests.scenes.waterfall import Plan, compose
from tests.scenes.whites import (
    Bright,
    Whites,
    lay_lamp,
    lay_pale_stone,
    lay_snow,
    lay_sunlit,
    plant,
    planted,
)
from tests.training.boosting import Binned, boosted_in_bins
from tests.training.kind_pictures import (
    FIRST_OVER,
    FIRST_PUSHED,
    LATER,
    PICTURES,
    PLANTED,
    TEN_THOUSAND,
    is_twice,
    pushed_name,
)
from tests.training.pictures import TRAINING, light_of
from tests.training.seen import BACKDROPS, lay_foam, photograph, pushed
from tests.training.texture import written

#: How often real foam is laid before a photograph.
_FOAM: Final = 0.5
SEED: Final = 20_261_126
GROWTH: Final = Binned(rounds=250, rate=0.06, leaves=12, leaf=20, held=5, tried=0.15)
#: Part of an area that shows one thing, for the area to be learned from.
_PURE: Final = 0.8
#: Least part of an area of which it is known what it shows: a lens spreads small things.
_KNOWN_PART: Final = 0.3
#: Column of each thing among `KNOWN`.
COLUMN: Final = {
    Bright.WATER: 0, Bright.SKY: 1, Bright.LAMP: 2, Bright.PALE: 3, Bright.SPARKLE: 4,
}  # fmt: skip

NUMBERS: Final = Path(__file__).parents[2] / "core" / "frame" / "kind_numbers.npz"
TABLE: Final = Path(__file__).with_name("kind_table.npz")

Floats = NDArray[np.float32]


def background(
    rng: np.random.Generator, sources: tuple[str, ...] = TRAINING, folder: Path | None = None
) -> Field:
    """Dim light of a picture, of noise or of a rendered gorge, shape (h, w, 3).

    Args:
        rng: for what is drawn.
        sources: names of pictures.
        folder: of those of them that come with no package of Python.
    """
    long = int(rng.integers(720, 1250))
    ratio = float(rng.choice([2 / 3, 3 / 4, 9 / 16]))
    short = round(long * ratio)
    width, height = (long, short) if rng.random() < 0.65 else (short, long)
    drawn = rng.random()
    if drawn < 0.2:
        plan = Plan(width, height, seed=int(rng.integers(2**31)), stream=bool(rng.integers(2)))
        light = compose(plan).base * np.float32(0.18)
    elif drawn < 0.4:
        lumps = fractal(rng, (height, width), (height / 4, width / 4), 8, 0.7)
        colour = np.asarray(rng.uniform(0.4, 1, 3), np.float32)
        light = np.exp(0.7 * lumps)[..., None] * colour * np.float32(0.15)
    else:
        name = sources[int(rng.integers(len(sources)))]
        picture_light = photograph(name, folder) if name in BACKDROPS else light_of(name)
        light = _enlarged(rng, picture_light, width, height)
    top = max(float(np.percentile(light, 99.7)), 1e-3)
    level = float(np.exp(rng.uniform(np.log(0.03), np.log(0.75))))
    return np.asarray(np.clip(light * (level / top), 0, 0.85), np.float32)


def _enlarged(rng: np.random.Generator, light: Field, width: int, height: int) -> Field:
    """A piece of a picture at another size, with grain of its own so that it isn't soft."""
    part = float(rng.uniform(0.6, 1))
    scale = part * min(light.shape[0] / height, light.shape[1] / width)
    high, wide = int(scale * height), int(scale * width)
    top = int(rng.integers(light.shape[0] - high + 1))
    left = int(rng.integers(light.shape[1] - wide + 1))
    piece = light[top : top + high, left : left + wide]
    if rng.random() < 0.5:
        piece = piece[:, ::-1]
    large = cv2.resize(piece, (width, height), interpolation=cv2.INTER_CUBIC)
    grain = fractal(rng, (height, width), (12.0, 12.0), 4, 0.9)
    return np.asarray(large * np.exp(0.12 * grain)[..., None], np.float32)


def file_of(light: Field, rng: np.random.Generator) -> tuple[NDArray[np.uint8], int]:
    """The picture as a camera stores it, decoded again, and its JPEG quality."""
    soft = cv2.GaussianBlur(light, (0, 0), float(rng.uniform(0.4, 1.0)))
    noise = rng.standard_normal(light.shape, np.float32)
    noise *= np.sqrt(np.maximum(soft, 0) + np.float32(0.001)) * np.float32(rng.uniform(0.002, 0.02))
    curve = Curve(float(rng.uniform(0, 0.8)), float(rng.uniform(0, 0.5)))
    codes = toned(np.clip(soft + noise, 0, 1), curve)
    quality = int(rng.integers(78, 97))
    file = cv2.imencode(".jpg", codes[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, quality])[1]
    return codes_of(file.tobytes()), quality


def divided(pixels: NDArray[np.uint8], quality: int) -> Divided | None:
    """What the check divides a picture into, None where nothing is clipped."""
    brightest = brightest_channel(pixels)
    ends = clipping_ends(code_counts(brightest), resized=False, jpeg_quality=quality)
    if brightest.max() < ends.end:
        return None
    return divide(coverage_of(pixels, brightest, ends)[0])


def truths(found: Divided, shows: NDArray[np.uint8]) -> Iterator[Bright | None]:
    """What each chosen body shows; None where it shows several things or mostly nothing known."""
    labels = found.bodies.patches.labels
    height, width = labels.shape
    if shows.shape != labels.shape:
        shows = cv2.resize(shows, (width, height), interpolation=cv2.INTER_NEAREST).astype(np.uint8)
    for label in found.chosen:
        inside = (labels == label) & (found.coverage.clipped > 0)
        counts = np.bincount(shows[inside], minlength=len(Bright))
        known = counts.sum() - counts[Bright.NOTHING]
        enough = known > 0 and known >= _KNOWN_PART * counts.sum()
        counts[Bright.NOTHING] = 0
        best = int(np.argmax(counts))
        yield Bright(best) if enough and counts[best] >= _PURE * known else None


def picture(
    index: int, folder: Path | None, seed: int = SEED
) -> tuple[NDArray[np.uint8], int, Whites]:
    """Pixels of one picture of the recipe, its JPEG quality, and what it shows.

    Args:
        index: one of `PICTURES`.
        folder: of the photographs of `SEEN` that come with no package of Python.
        seed: of all that is drawn.
    """
    rng = np.random.default_rng((seed, index))
    whites = _whites(index, rng, folder)
    light = whites.light
    if is_twice(index):
        large = cv2.resize(light, None, fx=2, fy=2, interpolation=cv2.INTER_CUBIC)
        light = np.asarray(np.maximum(large, 0), np.float32)
    pixels, quality = file_of(light, rng)
    return pixels, quality, whites


def _whites(index: int, rng: np.random.Generator, folder: Path | None) -> Whites:
    later = index // TEN_THOUSAND if index >= min(LATER) else 0
    if index < PLANTED or later == 2:
        return planted(background(rng), rng)
    if index < FIRST_OVER or later == 4:
        return gorge(rng)
    if FIRST_PUSHED <= index < min(LATER) or later == 5:
        return pushed(pushed_name(index), rng, folder)
    return _over_photograph(rng, folder)


def _over_photograph(rng: np.random.Generator, folder: Path | None) -> Whites:
    whites = Whites.over(background(rng, BACKDROPS, folder))
    if rng.random() < _FOAM:
        lay_foam(whites, rng, folder)
    plant(whites, rng)
    return whites


def gorge(rng: np.random.Generator) -> Whites:
    """A rendered fall, sometimes with snow, pale or sunlit stone, a lamp or the sun."""
    long = int(rng.integers(800, 1250))
    width, height = (long, long * 2 // 3) if rng.random() < 0.4 else (long * 2 // 3, long)
    scene = compose(
        Plan(
            width, height, seed=int(rng.integers(2**31)), sky_gap=bool(rng.integers(2)),
            stream=bool(rng.integers(2)), sparkle_share=float(rng.uniform(0, 0.0008)),
            white_stops=float(rng.uniform(2.5, 3.8)),
        )
    )  # fmt: skip
    plan = scene.plan
    light = linear(scene.radiance(), plan.exposure, plan.light_ev100, plan.sensor, rng=rng)
    whites = Whites.over(np.asarray(np.maximum(light, 0), np.float32))
    whites.shows[scene.white > 0.05] = Bright.WATER
    whites.shows[scene.sky > 0.5] = Bright.SKY
    whites.shows[scene.sparkle > 0] = Bright.SPARKLE
    for lay in (lay_snow, lay_pale_stone, lay_sunlit, lay_lamp):
        if rng.random() < 0.25:
            lay(whites, rng)
    return whites


def samples(
    index: int, folder: Path | None = None, seed: int = SEED
) -> list[tuple[NDArray[np.float64], int]]:
    """Features and column of each body of one picture that shows one thing."""
    pixels, quality, whites = picture(index, folder, seed)
    found = divided(pixels, quality)
    if found is None or len(found.chosen) == 0:
        return []
    return [
        (row, COLUMN[what])
        for row, what in zip(found.features, truths(found, whites.shows), strict=True)
        if what is not None
    ]


def table(folder: Path) -> dict[str, NDArray[np.generic]]:
    """All samples of the recipe.

    Returns:
        `features` (n, m) as they are stored, `columns` (n,), and `pictures` (n,), the number of
        the picture of each.
    """
    rows = [(*row, index) for index in PICTURES for row in samples(index, folder)]
    return {
        "features": np.stack([features for features, *_ in rows]).astype(np.float16),
        "columns": np.array([column for _, column, _ in rows], np.uint8),
        "pictures": np.array([index for *_, index in rows], np.uint16),
    }


def trained(
    found: Floats, columns: NDArray[np.uint8], rounds: int = GROWTH.rounds
) -> dict[str, NDArray[np.generic]]:
    """Rounds of one tree for each kind; kinds of which there are few count for more.

    Args:
        found: features, shape (n, m).
        columns: of `KNOWN`, shape (n,).
        rounds: of one tree for each of `KNOWN`.
    """
    numbers = np.bincount(columns, minlength=len(KNOWN))
    weights = np.sqrt(len(columns) / len(KNOWN) / numbers)[columns]
    return boosted_in_bins(found, columns, replace(GROWTH, rounds=rounds), weights)


def main() -> None:
    """Make the table of samples, grow the trees, write both."""
    cv2.setNumThreads(1)
    samples_there = table(Path(sys.argv[1]))
    written(samples_there, TABLE)
    found, columns = samples_there["features"], samples_there["columns"]
    written(trained(found.astype(np.float32), columns.astype(np.uint8)), NUMBERS)


if __name__ == "__main__":
    main()
