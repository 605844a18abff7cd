"""Whose a frame is, by the words with it: somebody else's, or out of a book or the web."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any, whole_words

_THEIRS: Final = whole_words("frame_owner.theirs")
_OF_A_FRAME: Final = whole_words("frame_owner.of_a_frame")
#: Kit that is lent is used all the same.
_LENT: Final = re.compile(
    rf"\b{in_any('frame_owner.lent')} (?:\w+ )?{in_any('frame_owner.lent_from')}\b[^,.;]*"
)
_OF_THE_LAST: Final = re.compile(
    r"\W*(?:sorry|oh|oops|no|wait|btw|by the way|um|ah)?\W*"
    rf"{in_any('frame_owner.the_last')}\b"
)


def is_theirs(text: str) -> bool:
    """Whether words with a frame say that somebody else took it.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _THEIRS.search(_LENT.sub("", plain(text))) is not None


def tells_whose(text: str) -> bool:
    """Whether a message of its own says of a frame that it is somebody else's."""
    said = plain(text)
    if "?" in said or re.search(r"\d", said):
        return False
    return is_theirs(said) and _OF_A_FRAME.search(said) is not None


def is_of_the_last(text: str) -> bool:
    """Whether such a message speaks of the frame before it, not of one to come."""
    return _OF_THE_LAST.match(plain(text)) is not None and "here" not in text.casefold()
