"""Trees of cuts as flat arrays: which leaf each row of features ends in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray


@dataclass(frozen=True)
class FlatTrees:
    """Of each tree its root; of each node its feature, threshold and left child.

    A left child of 0 is a leaf; the right child follows the left.
    """

    root: NDArray[np.int64]
    feature: NDArray[np.int64]
    threshold: NDArray[np.float32]
    left: NDArray[np.int64]

    @classmethod
    def of(cls, arrays: Mapping[str, NDArray[np.generic]]) -> FlatTrees:
        """The trees among arrays that are named as the attributes."""
        return cls(
            root=arrays["root"].astype(np.int64),
            feature=arrays["feature"].astype(np.int64),
            threshold=arrays["threshold"].astype(np.float32),
            left=arrays["left"].astype(np.int64),
        )

    def leaves(self, features: NDArray[np.floating]) -> NDArray[np.int64]:
        """The leaf of each tree in which each row ends, shape (n, trees).

        Args:
            features: shape (n, m); half precision counts, as training stores its samples.
        """
        stored = features.astype(np.float16).astype(np.float32)
        rows = np.arange(len(stored))[:, None]
        nodes = np.broadcast_to(self.root, (len(stored), len(self.root))).copy()
        while (going := self.left[nodes] > 0).any():
            right = stored[rows, self.feature[nodes]] > self.threshold[nodes]
            nodes = np.where(going, self.left[nodes] + right, nodes)
        return nodes

    def sums(
        self, value: NDArray[np.float64], features: NDArray[np.floating]
    ) -> NDArray[np.float64]:
        """What all trees together say of each row, shape (n,).

        Args:
            value: of each node, shape (nodes,).
            features: shape (n, m).
        """
        return np.asarray(value[self.leaves(features)].sum(axis=1))
