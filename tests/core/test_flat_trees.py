"""Trees as flat arrays: those that come with the code hang together, however many there are."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

import core.frame
from core.frame import sight_kinds
from core.frame.flat_trees import FlatTrees
from tests.training.trees import in_a_row

#: All trained numbers but those of the straight fit, which has no trees.
NUMBERS = [
    path
    for path in sorted(Path(core.frame.__file__).parent.glob("*_numbers.npz"))
    if path.name != sight_kinds.NUMBERS.name
]


def children(trees: FlatTrees) -> None:
    """Each left child stands behind its parent and inside the same tree."""
    ends = np.append(trees.root[1:], len(trees.left))
    tree = np.searchsorted(trees.root, np.arange(len(trees.left)), side="right") - 1
    parents = np.flatnonzero(trees.left)
    left = trees.left[parents]
    assert (left > parents).all()
    assert (left + 1 < ends[tree[parents]]).all()


@pytest.mark.parametrize("path", NUMBERS, ids=lambda path: path.stem)
def test_the_trees_that_come_with_the_code(path: Path) -> None:
    """No child points into another tree, as too few bits for its place would make it."""
    with np.load(path) as arrays:
        names = [name for name in arrays.files if name.split("_")[-1] == "left"]
        assert names
        for name in names:
            prefix = name.removesuffix("left")
            parts = ("root", "feature", "threshold", "left")
            children(FlatTrees.of({part: arrays[prefix + part] for part in parts}))


def test_many_trees_in_a_row() -> None:
    """Beyond 65,535 nodes the places take more bits; each row still ends in its own tree."""
    tree: dict[str, NDArray[np.generic]] = {
        "feature": np.zeros(3, np.uint8),
        "threshold": np.array([0.5, 0, 0], np.float16),
        "left": np.array([1, 0, 0]),
    }
    trees = FlatTrees.of(in_a_row([tree] * 30_000))
    children(trees)
    leaves = trees.leaves(np.array([[0.0], [1.0]]))
    assert (leaves == trees.root + np.array([[1], [2]])).all()
