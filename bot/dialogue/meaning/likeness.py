"""Which of some labels a message means: by its likeness to examples, in sense and in words."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.meaning.pieces import places_of
from bot.dialogue.sense import seen_from, sense_of

#: The label of what tells facts and asks nothing, in the tables of topics and sights.
TOLD: Final = "told"
#: How fast likeness of sense fades: exp(-WIDTH |a - b|²) (own rule, on writers left out in turn).
WIDTH: Final = 1.0
#: How much likeness in words and pieces counts beside that of sense (own rule, as above).
OF_WORDS: Final = 0.5
#: Numbers are kept in so many steps to either side.
STEPS: Final = 127


def likeness(rows: NDArray[np.float32], others: NDArray[np.float32]) -> NDArray[np.float32]:
    """How like each sense is to each other one: 1 for the same.

    Args:
        rows: senses of length 1; shape (n, depth).
        others: senses of length 1; shape (..., depth).

    Returns:
        Shape (..., n).
    """
    like: NDArray[np.float32] = np.exp(2 * np.float32(WIDTH) * (others @ rows.T - 1))
    return like


@dataclass(frozen=True)
class Stepped:
    """An array that is kept in whole steps, so that its file stays small.

    Args:
        steps: the values, each divided by the step; any shape.
        step: size of one step.
    """

    steps: NDArray[np.int8]
    step: np.float32

    @classmethod
    def of(cls, values: NDArray[np.float32]) -> Stepped:
        """Values rounded to a part in 127 of the largest."""
        step = np.float32(
            max(float(np.abs(values).max()), float(np.finfo(np.float32).tiny)) / STEPS
        )
        return cls(np.rint(values / step).astype(np.int8), step)

    def values(self) -> NDArray[np.float32]:
        """The rounded values."""
        rounded: NDArray[np.float32] = self.steps.astype(np.float32) * self.step
        return rounded


@dataclass(frozen=True)
class Axes:
    """How a sense is looked at: from the middle of all examples, along what tells them apart.

    Args:
        middle: mean sense of the examples; shape (512,).
        along: directions in which they differ most; shape (512, depth).
            Source: principal components (Jolliffe, Principal Component Analysis; from memory).
    """

    middle: NDArray[np.float32]
    along: NDArray[np.float32]

    def seen(self, senses: NDArray[np.float32]) -> NDArray[np.float32]:
        """Senses along these axes.

        Args:
            senses: shape (..., 512).

        Returns:
            Shape (..., depth), each of length 1.
        """
        return seen_from(
            np.zeros(self.along.shape[1], np.float32), seen_from(self.middle, senses) @ self.along
        )


@dataclass(frozen=True)
class Likeness:
    """What `python -m tests.training.meanings` has learned from a table of examples.

    One regularised least-squares fit for each label, on how like the examples are to each other.
    Source: Rifkin, Yeo & Poggio (2003), "Regularized least-squares classification"; weights of
        words by Sparck Jones (1972), "A statistical interpretation of term specificity"; from
        memory.

    Args:
        labels: what may be meant.
        axes: how senses are looked at.
        examples: the senses of the examples along the axes; shape (examples, depth).
        weights: what likeness to each example adds to each label; shape (examples, labels).
        rarity: how rare a feature of words is among the examples; shape (`PLACES`,).
        words: what each feature adds to each label; shape (`PLACES`, labels).
    """

    labels: tuple[str, ...]
    axes: Axes
    examples: NDArray[np.float32]
    weights: NDArray[np.float32]
    rarity: NDArray[np.float32]
    words: Stepped

    def nearness(self, text: str) -> dict[str, float]:
        """How near a message is to each label: about 1 for its own examples, 0 for foreign ones."""
        scores = likeness(self.examples, self.axes.seen(sense_of(text))) @ self.weights
        places = places_of(text)
        rarity = self.rarity[places]
        length = max(float(np.linalg.norm(rarity)), float(np.finfo(np.float32).eps))
        scores += rarity / length @ self.words.steps[places].astype(np.float32) * self.words.step
        return dict(zip(self.labels, scores.tolist(), strict=True))


@cache
def learned(name: str) -> Likeness:
    """The fits that come with the code.

    Args:
        name: of a table: `topics`, `sights`, `replies`.
    """
    with (files(__package__) / f"{name}.npz").open("rb") as stored, np.load(stored) as named:
        return Likeness(
            tuple(named["labels"].tolist()),
            Axes(named["middle"], named["along"]),
            Stepped(named["examples"], named["examples_step"]).values(),
            named["weights"].astype(np.float32),
            named["rarity"],
            Stepped(named["words"], named["words_step"]),
        )


def nearest_of(nearness: Mapping[str, float]) -> tuple[str, float]:
    """The nearest label, however far, and its nearness."""
    return max(nearness.items(), key=lambda pair: pair[1])
