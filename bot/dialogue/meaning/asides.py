"""What a message is beside facts and questions: a goodbye, a pause, good news, assent."""

from __future__ import annotations

import re
from enum import Enum
from functools import lru_cache
from typing import Final

from bot.dialogue.reading.phrases import exactly
from bot.dialogue.tongues import in_any, whole_words


class Aside(Enum):
    """The kinds, in the order in which they are looked for."""

    BYE = "bye"
    WAIT = "wait"
    THANKS = "thanks"
    PRAISE = "praise"
    ASSENT = "assent"


_BYE: Final = whole_words("asides.bye")
_WAIT: Final = whole_words("asides.wait")
_PRAISE: Final = whole_words("asides.praise")
#: What takes praise back, or wants something else beside it.
_NOT_GOOD: Final = whole_words("asides.not_good")
_OK: Final = in_any("asides.ok")
_ASSENT: Final = exactly(rf"{_OK}(?:\W+{_OK})*")
_STAYS: Final = whole_words("asides.stays")
_NO_WAIT: Final = whole_words("asides.no_wait")
_YES_OR_NO: Final = exactly("yes|yeah|yep")
_THANKS: Final = whole_words("asides.thanks")
#: More words than these are no goodbye or assent by the way (own rule).
_MOST_WORDS: Final = 24


@lru_cache(maxsize=8)
def aside_of(text: str) -> Aside | None:
    """What a message is that neither asks nor tells anything of the frame; None for the rest.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = _plain(text)
    if "?" in said or len(said.split()) > _MOST_WORDS:
        return None
    if _BYE.search(said):
        return Aside.BYE
    if _WAIT.search(said) and not _NO_WAIT.search(said):
        return Aside.THANKS if _THANKS.search(said) else Aside.WAIT
    if praises(text):
        return Aside.THANKS if _THANKS.search(said) else Aside.PRAISE
    return Aside.ASSENT if _agrees(said) else None


def _agrees(said: str) -> bool:
    """Assent to what was advised; a bare yes or no answers a question, or fails to."""
    agrees = _ASSENT.match(said) or _STAYS.match(said)
    return agrees is not None and not _YES_OR_NO.match(said)


def praises(text: str) -> bool:
    """Whether a message calls a frame, or what is seen in it, good, and nothing else."""
    said = _plain(text)
    found = _PRAISE.search(said)
    if found is None or "?" in said:
        return False
    return _NOT_GOOD.search(said[: found.start()] + " " + said[found.end() :]) is None


_OFF: Final = whole_words("asides.took_off")


def took_off(text: str) -> bool:
    """Whether a message says that the filter, without its name, is off now."""
    return _OFF.search(_plain(text)) is not None


def _plain(text: str) -> str:
    return " ".join(re.sub(r"[’`]", "'", text.casefold()).split()).strip(" .!")
