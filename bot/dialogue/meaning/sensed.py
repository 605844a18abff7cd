"""Which of some labels a message means by its sense as a whole, learnt from examples of each."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.sense import seen_from, sense_of


@dataclass(frozen=True)
class Sensed:
    """What `python -m tests.training.meanings` has learned from a table of examples.

    Args:
        labels: what may be meant.
        middle: mean sense of the examples; shape (512,).
        weights: one regularised least-squares fit for each label; shape (512, labels).
    """

    labels: tuple[str, ...]
    middle: NDArray[np.float32]
    weights: NDArray[np.float32]

    def nearness(self, text: str) -> dict[str, float]:
        """How near a message is to each label: about 1 for its own examples, 0 for foreign ones."""
        scores = seen_from(self.middle, sense_of(text)) @ self.weights
        return dict(zip(self.labels, scores.tolist(), strict=True))


@cache
def learned(name: str) -> Sensed:
    """The fits that come with the code.

    Args:
        name: `topics` or `sights`.
    """
    with (files(__package__) / f"{name}.npz").open("rb") as stored, np.load(stored) as named:
        return Sensed(
            tuple(named["labels"].tolist()),
            named["middle"],
            named["weights"].astype(np.float32),
        )
