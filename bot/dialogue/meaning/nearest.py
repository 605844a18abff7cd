"""Which of some labels a message means, learnt from examples of each: a small linear model."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.meaning.words import features, stem, tokens

#: How much the model distrusts its examples (own rule, on our own examples left out in turn).
_RIDGE: Final = 1.0
#: Weight of an idea beside that of a plain word (own rule, as above).
_IDEA: Final = 1.3


class Meanings:
    """Learns from examples once and for all; says how near a message is to each label.

    Weighted words and ideas, one regularised least-squares fit for each label.
    Source: Rifkin, Yeo & Poggio (2003), "Regularized least-squares classification"; weights
        by Sparck Jones (1972), "A statistical interpretation of term specificity"; from memory.

    Args:
        examples: wordings by label.
    """

    def __init__(self, examples: Mapping[str, Sequence[str]]) -> None:
        self.labels: Final = tuple(examples)
        said = [(label, text) for label, texts in examples.items() for text in texts]
        bags = [Counter(features(text)) for _, text in said]
        counts = Counter(word for bag in bags for word in bag)
        self._column = {word: number for number, word in enumerate(sorted(counts))}
        self._rarity = {word: math.log(1 + len(bags) / counts[word]) for word in counts}
        self._known = frozenset(stem(word) for _, text in said for word in tokens(text))
        rows = np.stack([self._vector(bag) for bag in bags])
        truth = np.array([[label == own for label in self.labels] for own, _ in said], float)
        inner = rows @ rows.T + _RIDGE * np.eye(len(rows))
        self._weights: NDArray[np.float64] = rows.T @ np.linalg.solve(inner, truth)

    def nearness(self, text: str) -> dict[str, float]:
        """How near a message is to each label: about 1 for its own examples, 0 for foreign ones."""
        bag = Counter(features(text, self._known))
        scores = self._vector(bag) @ self._weights
        return dict(zip(self.labels, scores.tolist(), strict=True))

    def _vector(self, bag: Mapping[str, int]) -> NDArray[np.float64]:
        vector = np.zeros(len(self._column))
        unknown = 0.0
        for word in bag:
            weight = _IDEA if word.startswith("=") else 1.0
            if word in self._column:
                vector[self._column[word]] = weight * self._rarity[word]
            else:
                unknown += weight * weight
        length = math.sqrt(float(vector @ vector) + unknown)
        return vector / length if length else vector


def both(by_words: Mapping[str, float], by_sense: Mapping[str, float]) -> dict[str, float]:
    """The mean of two nearnesses to the same labels: words name things, the sense joins them."""
    return {label: (near + by_sense[label]) / 2 for label, near in by_words.items()}
