"""Trees with cuts drawn at random, grown with numpy alone: they grow alike anywhere."""

from __future__ import annotations

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
    sizes = [len(nodes.feature) for nodes in parts]
    root = np.concatenate([[0], np.cumsum(sizes)[:-1]]).astype(np.int32)
    left = [
        np.where(np.array(nodes.left) > 0, np.array(nodes.left) + start, 0)
        for nodes, start in zip(parts, root, strict=True)
    ]
    return {
        "root": root,
        "feature": np.concatenate([nodes.feature for nodes in parts]).astype(np.uint8),
        "threshold": np.concatenate([nodes.threshold for nodes in parts]).astype(np.float16),
        "left": np.concatenate(left).astype(np.uint16 if sum(sizes) < 2**16 else np.uint32),
        "mean": np.concatenate([nodes.mean for nodes in parts]).astype(np.float16),
        "spread": np.concatenate([nodes.spread for nodes in parts]).astype(np.float16),
    }
