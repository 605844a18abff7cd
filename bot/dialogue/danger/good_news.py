"""What may stand beside "all are safe" without making it doubtful; anything else is asked about."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from bot.dialogue.tongues import single_words, whole_words

#: Words that tell of nobody's trouble, in each language. What is not among them may be a danger in
#: words that nobody thought of ("all clear, he just lies there"), and is asked about.
_KNOWN: Final = single_words("good_news.known")
#: What they came away from, and where they went themselves: who else "went" is not safe by that.
_LEFT_BEHIND: Final = whole_words("good_news.left_behind")
_WORD: Final = re.compile(r"[^\W\d_]+")


def is_only_good(rest: str, also: frozenset[str] = frozenset()) -> bool:
    """Whether what is left of a message beside its good news tells of nothing else.

    Args:
        rest: the message in plain letters, without the words that say who is safe.
        also: more words that tell of nobody's trouble there.
    """
    return set(_WORD.findall(_LEFT_BEHIND.sub(" ", rest))) <= _KNOWN | also


def without(said: str, patterns: Iterable[re.Pattern[str]]) -> str:
    """A message without what some patterns find in it."""
    for pattern in patterns:
        said = pattern.sub(" ", said)
    return said
