"""Fit what a network of images tells of clipped areas: `python -m tests.training.sight FOLDER`."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray
from sklearn.linear_model import LogisticRegression

from core.frame.kind_trees import KNOWN
from core.frame.sight_kinds import NUMBERS, SightFit
from tests.training.kind_pictures import SEEN_BY_NETWORK
from tests.training.kinds import COLUMN, divided, picture, truths
from tests.training.texture import written

TABLE: Final = Path(__file__).with_name("sight_table.npz")
#: How weakly weights are held to 0. Own rule, from the recipe's pictures, left out in turn.
_FREE: Final = 0.003
_ROUNDS: Final = 300
#: Steps of what is stored of a number, from its least to its most.
_STEPS: Final = 255


def samples(index: int, folder: Path | None = None) -> list[tuple[NDArray[np.float64], int]]:
    """Sights and column of each body of one picture of the recipe that shows one thing."""
    pixels, quality, whites = picture(index, folder)
    found = divided(pixels, quality)
    if found is None or len(found.chosen) == 0:
        return []
    return [
        (row, COLUMN[what])
        for row, what in zip(found.sights, truths(found, whites.shows), strict=True)
        if what is not None
    ]


def table(folder: Path) -> dict[str, NDArray[np.generic]]:
    """All samples: `columns` and `pictures` (n,), `codes` (n, m), `least` and `step` (m,)."""
    rows = [(*row, index) for index in SEEN_BY_NETWORK for row in samples(index, folder)]
    sights = np.stack([sight for sight, *_ in rows])
    least = sights.min(axis=0)
    step = (sights.max(axis=0) - least) / _STEPS
    return {
        "codes": np.rint((sights - least) / step).astype(np.uint8),
        "least": least.astype(np.float32),
        "step": step.astype(np.float32),
        "columns": np.array([column for _, column, _ in rows], np.uint8),
        "pictures": np.array([index for *_, index in rows], np.uint16),
    }


def fitted(found: dict[str, NDArray[np.generic]]) -> SightFit:
    """A straight fit to a table; kinds of which there are few count for more."""
    sights = found["codes"].astype(np.float64)
    columns = found["columns"].astype(np.intp)
    middle, spread = sights.mean(axis=0), sights.std(axis=0)
    numbers = np.bincount(columns, minlength=len(KNOWN))
    weights = np.sqrt(1 / numbers)[columns]
    model = LogisticRegression(C=_FREE, max_iter=_ROUNDS)
    model.fit((sights - middle) / spread, columns, sample_weight=weights / weights.mean())
    least, step = (found[name].astype(np.float64) for name in ("least", "step"))
    by_sight = model.coef_ / (spread * step)
    added = model.intercept_ - by_sight @ (least + step * middle)
    return SightFit(by_sight.T, added)


def main() -> None:
    """Make the table of samples, fit, write both."""
    cv2.setNumThreads(1)
    found = table(Path(sys.argv[1]))
    written(found, TABLE)
    written({name: value.astype(np.float32) for name, value in vars(fitted(found)).items()},
            NUMBERS)  # fmt: skip


if __name__ == "__main__":
    main()
