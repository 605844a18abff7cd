"""Words that are one letter off from each other: they share what is left without that letter."""

from __future__ import annotations

from collections.abc import Iterator


def cuts(word: str) -> Iterator[str]:
    """The word itself, then what is left of it without each of its letters in turn."""
    yield word
    for at in range(len(word)):
        yield word[:at] + word[at + 1 :]
