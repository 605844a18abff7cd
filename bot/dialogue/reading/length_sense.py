"""Which length each number is, weighed by all words around it: what no known wording tells."""

from __future__ import annotations

import math
from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.reading.length_candidates import Candidate, candidates_in
from bot.dialogue.reading.length_features import features_of, number_of, words_beside
from bot.dialogue.reading.numbers import Quantity

#: What a number may be, and the slot that it fills; the last one is any other number.
KINDS: Final = ("height", "distance", "near", "section", "other")
SLOTS: Final = dict(
    zip(
        ("fall_height_m", "distance_m", "nearest_m", "section_height_m"),
        range(len(KINDS) - 1),
        strict=True,
    )
)
#: What the open question asks for alone, or first where one number comes, is told so many times as
#: often (own rule).
_ASKED_FOR: Final = 10.0
_LIKELY: Final = 0.5
#: Fewer words beside the numbers say nothing of them (own rule).
_FEW: Final = 2
#: Nothing stands before the first.
FIRST: Final = "none"


@dataclass(frozen=True)
class Weights:
    """What `python -m tests.training.lengths` has learned: a multinomial logistic regression.

    Source: Hastie, Tibshirani & Friedman, The Elements of Statistical Learning, ch. 4.4; numbers
    one after the other, each with what the one before it is taken for, as in McCallum, Freitag &
    Pereira (2000), "Maximum entropy Markov models"; from memory.

    Args:
        bias: of each kind; shape (kinds,).
        scores: what each feature adds to each kind, in steps; shape (`PLACES`, kinds).
        step: the size of one step.
        known: numbers of the words that were learned from.
    """

    bias: NDArray[np.float32]
    scores: NDArray[np.int8]
    step: float
    known: frozenset[int]

    def shares(self, text: str, candidates: Sequence[Candidate]) -> NDArray[np.float32]:
        """How likely each candidate is of each kind; shape (candidates, kinds), rows sum to 1."""
        found = np.zeros((len(candidates), len(KINDS)), np.float32)
        before = FIRST
        for place, features in enumerate(features_of(text, candidates, self.known)):
            numbers = [number_of(name) for name in {*features, f"before {before}"}]
            score = self.bias + self.step * self.scores[numbers].sum(axis=0, dtype=np.float32)
            odds = np.exp(score - score.max())
            found[place] = odds / odds.sum()
            before = KINDS[int(found[place].argmax())]
        return found


@cache
def learned() -> Weights:
    """The weights that come with the code."""
    with files(__package__).joinpath("lengths.npz").open("rb") as stored, np.load(stored) as named:
        return Weights(
            named["bias"],
            named["scores"],
            float(named["step"]),
            frozenset(named["known"].tolist()),
        )


@dataclass(frozen=True)
class Sensed:
    """The candidates of a message, and how likely each is of each kind.

    Args:
        candidates: in their order.
        shares: shape (candidates, kinds).
    """

    candidates: Sequence[Candidate]
    shares: NDArray[np.float32]

    def has_words(self, text: str) -> bool:
        """Whether more is said than numbers: "10 and 14" has nothing to weigh."""
        return len(words_beside(text, self.candidates)) >= _FEW

    def is_another(self, slot: str, quantity: Quantity, least: float) -> bool:
        """Whether a number is so likely of another kind than this slot takes.

        Not where another number, as long, is likely of the slot: "keep 15 m off, so 15 m".
        """
        place = self._place_of(quantity)
        kind = SLOTS[slot]
        if place is None or np.delete(self.shares[place], kind).max() < least:
            return False
        length = self.candidates[place].metres
        return not any(
            self.shares[n, kind] >= _LIKELY and math.isclose(one.metres, length)
            for n, one in enumerate(self.candidates)
        )

    def _place_of(self, quantity: Quantity) -> int | None:
        found = (n for n, one in enumerate(self.candidates) if one.quantity == quantity)
        return next(found, None)

    def likeliest(self) -> list[tuple[float, Candidate, str]]:
        """How likely each candidate fills each slot, the surest first."""
        found = [
            (float(self.shares[place, kind]), place, slot)
            for place in range(len(self.candidates))
            for slot, kind in SLOTS.items()
        ]
        return [(share, self.candidates[n], slot) for share, n, slot in sorted(found, reverse=True)]


def sensed(
    text: str, quantities: Sequence[Quantity], expecting: AbstractSet[str] = frozenset()
) -> Sensed:
    """Weigh all numbers of a message that may be lengths.

    Args:
        text: of the draft.
        quantities: all its numbers.
        expecting: slots that the open question asks for.
    """
    candidates = candidates_in(text, quantities)
    shares = learned().shares(text, candidates)
    asked = [kind for slot, kind in SLOTS.items() if slot in expecting]
    if asked and (len(asked) == 1 or len(candidates) == 1):
        shares[:, asked[0]] *= _ASKED_FOR
        shares /= shares.sum(axis=1, keepdims=True)
    return Sensed(candidates, shares)
