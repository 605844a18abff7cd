"""How likely a message tells of danger, and of which, by its cues, words and pieces of words."""

from __future__ import annotations

import zlib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final, NamedTuple

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.danger.kinds import DangerKind

#: Features are kept by number, not by name: so many numbers, of which those trained on fill two in
#: five. Two features that share one are told apart by the others (own rule).
PLACES: Final = 2**17

#: Of about three words (own rule).
_LEAST_LENGTH: Final = 35.0


class Likely(NamedTuple):
    """What a message sounds like.

    Args:
        odds: log odds that it tells of danger; 0 is as likely as not among the trained ones.
        kind: the likeliest kind if it does.
        part: how much of the likelihood of danger is of that kind, 0 to 1.
    """

    odds: float
    kind: DangerKind
    part: float


@dataclass(frozen=True)
class Weights:
    """What `python -m tests.training.danger` has learned.

    Args:
        kinds: the kinds of danger, in the order of the columns after the first.
        bias: score of a message without any known feature; shape (1 + kinds,), no danger first.
        scores: what each feature adds to each score, in steps; shape (`PLACES`, 1 + kinds).
        step: the size of one step.
        rarity: how rare a feature is among the trained messages, 0 where it is in none; shape
            (`PLACES`,). Source: inverse document frequency (Manning, Raghavan and Schütze,
            Introduction to Information Retrieval, ch. 6; from memory).
    """

    kinds: tuple[DangerKind, ...]
    bias: NDArray[np.float64]
    scores: NDArray[np.int8]
    step: float
    rarity: NDArray[np.float32]

    def likely(self, features: Iterable[str]) -> Likely:
        """What a message with these features sounds like; its length does not matter."""
        places = places_of(features)
        rarity = self.rarity[places]
        weighed = rarity / length_of(np.array(np.linalg.norm(rarity)))
        score = self.bias + weighed @ self.scores[places].astype(np.float64) * self.step
        of_danger = np.logaddexp.reduce(score[1:])
        likeliest = int(np.argmax(score[1:]))
        part = float(np.exp(score[1 + likeliest] - of_danger))
        return Likely(float(of_danger - score[0]), self.kinds[likeliest], part)


def length_of(norm: NDArray[np.float64]) -> NDArray[np.float64]:
    """What the rarities of a message are divided by, so that long ones weigh no more than short.

    Args:
        norm: root of the sum of their squares, of one message or of several.

    Returns:
        The same, but no less than that of about three words: one alone proves little.
    """
    return np.maximum(norm, _LEAST_LENGTH)


def places_of(features: Iterable[str]) -> NDArray[np.intp]:
    """The numbers that features are kept by, in rising order, each once."""
    numbers = {zlib.crc32(feature.encode()) % PLACES for feature in features}
    return np.array(sorted(numbers), dtype=np.intp)


@cache
def trained() -> Weights:
    """The weights that come with the code."""
    with files(__package__).joinpath("weights.npz").open("rb") as stored, np.load(stored) as named:
        return Weights(
            tuple(map(DangerKind, named["kinds"].tolist())),
            named["bias"],
            named["scores"],
            float(named["step"]),
            named["rarity"],
        )
