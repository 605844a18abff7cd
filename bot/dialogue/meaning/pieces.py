"""The words of a message, its neighbours and pieces of words, by number, to be compared."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from itertools import chain, pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.folding import folded
from bot.dialogue.word_pieces import pieces_of

#: Features are kept by number, not by name (own rule: on a writer's messages that were left out,
#: four times as many told one message in two hundred more).
PLACES: Final = 2**15
_NUMBER: Final = re.compile(r"\d+(?:[.,]\d+)*")
_WORD: Final = re.compile(r"[^\W_]+")


def places_of(text: str) -> NDArray[np.intp]:
    """The numbers of a message's features, in rising order, each once.

    Args:
        text: as typed, in any language; all numbers in it are one word.

    Returns:
        Numbers below `PLACES`.
    """
    words = _WORD.findall(_NUMBER.sub("0", folded(text)))
    found = {zlib.crc32(feature.encode()) % PLACES for feature in _features(words)}
    return np.array(sorted(found), dtype=np.intp)


def _features(words: list[str]) -> Iterator[str]:
    yield from (f"word {word}" for word in words)
    yield from (f"piece {piece}" for piece in chain.from_iterable(map(pieces_of, words)))
    yield from (f"pair {first} {second}" for first, second in pairwise(words))
