"""Bare numbers that the next words put right: `12, no, 15 m` is `15 m`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.putting_right import BACK

_UNIT: Final = r"(?:m|cm|met(?:er|re)s?|ft|feet|foot|yards?|yds?|km|miles?)"
#: "12, no, 15 m high", "5, wait, 6": a bare number right before its correction.
_TAKEN_BACK: Final = re.compile(
    rf"(?<![\w./,+-])\d{{1,4}}(?:\.\d)?(?: ?{_UNIT})?[,;. -]+(?:\b{BACK}\b[,;. -]*)+"
    rf"(?=\d+(?:\.\d+)? ?{_UNIT}\b)"
    rf"|^\d{{1,4}}(?:\.\d)?[,;. -]+(?:\b{BACK}\b[,;. -]*)+(?=\d+(?:\.\d+)?\W*$)"
)


def without_taken_back(text: str) -> str:
    """The message without bare numbers that are put right at once: `12, no, 15 m` is `15 m`.

    Args:
        text: a message in lower case, its numbers in digits.
    """
    return _TAKEN_BACK.sub("", text)
