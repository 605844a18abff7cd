"""Train what is told at the borders of frames: `python -m tests.training.borders FOLDER`."""

from __future__ import annotations

import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from multiprocessing import Pool
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from sklearn.isotonic import IsotonicRegression

from core.frame.border_bright import bright_runs
from core.frame.border_features import line_features
from core.frame.border_lines import salient_places
from core.frame.border_sides import Canvas
from core.frame.border_tracks import tracks_of
from core.frame.border_trees import NUMBERS, Topic
from core.frame.findings import Border, BorderKind
from core.frame.flat_trees import FlatTrees
from tests.scenes.intruders import Intruder, plant
from tests.scenes.noise import Field
from tests.training.backdrops import ADDED, FIRST, LAST, PHOTOGRAPHS, backdrop
from tests.training.boosting import Binned, boosted_in_bins
from tests.training.kinds import file_of
from tests.training.texture import written
from tests.training.trees import Growth
from tests.training.trees import grown as grown_at_random


@dataclass(frozen=True)
class Part:
    """Frames of the recipe: what each is made of in its turn, how many, and what is drawn.

    `least` is the smallest piece of a photograph that makes a frame. What is bright is learned
    from the first `bright` frames, lines and shapes from the first `lines`.
    """

    sources: tuple[str, ...]
    bright: int
    lines: int
    seed: int
    least: float

    @property
    def frames(self) -> int:
        """How many there are."""
        return max(self.bright, self.lines)


PARTS: Final = (
    Part(
        (*FIRST, "gravel.png", "coffee.png", "chelsea.png", "camera.png", "flower.jpg", "gorge",
         "gorge", "noise"), 728, 642, 20_261_127, 0.8,
    ),
    Part(
        (*FIRST, *ADDED, "gravel.png", "brick.png", "coffee.png", "chelsea.png", "camera.png",
         "flower.jpg", *["other gorge"] * 5, "noise"), 470, 424, 20_261_128, 0.45,
    ),
    Part((*LAST, *["third gorge"] * 13, "noise"), 0, 363, 20_261_129, 0.45),
    Part(("third gorge",), 0, 272, 20_261_130, 0.45),
)  # fmt: skip
#: All that frames are made of; each is left out in turn. The held-out ones are only for the
#: figures.
SOURCES: Final = tuple(dict.fromkeys(source for part in PARTS for source in part.sources))
HELD_OUT: Final = ("china.jpg", "rocket.jpg", "grass.png", "astronaut.png", "motorcycle_left.png")

#: Photographs with sky, surf or lamps at their borders: of something bright there that was not
#: planted nobody could say that it belongs.
_BRIGHT_BORDERS: Final = frozenset(PHOTOGRAPHS) - {
    "Blinds.jpg", "FallenLeaf.jpg", "GreenMeadow.jpg", "LadyBird.jpg", "OneStandsOut.jpg",
    "RainDrops.jpg", "TwoWings.jpg", "YellowFlower.jpg", "Garden.jpg", "DarkestHour.jpg",
    "Green-Maple.edj", "Lichen-Branches.edj", "Sea-of-Lanterns.edj", "White-Flower.edj",
    "Yellow-Flower.edj",
}  # fmt: skip

BOOSTING: Final = Binned(rounds=400, rate=0.05, leaves=16, leaf=20, held=5.0, tried=0.2)
GROWTH: Final = Growth(trees=120, leaf=4, part=0.4, seed=11)
#: Most things planted in a frame, and frames of five in which nothing is.
_MOST: Final = 4
#: A thing is found within this of its span, as a part of the side.
_NEAR: Final = 0.012
#: Sources are left out in so many parts.
_PARTS: Final = 6
#: Steps of the table from odds to rates.
_STEPS: Final = 24

TABLE: Final = Path(__file__).with_name("border_table.npz")

Rng = np.random.Generator
Floats = NDArray[np.float32]


def populated(light: Field, rng: Rng) -> tuple[Field, list[Intruder]]:
    """Some things planted in a picture, none in one of five, seldom many on one side."""
    wanted = 0 if rng.random() < 0.2 else int(rng.integers(1, _MOST))
    side = list(Border)[int(rng.integers(4))] if rng.random() < 0.12 else None
    planted: list[Intruder] = []
    for _ in range(wanted if side is None else 4):
        kind = None if side is None else BorderKind.LINE
        laid = plant(light, rng, kind, side)
        if laid is not None and not any(_crowd(laid[1], other) for other in planted):
            light, intruder = laid
            planted.append(intruder)
    return light, planted


