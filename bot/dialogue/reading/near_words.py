"""The known word that a token is one letter off from."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Final


def _cuts(word: str) -> set[str]:
    """The word and what is left of it without one of its letters."""
    return {word} | {word[:at] + word[at + 1 :] for at in range(len(word))}


class NearWords:
    """Finds words that differ in one letter: one too many, one missing, one other, two turned.

    Args:
        words: that are known, in lower case.
    """

    def __init__(self, words: Collection[str]) -> None:
        cuts: dict[str, tuple[str, ...]] = {}
        for word in sorted(words):
            for cut in _cuts(word):
                cuts[cut] = (*cuts.get(cut, ()), word)
        self._cuts: Final[Mapping[str, tuple[str, ...]]] = cuts

    def of(self, token: str) -> str:
        """The known word with the same first letter, or the token itself."""
        near = (word for cut in sorted(_cuts(token)) for word in self._cuts.get(cut, ()))
        return next((word for word in near if word[0] == token[0]), token)
