"""Which of some labels a message means by its sense as a whole, learnt from examples of each."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.meaning.nearest import Meanings, both
from bot.dialogue.meaning.said import OWN_TABLES, Said, table_of
from bot.dialogue.sense import seen_from, sense_of

#: How fast likeness fades: exp(-WIDTH |a - b|²) (own rule, on the examples left out in turn).
WIDTH: Final = 1.0
#: Steps in which the senses of examples are kept, up to the largest of them.
STEPS: Final = 127


def likeness(rows: NDArray[np.float32], others: NDArray[np.float32]) -> NDArray[np.float32]:
    """How like each sense is to each other one: 1 for the same.

    Args:
        rows: senses of length 1; shape (n, 512).
        others: senses of length 1; shape (..., 512).

    Returns:
        Shape (..., n).
    """
    like: NDArray[np.float32] = np.exp(2 * np.float32(WIDTH) * (others @ rows.T - 1))
    return like


@dataclass(frozen=True)
class Sensed:
    """What `python -m tests.training.meanings` has learned from a table of examples.

    Args:
        labels: what may be meant.
        middle: mean sense of the examples; shape (512,).
        examples: their senses, seen from the middle; shape (examples, 512).
        weights: one regularised least-squares fit for each label; shape (examples, labels).
    """

    labels: tuple[str, ...]
    middle: NDArray[np.float32]
    examples: NDArray[np.float32]
    weights: NDArray[np.float32]

    def nearness(self, text: str) -> dict[str, float]:
        """How near a message is to each label: about 1 for its own examples, 0 for foreign ones."""
        scores = likeness(self.examples, seen_from(self.middle, sense_of(text))) @ self.weights
        return dict(zip(self.labels, scores.tolist(), strict=True))


@cache
def learned(name: str) -> Sensed:
    """The fits that come with the code.

    Args:
        name: of a table: `topics`, `sights`, `topics_de` …
    """
    with (files(__package__) / f"{name}.npz").open("rb") as stored, np.load(stored) as named:
        return Sensed(
            tuple(named["labels"].tolist()),
            named["middle"],
            named["examples"].astype(np.float32) * named["step"],
            named["weights"].astype(np.float32),
        )


def nearness_to(said: Said, name: str, by_words: Callable[[], Meanings]) -> dict[str, float]:
    """How near a message is to each label of a table, by its sense.

    In English by its words, too; in other languages they made it worse (examples left out in
    turn: 73 % of them right, and 79 % by the sense alone).

    Args:
        said: the message.
        name: of the English table.
        by_words: the model of the words of the English table.
    """
    by_sense = learned(table_of(name, said.language)).nearness(said.own)
    if said.language in OWN_TABLES:
        return by_sense
    return both(by_words().nearness(said.own), by_sense)