def _crowd(one: Intruder, other: Intruder) -> bool:
    return any(
        border in other.spans
        and low < other.spans[border][1] + 2 * _NEAR
        and high > other.spans[border][0] - 2 * _NEAR
        for border, (low, high) in one.spans.items()
    )


def hit(intruder: Intruder, border: Border, low: float, high: float) -> bool:
    """Whether something from `low` to `high` of a border, 0 to 1, is what was planted there."""
    if border not in intruder.spans:
        return False
    first, last = intruder.spans[border]
    apart = abs((low + high) / 2 - (first + last) / 2)
    overlap = low < last + _NEAR and high > first - _NEAR
    return overlap and apart <= max(high - low, last - first) / 2 + _NEAR


def frame(index: int, folder: Path | None) -> tuple[str, NDArray[np.uint8], list[Intruder]]:
    """One frame of the recipe: its source, its pixels after a JPEG, and what was planted."""
    part, within = _place(index)
    rng = np.random.default_rng((part.seed, within))
    source = part.sources[within % len(part.sources)]
    light, planted = populated(backdrop(source, rng, folder, part.least), rng)
    return source, file_of(light, rng)[0], planted


def _place(index: int) -> tuple[Part, int]:
    """The part of a frame of the recipe, and its number there."""
    for part in PARTS:
        if index < part.frames:
            return part, index
        index -= part.frames
    raise IndexError(index)


def samples(
    index: int, folder: Path | None
) -> tuple[str, dict[Topic, tuple[Floats, NDArray[np.bool_]]]]:
    """Source and features of what stands out in a frame of the recipe, and what was planted."""
    part, within = _place(index)
    source, pixels, planted = frame(index, folder)
    canvas = Canvas.of(pixels)
    found: dict[Topic, tuple[Floats, NDArray[np.bool_]]] = {}
    if within < part.lines:
        found["line"] = _lines(canvas, planted)
    if within < part.bright:
        features, hits = _bright(canvas, planted)
        known = hits | (source not in _BRIGHT_BORDERS)
        found["bright"] = features[known], hits[known]
    return source, found


def _lines(canvas: Canvas, planted: Sequence[Intruder]) -> tuple[Floats, NDArray[np.bool_]]:
    sides = [canvas.side(border) for border in Border]
    places = [salient_places(side) for side in sides]
    tracks = [tracks_of(side, found) for side, found in zip(sides, places, strict=True)]
    found = line_features(sides, places, tracks)
    hits, known = [], []
    for side, track in zip(sides, tracks, strict=True):
        for low, high in zip(track.low / side.length_px, track.high / side.length_px, strict=True):
            kinds = {one.kind for one in planted if hit(one, side.border, float(low), float(high))}
            hits.append(bool(kinds - {BorderKind.SKY}))
            known.append(not _by_sky(planted, side.border, float(low), float(high)))
    keep = np.array(known, np.bool_)
    return found[keep], np.array(hits, np.bool_)[keep]


def _by_sky(planted: Sequence[Intruder], border: Border, low: float, high: float) -> bool:
    """On or beside sky, of which a line's own finder is not asked."""
    spans = [one.spans[border] for one in planted
             if one.kind is BorderKind.SKY and border in one.spans]  # fmt: skip
    return any(low < last + 0.03 and high > first - 0.03 for first, last in spans)


def _bright(canvas: Canvas, planted: Sequence[Intruder]) -> tuple[Floats, NDArray[np.bool_]]:
    features, hits = [], []
    for run in bright_runs(canvas):
        low, high = run.along
        kinds = {one.kind for one in planted if hit(one, run.border, low, high)}
        features.append(run.features)
        hits.append(bool(kinds))
    shape = (len(features), len(features[0]) if features else 0)
    return np.array(features, np.float32).reshape(shape), np.array(hits, np.bool_)


def table(folder: Path) -> dict[str, NDArray[np.generic]]:
    """All samples: `<topic>_features` as stored, `<topic>_planted`, `<topic>_source`."""
    with Pool() as pool:
        count = sum(part.frames for part in PARTS)
        return joined(pool.map(partial(samples, folder=folder), range(count), chunksize=8))


