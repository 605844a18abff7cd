"""Train which topic or sight a message means by its sense: `python -m tests.training.meanings`."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import partial
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.said import OWN_TABLES, table_of
from bot.dialogue.meaning.sensed import STEPS, Sensed, likeness
from bot.dialogue.sense import seen_from, senses_of

_FOLDER: Final = Path(__file__).parents[2] / "bot" / "dialogue" / "meaning"
#: The tables that are learned from, by the name of the file with what was learned.
TABLES: Final = {
    table_of(name, language): partial(examples, language)
    for name, examples in (("topics", topics.all_examples), ("sights", sights.all_examples))
    for language in ("en", *OWN_TABLES)
}
#: How much a fit distrusts its examples (own rule, on the examples left out in turn).
_RIDGE: Final = 0.1


def fitted(examples: Mapping[str, Sequence[str]]) -> Sensed:
    """One regularised least-squares fit for each label, on the senses of all examples.

    Source: Rifkin, Yeo & Poggio (2003), "Regularized least-squares classification"; from memory.
    """
    said = [(label, text) for label, texts in examples.items() for text in texts]
    senses = senses_of([text for _, text in said])
    middle = senses.mean(axis=0)
    rows, step = in_steps(seen_from(middle, senses))
    near = rows.astype(np.float32) * step
    truth = np.array([[label == own for label in examples] for own, _ in said], float)
    like = likeness(near, near).astype(float)
    weights = np.linalg.solve(like + _RIDGE * np.eye(len(said)), truth)
    return Sensed(tuple(examples), middle, near, weights.astype(np.float32))


def in_steps(rows: NDArray[np.float32]) -> tuple[NDArray[np.int8], np.float32]:
    """Values as whole steps, so that the file stays small, and the step."""
    step = np.float32(np.abs(rows).max() / STEPS)
    return np.rint(rows / step).astype(np.int8), step


def main() -> None:
    """Fit and write, to three digits."""
    for name, examples in TABLES.items():
        found = fitted(examples())
        rows, step = in_steps(found.examples)
        np.savez_compressed(
            _FOLDER / f"{name}.npz",
            labels=np.array(found.labels),
            middle=found.middle,
            examples=rows,
            step=step,
            weights=found.weights.astype(np.float16),
        )


if __name__ == "__main__":
    main()
