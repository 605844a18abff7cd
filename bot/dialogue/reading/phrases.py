"""Tables of wordings made into patterns: any of these, as whole words."""

from __future__ import annotations

import re
from typing import Final

_APOSTROPHES: Final = str.maketrans("’`´", "'''")


def straight(text: str) -> str:
    """A text with one apostrophe for all that are typed."""
    return text.translate(_APOSTROPHES)


def plain(text: str, ends: str = "") -> str:
    """A message as the patterns expect it: lower case, one apostrophe, single spaces.

    Args:
        text: as typed.
        ends: characters that are taken off at both ends.
    """
    return " ".join(straight(text.casefold()).split()).strip(ends)


def any_of(*wordings: str) -> re.Pattern[str]:
    """One pattern for many wordings.

    Args:
        wordings: regular expressions that begin and end with a word; each matches whole words.

    Returns:
        A pattern that finds any of them, the earliest in the message first.
    """
    return re.compile(rf"\b(?:{'|'.join(wordings)})\b")


def exactly(*wordings: str) -> re.Pattern[str]:
    """One pattern for a whole message that is one of these wordings."""
    return re.compile(rf"^(?:{'|'.join(wordings)})\W*$")
