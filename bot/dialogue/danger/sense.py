"""How much a whole message sounds of danger by its sense, which other words may carry, too."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.sense import seen_from

#: No sense is taken as surer than this [log odds]: alone it never decides (own rule).
_SUREST: Final = 8.0
#: So long are the senses that the network sees: their numbers are then about 1 in size (own rule).
LENGTH: Final = 20.0


@dataclass(frozen=True)
class Hunch:
    """What `python -m tests.training.sense` has learned: a network of one hidden layer.

    Args:
        middle: mean sense of the messages that were learned from; shape (512,).
        inner: what each number of a sense adds to each hidden sum; shape (512, hidden).
        inner_bias: the hidden sums of the mean sense; shape (hidden,).
        outer: what each hidden value adds to the log odds; shape (hidden,).
        bias: the log odds without any.
    """

    middle: NDArray[np.float32]
    inner: NDArray[np.float32]
    inner_bias: NDArray[np.float32]
    outer: NDArray[np.float32]
    bias: float

    def odds(self, senses: NDArray[np.float32]) -> NDArray[np.float32]:
        """Log odds that messages tell of danger.

        Args:
            senses: as `bot.dialogue.sense.senses_of` gives them; shape (..., 512).

        Returns:
            Shape (...), -8 to 8.
        """
        hidden = LENGTH * seen_from(self.middle, senses) @ self.inner
        hidden = np.maximum(hidden + self.inner_bias, 0)
        odds = np.asarray(hidden @ self.outer + self.bias, np.float32)
        return np.clip(odds, -_SUREST, _SUREST)


@cache
def learned() -> Hunch:
    """The network that comes with the code."""
    with files(__package__).joinpath("sense.npz").open("rb") as stored, np.load(stored) as named:
        return Hunch(
            named["middle"],
            named["inner"].astype(np.float32) * named["step"],
            named["inner_bias"],
            named["outer"],
            float(named["bias"]),
        )
