"""Trees with cuts drawn at random, grown with numpy alone: they grow alike anywhere."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float32]


@dataclass(frozen=True)
class Growth:
    """How trees are grown.

    Args:
        trees: how many.
        leaf: fewest samples in a leaf.
        part: of the features tried at each node.
        seed: of all that is drawn.
    """

    trees: int = 80
    leaf: int = 5
    part: float = 0.4
    seed: int = 7


@dataclass
class _Nodes:
    """Nodes of one tree as they come; `left` 0 is a leaf, the right child follows the left."""

    feature: list[int] = field(default_factory=list)
    threshold: list[float] = field(default_factory=list)
    left: list[int] = field(default_factory=list)
    mean: list[float] = field(default_factory=list)
    spread: list[float] = field(default_factory=list)

    def add(self, targets: Floats) -> int:
        self.feature.append(0)
        self.threshold.append(0.0)
        self.left.append(0)
        self.mean.append(float(targets.mean()))
        self.spread.append(float(targets.std()))
        return len(self.feature) - 1


def grown(samples: Floats, targets: Floats, growth: Growth) -> dict[str, NDArray[np.generic]]:
    """Extremely randomised trees (Geurts, Ernst & Wehenkel 2006, from memory) as flat arrays.

    Args:
        samples: shape (n, features).
        targets: shape (n,).
        growth: how.

    Returns:
        `root` (trees,), and for each node `feature`, `threshold`, `left` (0: a leaf), `mean`
        and `spread` of the targets in it.
    """
    parts: list[_Nodes] = []
    for tree in range(growth.trees):
        rng = np.random.default_rng((growth.seed, tree))
        nodes = _Nodes()
        nodes.add(targets)
        waiting = [(0, np.arange(len(targets)))]
        while waiting:
            node, members = waiting.pop()
            split = _split(samples[members], targets[members], growth, rng)
            if split is None:
                continue
            feature, threshold = split
            below = samples[members, feature] <= np.float32(threshold)
            nodes.feature[node], nodes.threshold[node] = feature, threshold
            sides = [members[below], members[~below]]
            places = [nodes.add(targets[side]) for side in sides]
            nodes.left[node] = places[0]
            waiting += list(zip(places, sides, strict=True))
        parts.append(nodes)
    return _flat(parts)


def _split(
    samples: Floats, targets: Floats, growth: Growth, rng: np.random.Generator
) -> tuple[int, float] | None:
    """The best of some random cuts, None where a leaf shall be."""
    count, features = samples.shape
    if count < 2 * growth.leaf:
        return None
    tried = rng.choice(features, max(1, round(growth.part * features)), replace=False)
    low, high = samples[:, tried].min(axis=0), samples[:, tried].max(axis=0)
    drawn = low + rng.random(len(tried), np.float32) * (high - low)
    cuts = drawn.astype(np.float16).astype(np.float32)  # as they are stored
    below = samples[:, tried] <= cuts
    under = below.sum(axis=0)
    over = count - under
    centred = (targets - targets.mean()).astype(np.float64)
    # The sum of squares between the two sides, up to a constant.
    sums = centred @ below
    gain = np.where(
        (under >= growth.leaf) & (over >= growth.leaf),
        sums**2 / np.maximum(under, 1) + sums**2 / np.maximum(over, 1),
        -1.0,
    )
    best = int(np.argmax(gain))
    return (int(tried[best]), float(cuts[best])) if gain[best] > 0 else None


def _flat(parts: list[_Nodes]) -> dict[str, NDArray[np.generic]]:
    return in_a_row(
        [
            {
                "feature": np.array(nodes.feature, np.uint8),
                "threshold": np.array(nodes.threshold, np.float16),
                "left": np.array(nodes.left),
                "mean": np.array(nodes.mean, np.float16),
                "spread": np.array(nodes.spread, np.float16),
            }
            for nodes in parts
        ]
    )


def in_a_row(parts: Sequence[Mapping[str, NDArray[np.generic]]]) -> dict[str, NDArray[np.generic]]:
    """Trees one behind the other, as `FlatTrees` reads them.

    Args:
        parts: of each tree `left`, counted from its own first node, and any other arrays with a
            value for each node.

    Returns:
        The same arrays, with `root`; `left` in as few bits as hold the last node.
    """
    sizes = [len(part["left"]) for part in parts]
    starts = np.cumsum([0, *sizes[:-1]])
    lefts = [part["left"].astype(np.int64) for part in parts]
    left = [np.where(own > 0, own + start, 0) for own, start in zip(lefts, starts, strict=True)]
    narrow = sum(sizes) <= np.iinfo(np.uint16).max
    return {
        name: np.concatenate([part[name] for part in parts]) for name in parts[0] if name != "left"
    } | {
        "root": starts.astype(np.int32),
        "left": np.concatenate(left).astype(np.uint16 if narrow else np.uint32),
    }
