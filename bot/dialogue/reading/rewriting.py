"""A text rewritten by a list of rules in their order; those it can't hold are not tried."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from typing import Final

from bot.dialogue.reading.needed import needed_by, pieces_of

#: A wording and what stands for it.
Rule = tuple[re.Pattern[str], str | Callable[[re.Match[str]], str]]


def _as_it_is(text: str) -> str:
    return text


class Rewriting:
    """Rules that are laid over a text one after the other.

    Args:
        rules: in their order.
        tidied: what is done with the text after each rule, and before the first.
    """

    def __init__(self, rules: Iterable[Rule], tidied: Callable[[str], str] = _as_it_is) -> None:
        self._rules: Final = [(needed_by(rule[0]), *rule) for rule in rules]
        self._tidied: Final = tidied

    def of(self, text: str) -> str:
        """The text after all rules."""
        text = self._tidied(text)
        pieces = pieces_of(text)
        for needed, pattern, said in self._rules:
            if needed and needed.isdisjoint(pieces):
                continue
            new = pattern.sub(said, text)
            if new != text:
                text = self._tidied(new)
                pieces = pieces_of(text)
        return text
