"""Trained trees that give the likely lengths of streaks from a region's numbers."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.flat_trees import FlatTrees

Floats = NDArray[np.float64]

#: What training writes; the tests tell how.
NUMBERS: Final = Path(__file__).with_name("texture_numbers.npz")
#: Least spread of a leaf [octaves of the length]: a leaf of a few samples looks surer than it is.
#: Own rule.
_LEAST_SPREAD: Final = 0.35
#: The normal distribution by a logistic curve, within 0.01 everywhere.
_LOGISTIC: Final = 1.702
#: Lengths at which a distribution is looked at [log2 px].
_GRID: Final = np.arange(-3.0, 12.0, 0.02)


@dataclass(frozen=True)
class Lengths:
    """Likely lengths of the streaks: a mean and a spread from each tree [log2 px]."""

    means: Floats
    spreads: Floats

    def below(self, length_px: float) -> float:
        """How likely the streaks are shorter than a length [px], 0 to 1."""
        if length_px <= 0:
            return 0.0
        return float(self._below(np.log2([length_px]))[0])

    def quantile(self, part: float) -> float:
        """The length below which the streaks are with a likelihood of `part` [px]."""
        place = np.searchsorted(self._below(_GRID), part)
        return float(2 ** _GRID[min(int(place), len(_GRID) - 1)])

    def _below(self, octaves: Floats) -> Floats:
        steps = (octaves[:, None] - self.means) / self.spreads
        return np.asarray((1 / (1 + np.exp(-_LOGISTIC * np.clip(steps, -30, 30)))).mean(axis=1))


@dataclass(frozen=True)
class Trees:
    """Trees, and mean and spread of the samples in each leaf [log2 px]."""

    trees: FlatTrees
    mean: Floats
    spread: Floats

    def lengths(self, features: Floats) -> Lengths:
        """What all trees say of one region.

        Args:
            features: shape (n,), as `core.frame.texture_features.features` gives them.
        """
        nodes = self.trees.leaves(features[None])[0]
        return Lengths(self.mean[nodes], np.maximum(self.spread[nodes], _LEAST_SPREAD))


@lru_cache(maxsize=1)
def trained() -> Trees:
    """The trees that come with the code."""
    with np.load(NUMBERS, allow_pickle=False) as arrays:
        return Trees(
            FlatTrees.of(dict(arrays)),
            mean=arrays["mean"].astype(np.float64),
            spread=arrays["spread"].astype(np.float64),
        )
