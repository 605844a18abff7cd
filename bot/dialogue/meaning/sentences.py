"""The sentences of a message, as people end them."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import Final

from bot.dialogue.tongues import in_any, single_words

#: Behind these signs something else is said; so it is on a new line.
SENTENCE_ENDS: Final = r"(?<=[.!?;…])\s+|\n+"
_ENDS: Final = re.compile(SENTENCE_ENDS)
_NOT_OPENED: Final = "".join(rf"(?<!\b{word})" for word in sorted(single_words("clauses.opener")))
#: So do commas, colons and dashes of thoughts (a decimal comma has nothing behind it), and in
#: dictated words the beginning of a question; "how do I" begins with "how".
_CLAUSE_ENDS: Final = re.compile(
    rf"{SENTENCE_ENDS}|(?<=[,:])\s+|\s+[-\u2013\u2014]+\s+"
    rf"|{_NOT_OPENED}\s+(?={in_any('clauses.asking')}\b)",
    re.IGNORECASE,
)


def sentences_of(text: str) -> list[str]:
    """The sentences of a text, in any language; one for a text without signs."""
    return list(_split(_ENDS, text))


def without(parts: Sequence[str], is_one: Callable[[str], object]) -> str | None:
    """The parts of a message without those of one kind, joined again; None where there is none.

    Args:
        parts: its sentences or clauses.
        is_one: whether a part is of that kind.
    """
    rest = [part for part in parts if not is_one(part)]
    return None if len(rest) == len(parts) else " ".join(rest)


def clauses_of(text: str) -> list[str]:
    """The parts of a text between any signs, in any language: what is said at a time."""
    return list(_split(_CLAUSE_ENDS, text))


@lru_cache(maxsize=64)  # one message is split for each thing that it is looked through for
def _split(ends: re.Pattern[str], text: str) -> tuple[str, ...]:
    return tuple(one for one in ends.split(text) if one.strip())