def joined(
    frames: Sequence[tuple[str, dict[Topic, tuple[Floats, NDArray[np.bool_]]]]],
) -> dict[str, NDArray[np.generic]]:
    """The samples of frames, as the table has them."""
    rows: dict[Topic, list[tuple[Floats, NDArray[np.bool_], int]]] = {"line": [], "bright": []}
    for source, found_there in frames:
        for topic, (features, planted) in found_there.items():
            if len(planted):
                rows[topic].append((features, planted, SOURCES.index(source)))
    found: dict[str, NDArray[np.generic]] = {}
    for topic, parts in rows.items():
        found[f"{topic}_features"] = np.concatenate([part[0] for part in parts]).astype(np.float16)
        found[f"{topic}_planted"] = np.concatenate([part[1] for part in parts])
        found[f"{topic}_source"] = np.concatenate(
            [np.full(len(part[1]), part[2], np.uint8) for part in parts]
        )
    return found


def grown(
    topic: Topic, features: Floats, planted: NDArray[np.bool_], trees: int | None = None
) -> dict[str, NDArray[np.generic]]:
    """The first trees of a topic, or all, each with what its nodes add to the odds.

    For what is bright, of which there are few samples, trees grown at random do as well on
    sources left out (average precision .94 with either kind).
    """
    if topic == "line":
        return boosted_in_bins(
            features, planted, replace(BOOSTING, rounds=trees or BOOSTING.rounds)
        )
    growth = replace(GROWTH, trees=trees or GROWTH.trees)
    part = grown_at_random(features, planted.astype(np.float32), growth)
    part.pop("spread")
    mean = part.pop("mean").astype(np.float64)
    return {**part, "value": (mean / GROWTH.trees).astype(np.float16)}


def left_out(found: Mapping[str, NDArray[np.generic]], topic: Topic) -> NDArray[np.float64]:
    """Log odds of each sample by trees that have seen nothing of its picture or some others."""
    features, planted, source = (found[f"{topic}_{name}"] for name in
                                 ("features", "planted", "source"))  # fmt: skip
    samples_, odds = features.astype(np.float32), np.zeros(len(features))
    parts = source.astype(np.intp) % _PARTS
    for number in range(_PARTS):
        out = parts == number
        part = grown(topic, samples_[~out], planted[~out].astype(np.bool_))
        odds[out] = FlatTrees.of(part).sums(part["value"].astype(np.float64), samples_[out])
    return odds


def rates(odds: NDArray[np.float64], planted: NDArray[np.generic]) -> dict[str, Floats]:
    """How often what got such odds was planted, rising with the odds.

    Parts of the samples with as many planted things each, `_STEPS` of them, are pooled where
    their rates do not rise.
    """
    order = np.argsort(odds, kind="stable")
    passed = np.cumsum(planted[order]) * _STEPS / np.count_nonzero(planted)
    parts = np.split(order, np.searchsorted(passed, np.arange(1, _STEPS)))
    said, rate = (np.array([values[part].mean() for part in parts]) for values in (odds, planted))
    count = np.array([len(part) for part in parts])
    risen = IsotonicRegression().fit_transform(said, rate, sample_weight=count)
    levels, level = np.unique(risen, return_inverse=True)
    pooled = np.bincount(level, said * count) / np.bincount(level, count)
    return {"said": pooled.astype(np.float32), "rate": levels.astype(np.float32)}


def numbers(found: Mapping[str, NDArray[np.generic]]) -> dict[str, NDArray[np.generic]]:
    """What the check is given: trees grown on all samples, rates from pictures left out."""
    arrays: dict[str, NDArray[np.generic]] = {}
    topics: tuple[Topic, ...] = ("line", "bright")
    for topic in topics:
        planted = found[f"{topic}_planted"].astype(np.bool_)
        part = grown(topic, found[f"{topic}_features"].astype(np.float32), planted)
        told = rates(left_out(found, topic), planted)
        arrays |= {f"{topic}_{name}": values for name, values in {**part, **told}.items()}
    return arrays


def main() -> None:
    """Make the table of samples, grow the trees, write both."""
    cv2.setNumThreads(1)
    found = table(Path(sys.argv[1]))
    written(found, TABLE)
    written(numbers(found), NUMBERS)


if __name__ == "__main__":
    main()
