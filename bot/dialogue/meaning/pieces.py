"""The words of a message, its neighbours and pieces of words, by number, to be compared."""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterator
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

from bot.dialogue.folding import folded

#: Features are kept by number, not by name (own rule: on a writer's messages that were left out,
#: four times as many told one message in two hundred more).
PLACES: Final = 2**15
#: Pieces of words have so many letters, a mark at each end of the word counted (common practice).
_LETTERS: Final = (3, 4, 5)
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
    for word in words:
        yield f"word {word}"
        marked = f"<{word}>"
        for letters in _LETTERS:
            for start in range(len(marked) - letters + 1):
                yield f"piece {marked[start : start + letters]}"
    for first, second in pairwise(words):
        yield f"pair {first} {second}"
