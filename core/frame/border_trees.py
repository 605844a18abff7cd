"""Trained trees that tell how likely it is that something at a border does not belong there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Final, Literal

import numpy as np
from numpy.typing import NDArray

from core.frame.border_sides import Floats
from core.frame.flat_trees import FlatTrees

#: What training writes; the tests tell how.
NUMBERS: Final = Path(__file__).with_name("border_numbers.npz")

#: There are trees for lines and cut shapes, and others for what is bright.
Topic = Literal["line", "bright"]


@dataclass(frozen=True)
class BorderTrees:
    """Trees, and what each node adds to the odds that a thing does not belong (`value`).

    Where the sum was `said`, things did not belong at a `rate`: both rise, shape (k,).
    """

    trees: FlatTrees
    value: NDArray[np.float64]
    said: NDArray[np.float64]
    rate: NDArray[np.float64]

    @classmethod
    def of(cls, arrays: Mapping[str, NDArray[np.generic]], topic: Topic) -> BorderTrees:
        """The trees of a topic among arrays whose names begin with it."""
        named = {name.removeprefix(f"{topic}_"): values for name, values in arrays.items()
                 if name.startswith(topic)}  # fmt: skip
        numbers = (named[name].astype(np.float64) for name in ("value", "said", "rate"))
        return cls(FlatTrees.of(named), *numbers)

    def confidence(self, features: Floats) -> NDArray[np.float64]:
        """How often things like these did not belong in pictures not trained on, 0 to 1.

        Features have shape (n, m).
        """
        return np.interp(self.trees.sums(self.value, features), self.said, self.rate)


@lru_cache(maxsize=2)
def trained(topic: Topic) -> BorderTrees:
    """The trees that come with the code."""
    with np.load(NUMBERS, allow_pickle=False) as arrays:
        return BorderTrees.of(dict(arrays), topic)
