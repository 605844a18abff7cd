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
#: trees and by a fit that had not seen its background, its photograph or the rendered gorge: with
#: the numbers as they are 95, 97 and 96 % of the names are right before photographs, in other
#: planted pictures and in rendered gorges, where .68, .68 and .87 of the areas get a name (by trees
#: alone: .53, .58 and .73). In pushed photographs it is 77 %, of .32 of the areas (73 % of .21):
#: there trees alone take lamps, sheep and walls of rooms for sky, quartz and sky through leaves for
#: white water, and real white water, of which training has two photographs, is not told. Own rules.
LEAST_LIKELIHOOD: Final = {
    AreaKind.WHITE_WATER: 0.92,
    AreaKind.SKY_GAP: 0.7,
    AreaKind.LAMP: 0.6,
    AreaKind.SPARKLE: 0.7,
}
#: Those of them that are water.
_WET: Final = [KNOWN.index(AreaKind.WHITE_WATER), KNOWN.index(AreaKind.SPARKLE)]
#: So many times likelier is water where the person says that the water is: about as much oftener
#: it lay there than other things in gorges, where they differ least. Own rule: in the recipe's
#: pictures, left out in turn, .64, .65 and .88 of the areas then get a name instead of .53, .52
#: and .77 (planted, before photographs, gorges), and 96 to 98 % of the names are right as before.
_WATER_WHERE_TOLD: Final = 3.0
#: What the network sees counts less than the trees: its likelihoods to this power. Chosen with the
#: least likelihoods.
_SEEN_POWER: Final = 0.7
#: Less likely nothing is called by either alone.
_LEAST: Final = 1e-4
#: How sure nothing is called: as good as a guess.
_GUESS: Final = 0.5


@dataclass(frozen=True)
class Said:
    """A kind, or not sure, and how likely it is, 0 to 1.

    `of_water` is how likely it is white water or a glint, 0 to 1.
    """

    kind: AreaKind
    confidence: float
    of_water: float = 0.0


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


def likelihoods(
    features: NDArray[np.float64],
    seen: NDArray[np.float64],
    told_water: NDArray[np.bool_] | None = None,
) -> list[Said]:
    """What each area is.

    Args:
        features: shape (n, m), as `core.frame.body_features.body_features` gives them.
        seen: how likely each kind is by what a network sees there, shape (n, 5).
        told_water: areas where the person says that the water is, shape (n,).

    Returns:
        n kinds: the likeliest where it is likely enough, else `UNSURE`.
    """
    likely = together(trained().of(features), seen)
    if told_water is not None:
        odds = np.where(told_water, _WATER_WHERE_TOLD, 1.0)
        likely[:, _WET] *= odds[:, None]
        likely /= likely.sum(axis=1, keepdims=True)
    return [_said(one) for one in likely]


def together(by_trees: NDArray[np.float64], seen: NDArray[np.float64]) -> NDArray[np.float64]:
    """How likely each kind is by both, shape (n, 5) each."""
    powers = np.maximum(by_trees, _LEAST) * np.maximum(seen, _LEAST) ** _SEEN_POWER
    return np.asarray(powers / powers.sum(axis=1, keepdims=True))


def _said(likely: NDArray[np.float64]) -> Said:
    best = int(np.argmax(likely))
    kind = KNOWN[best]
    of_water = float(likely[_WET].sum())
    if kind is None or likely[best] < LEAST_LIKELIHOOD[kind]:
        return Said(AreaKind.UNSURE, _GUESS, of_water)
    return Said(kind, float(likely[best]), of_water)


@lru_cache(maxsize=1)
def trained() -> KindTrees:
    """The trees that come with the code."""
    with np.load(NUMBERS, allow_pickle=False) as arrays:
        return KindTrees(FlatTrees.of(dict(arrays)), arrays["value"].astype(np.float32))
