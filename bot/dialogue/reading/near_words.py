"""The known word that a token is one letter off from."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Final

from bot.dialogue.one_letter import cuts

#: Shorter words are found by two letters in the other order, or one held too long, alone.
_SHORTEST: Final = 5


def _is_turned(token: str, word: str) -> bool:
    """Whether two neighbours stand in the other order."""
    return len(token) == len(word) and any(
        word[:at] + word[at + 1] + word[at] + word[at + 2 :] == token for at in range(len(word) - 1)
    )


def _is_held(token: str, word: str) -> bool:
    """Whether a letter stands twice."""
    return len(token) == len(word) + 1 and any(
        word[: at + 1] + word[at:] == token for at in range(len(word))
    )


class NearWords:
    """Finds words that differ in one letter: one too many, one missing, one other, two turned.

    Args:
        words: that are known, in lower case; of two that are as near the earlier one is taken.
        others: words of their own that are one letter off from them, and stay what they are.
    """

    def __init__(self, words: Collection[str], others: Collection[str]) -> None:
        found: dict[str, tuple[str, ...]] = {}
        for word in words:
            for cut in dict.fromkeys(cuts(word)):
                found[cut] = (*found.get(cut, ()), word)
        self._cuts: Final[Mapping[str, tuple[str, ...]]] = found
        self._places: Final[Mapping[str, int]] = {word: at for at, word in enumerate(words)}
        self.others: Final = frozenset(others)

    def knows(self, token: str) -> bool:
        """Whether a token is a word already."""
        return token in self._places or token in self.others

    def of(self, token: str) -> str:
        """The word with the same first letter that is nearest, or the token itself."""
        near = {word for cut in cuts(token) for word in self._cuts.get(cut, ())}
        ranked = [
            (self._how(token, word), self._places[word], word)
            for word in near
            if word[0] == token[0]
        ]
        best = min((rank for rank in ranked if rank[0] is not None), default=None)
        return token if best is None else best[2]

    def _how(self, token: str, word: str) -> int | None:
        """How likely a slip is: the fewer the likelier; None for a short word that is another."""
        if _is_turned(token, word) or _is_held(token, word):
            return 0
        if len(word) < _SHORTEST:
            return None
        if len(token) != len(word):
            return 1
        return 2 if sum(map(str.__ne__, token, word)) <= 1 else None
