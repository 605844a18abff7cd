"""Which language a message is written in, by its small words, where that is clear."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from bot.dialogue.tongues import of_each


def _words(text: str) -> frozenset[str]:
    return frozenset(re.findall(r"[^\W\d_]+(?:'[^\W\d_]+)?", text.casefold().replace("’", "'")))


#: Small words and greetings that mark a language: none is a word of another one here (own rule).
_MARKS: Final = {language: _words(said) for language, said in of_each("marks.small").items()}
#: Words of the trade, and of dialects, that no other language here has: bare facts are often all
#: that somebody writes first, "12 m hoch, 15 m weg" (own rule).
_TRADE: Final = {language: _words(said) for language, said in of_each("marks.trade").items()}
#: Greetings are enough alone.
_GREETINGS: Final = _words(" ".join(of_each("marks.greetings").values()))
#: So many different marks make it clear, as long as no other language has any (own rule).
_CLEAR: Final = 2
#: So many times the marks of another language outweigh them: "me das una mano" (own rule).
_OUTWEIGHS: Final = 3


@lru_cache(maxsize=32)  # of one message it is asked from many sides
def language_of(text: str) -> str | None:
    """The language that a message is clearly written in, by its code; None where it is not clear.

    Args:
        text: the message as typed.
    """
    words = _words(text)
    marked = {language: words & (marks | _TRADE[language]) for language, marks in _MARKS.items()}
    language, *others = sorted(marked, key=lambda one: len(marked[one]), reverse=True)
    found, beside = marked[language], len(marked[others[0]])
    if beside and len(found) < _OUTWEIGHS * beside:
        return None
    return language if len(found) >= _CLEAR or found & _GREETINGS else None
