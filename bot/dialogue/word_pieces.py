"""What a word shares with its other forms, with compounds and slips of the thumb: its pieces."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

#: Pieces of words have so many letters, a mark at each end of the word counted (common practice).
_LETTERS: Final = (3, 4, 5)


def pieces_of(word: str) -> Iterator[str]:
    """All runs of three to five letters of a word with its ends marked: of "wet" "<we", "wet>".

    Args:
        word: in lower case, of letters and numbers.
    """
    marked = f"<{word}>"
    for letters in _LETTERS:
        for start in range(len(marked) - letters + 1):
            yield marked[start : start + letters]
