"""How likely a message tells of danger, by its cues and words together; trained weights."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import chain, pairwise
from typing import Final

from bot.dialogue.danger.folding import folded

_NUMBER: Final = re.compile(r"\d+(?:[.,]\d+)*")
_WORD: Final = re.compile(r"[^\W_]+")


@dataclass(frozen=True)
class Weights:
    """What `python -m tests.training.danger` has learned.

    Args:
        bias: log odds of a message without any feature.
        features: what each feature adds to the log odds of danger; others add nothing.
    """

    bias: float
    features: Mapping[str, float]


def features_of(text: str, pieces: Iterable[frozenset[str]]) -> frozenset[str]:
    """The features of a message.

    Args:
        text: the message; a number in it is one feature whatever its value.
        pieces: its cues, as `meaning.cues_of` gives them.

    Returns:
        "cue …", "word …" and, of neighbours, "pair … …", each once.
    """
    words = _WORD.findall(_NUMBER.sub("0", folded(text)))
    cues = (f"cue {cue}" for cue in chain.from_iterable(pieces))
    singles = (f"word {word}" for word in words)
    pairs = (f"pair {first} {second}" for first, second in pairwise(words))
    return frozenset(chain(cues, singles, pairs))


def log_odds(features: frozenset[str]) -> float:
    """Log odds that a message tells of danger; 0 is as likely as not among the trained ones."""
    weights = trained()
    return weights.bias + sum(weights.features.get(feature, 0.0) for feature in features)


@cache
def trained() -> Weights:
    """The weights that come with the code."""
    stored = json.loads(files(__package__).joinpath("weights.json").read_text("utf-8"))
    return Weights(stored["bias"], stored["features"])
