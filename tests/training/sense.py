"""Train how much a message sounds of danger by its sense: `python -m tests.training.sense`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray
from sklearn.neural_network import MLPClassifier

from bot.dialogue.danger.sense import LENGTH, Hunch
from bot.dialogue.sense import seen_from, senses_of
from tests.training.danger import NUMBERS as _WEIGHTS
from tests.training.danger import Message, messages
from tests.training.ingredients import fingerprint

NUMBERS: Final = _WEIGHTS.with_name("sense.npz")
#: Networks that start otherwise and are taken together, and the hidden values of each (own rules,
#: as those below: from strangers' files that were left out in turn).
_STARTS: Final = (0, 1, 2)
_HIDDEN: Final = 256
#: The pull of weights towards zero.
_PULL: Final = 1e-2
_ROUNDS: Final = 12
_STEPS: Final = 127


def ingredients(found: Sequence[Message]) -> str:
    """The fingerprint of what the network hangs on, beside the encoder: messages and constants."""
    return fingerprint(found, (_STARTS, _HIDDEN, _PULL, _ROUNDS, _STEPS))


def fitted(found: Sequence[Message], senses: NDArray[np.float32]) -> Hunch:
    """Networks of one hidden layer that tell messages of danger from others, as one network.

    Args:
        found: the messages.
        senses: of each, shape (n, 512), as `senses_of` gives them.
    """
    middle = senses.mean(axis=0)
    seen = LENGTH * seen_from(middle, senses)
    dangers = np.array([bool(message.kind) for message in found])
    networks = [_network(start, seen, dangers) for start in _STARTS]
    return Hunch(
        middle,
        np.hstack([network.coefs_[0] for network in networks]),
        np.hstack([network.intercepts_[0] for network in networks]),
        np.hstack([network.coefs_[1][:, 0] / np.float32(len(networks)) for network in networks]),
        float(np.mean([network.intercepts_[1] for network in networks])),
    )


def _network(start: int, seen: NDArray[np.float32], dangers: NDArray[np.bool_]) -> MLPClassifier:
    """A network after so many rounds: later ones would learn the messages by heart."""
    network = MLPClassifier((_HIDDEN,), alpha=_PULL, random_state=start)
    for _ in range(_ROUNDS):
        network.partial_fit(seen, dangers, classes=[False, True])
    return network


def main() -> None:
    """Fit and write, the largest table in steps."""
    found = messages()
    hunch = fitted(found, senses_of([message.text for message in found]))
    step = np.float32(np.abs(hunch.inner).max() / _STEPS)
    in_steps = np.rint(hunch.inner / step).astype(np.int8)
    named = {
        **vars(hunch),
        "inner": in_steps,
        "step": step,
        "learned_from": np.array(ingredients(found)),
    }
    np.savez_compressed(NUMBERS, **named)


if __name__ == "__main__":
    main()
