"""Trained trees that tell what a clipped area is, or that it is not sure."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.flat_trees import FlatTrees
from core.frame.report import AreaKind

#: What training writes; the tests tell how.
NUMBERS: Final = Path(__file__).with_name("kind_numbers.npz")
#: What the trees know, in the order of their turns; None is snow, sunlit stone and white things,
#: for which there is no name; SPARKLE is a glint as wide as an area.
KNOWN: Final = (
    AreaKind.WHITE_WATER,
    AreaKind.SKY_GAP,
    AreaKind.LAMP,
    None,
    AreaKind.SPARKLE,
)
#: Least likelihood at which a kind is named. Chosen on the recipe's own pictures, each told by
#: trees that had not seen its background, its photograph or the rendered gorge, as low as leaves
#: 95 % of the names right. With the numbers as they are it is 94 % before photographs, 97 % in
#: other planted pictures and 96 % in rendered gorges, where .4, .5 and .8 of the areas get a name.
#: In pushed photographs it is 73 %: lamps and walls of rooms pass for sky, snow for white water,
#: and real white water, of which training has two photographs, is not told there. Own rules.
LEAST_LIKELIHOOD: Final = {
    AreaKind.WHITE_WATER: 0.86,
    AreaKind.SKY_GAP: 0.7,
    AreaKind.LAMP: 0.6,
    AreaKind.SPARKLE: 0.7,
}
#: How sure nothing is called: as good as a guess.
_GUESS: Final = 0.5


@dataclass(frozen=True)
class Said:
    """A kind, or not sure, and how likely it is, 0 to 1."""

    kind: AreaKind
    confidence: float


@dataclass(frozen=True)
class KindTrees:
    """Trees and what a leaf adds to the score of its tree's kind.

    Trees take turns in the order of `KNOWN`.
    """

    trees: FlatTrees
    value: NDArray[np.float32]

    def of(self, features: NDArray[np.float64]) -> NDArray[np.float64]:
        """How likely each kind is for each area, shape (n, 5), of features, shape (n, m)."""
        values = self.value[self.trees.leaves(features)].astype(np.float64)
        scores = values.reshape(len(values), -1, len(KNOWN)).sum(axis=1)
        powers = np.exp(scores - scores.max(axis=1, keepdims=True))
        return np.asarray(powers / powers.sum(axis=1, keepdims=True))


def likelihoods(features: NDArray[np.float64]) -> list[Said]:
    """What each area is.

    Args:
        features: shape (n, m), as `core.frame.body_features.body_features` gives them.

    Returns:
        n kinds: the likeliest where it is likely enough, else `UNSURE`.
    """
    return [_said(likely) for likely in trained().of(features)]


def _said(likely: NDArray[np.float64]) -> Said:
    best = int(np.argmax(likely))
    kind = KNOWN[best]
    if kind is None or likely[best] < LEAST_LIKELIHOOD[kind]:
        return Said(AreaKind.UNSURE, _GUESS)
    return Said(kind, float(likely[best]))


@lru_cache(maxsize=1)
def trained() -> KindTrees:
    """The trees that come with the code."""
    with np.load(NUMBERS, allow_pickle=False) as arrays:
        return KindTrees(FlatTrees.of(dict(arrays)), arrays["value"].astype(np.float32))
