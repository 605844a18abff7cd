"""Small trees that each mend what those before got wrong, grown with numpy alone."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from tests.training.trees import in_a_row

Floats = NDArray[np.float32]
Doubles = NDArray[np.float64]

#: Values of a feature are told apart in as many parts at most.
_BINS: Final = 64


@dataclass(frozen=True)
class Boosting:
    """How trees are grown.

    Args:
        trees: how many.
        rate: part of each tree's answer that is believed.
        leaves: most leaves of a tree.
        leaf: fewest samples in a leaf.
        part: of the features tried at each node.
        held: how strongly a leaf's answer is held back.
        seed: of all that is drawn.
    """

    trees: int = 200
    rate: float = 0.06
    leaves: int = 12
    leaf: int = 12
    part: float = 0.4
    held: float = 5.0
    seed: int = 7


@dataclass(frozen=True)
class _Samples:
    """Samples in parts: `bins`, shape (n, features), and each part's end, (features, parts)."""

    bins: NDArray[np.intp]
    ends: Floats

    @classmethod
    def of(cls, samples: Floats) -> _Samples:
        """Divide each feature so that its parts hold about as many samples."""
        ends = np.quantile(samples, np.linspace(0, 1, _BINS + 1)[1:-1], axis=0, method="lower").T
        columns = zip(ends, samples.T, strict=True)
        return cls(np.stack([np.searchsorted(*column) for column in columns], 1), ends)


@dataclass(frozen=True)
class _Cut:
    """The best cut of a node: what it gains, its feature, and the last part to its left."""

    gain: float
    feature: int
    part: int


def boosted(
    samples: Floats, targets: NDArray[np.bool_], how: Boosting
) -> dict[str, NDArray[np.generic]]:
    """Trees whose values, added up, are the log odds of the targets, as flat arrays.

    Source: gradient boosting with second-order steps and the leaf of the largest gain cut next
    (Friedman 2001; Chen & Guestrin 2016; both from memory).

    Args:
        samples: shape (n, features); compared as they are stored, in half precision.
        targets: shape (n,).
        how: to grow them.

    Returns:
        `root` (trees,), and for each node `feature`, `threshold`, `left` (0: a leaf), `value`.
    """
    divided = _Samples.of(samples.astype(np.float16).astype(np.float32))
    wanted = targets.astype(np.float64)
    log_odds = np.full(len(wanted), np.log(wanted.mean() / (1 - wanted.mean())))
    parts: list[dict[str, list[float]]] = []
    for tree in range(how.trees):
        chance = 1 / (1 + np.exp(-log_odds))
        slopes = np.stack([wanted - chance, chance * (1 - chance)])
        nodes, members = _grown(divided, slopes, how, np.random.default_rng((how.seed, tree)))
        for node, inside in members.items():
            log_odds[inside] += nodes["value"][node]
        parts.append(nodes)
    return in_a_row([_stored(nodes) for nodes in parts])


def _stored(nodes: dict[str, list[float]]) -> dict[str, NDArray[np.generic]]:
    kinds = {"feature": np.uint8, "threshold": np.float16, "left": np.int64, "value": np.float16}
    return {name: np.array(nodes[name]).astype(kind) for name, kind in kinds.items()}


def _grown(
    samples: _Samples, slopes: Doubles, how: Boosting, rng: np.random.Generator
) -> tuple[dict[str, list[float]], dict[int, NDArray[np.intp]]]:
    """One tree, and the samples in each of its leaves."""
    nodes: dict[str, list[float]] = {"feature": [], "threshold": [], "left": [], "value": []}
    members: dict[int, NDArray[np.intp]] = {}
    cuts: dict[int, _Cut] = {}

    def add(inside: NDArray[np.intp]) -> None:
        node = len(nodes["left"])
        total = slopes[:, inside].sum(axis=1)
        value = np.float16(how.rate * total[0] / (total[1] + how.held))  # as it is stored
        for name, number in zip(nodes, (0, 0, 0, float(value)), strict=True):
            nodes[name].append(number)
        members[node] = inside
        cuts[node] = _best_cut(samples, slopes, inside, how, rng)

    add(np.arange(slopes.shape[1]))
    while len(members) < how.leaves:
        node = max(cuts, key=lambda one: cuts[one].gain)
        cut, inside = cuts.pop(node), members.pop(node)
        if cut.gain <= 0:
            members[node] = inside
            break
        nodes["feature"][node] = cut.feature
        nodes["threshold"][node] = float(samples.ends[cut.feature, cut.part])
        nodes["left"][node] = len(nodes["left"])
        below = samples.bins[inside, cut.feature] <= cut.part
        add(inside[below])
        add(inside[~below])
    return nodes, members


def _best_cut(
    samples: _Samples, slopes: Doubles, inside: NDArray[np.intp], how: Boosting,
    rng: np.random.Generator,
) -> _Cut:  # fmt: skip
    """The best cut of some random features."""
    count = samples.bins.shape[1]
    tried = np.sort(rng.choice(count, max(1, round(how.part * count)), replace=False))
    if len(inside) < 2 * how.leaf:
        return _Cut(0.0, 0, 0)
    cells = (samples.bins[np.ix_(inside, tried)] + _BINS * np.arange(len(tried))).ravel()
    size = _BINS * len(tried)

    def below(weights: Doubles | None) -> Doubles:
        """Sums up to the end of each part, shape (tried, parts)."""
        repeated = None if weights is None else np.repeat(weights, len(tried))
        return np.cumsum(np.bincount(cells, repeated, size).reshape(-1, _BINS), axis=1)

    number, slope, curve = (below(one) for one in (None, *slopes[:, inside]))
    gain = _worth(slope, curve, how) + _worth(
        slope[:, -1:] - slope, curve[:, -1:] - curve, how
    ) - _worth(slope[:, -1:], curve[:, -1:], how)  # fmt: skip
    enough = (number >= how.leaf) & (number[:, -1:] - number >= how.leaf)
    gain = np.where(enough, gain, 0.0)
    feature, part = np.unravel_index(int(np.argmax(gain)), gain.shape)
    return _Cut(float(gain[feature, part]), int(tried[feature]), int(part))


def _worth(slope: Doubles, curve: Doubles, how: Boosting) -> Doubles:
    return np.asarray(slope**2 / (curve + how.held))
