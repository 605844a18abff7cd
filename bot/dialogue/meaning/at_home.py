"""Whether somebody is home again, still at home, or at the water; and has frames to go through."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.arrival import says_here
from bot.dialogue.meaning.sentences import clauses_of, sentences_of
from bot.dialogue.reading.phrases import exactly, plain
from bot.dialogue.tongues import in_any, whole_words

_HOME: Final = whole_words("at_home.home")
_REVIEW: Final = whole_words("at_home.review")
_SORTS: Final = whole_words("at_home.sort")
_BRINGS: Final = whole_words("at_home.brings")
#: "I left it at home", "we are going home": said on the way, or of something else.
_NOT_YET: Final = whole_words("at_home.not_yet")
_BACK: Final = exactly(in_any("at_home.back"))
_WISHED: Final = whole_words("at_home.wished")
_STILL: Final = whole_words("at_home.still")
_AT_WATER: Final = re.compile(rf"\b{in_any('at_home.at_water')}")
_NONE_TAKEN: Final = whole_words("at_home.none_taken")
_ASKS_NOW: Final = re.compile(rf"\b{in_any('at_home.asks_now')}")
_OF_THEN: Final = whole_words("at_home.of_then")
#: What may stand around a message.
_ENDS: Final = " .!,"


def is_home(text: str) -> bool:
    """Whether a message or a caption says that the person is away from the water for the day.

    Args:
        text: as typed, in any of Linn's languages.
    """
    if is_still_home(text):
        return False
    # "Home now. Copied the card to a drive": each sentence for itself.
    said = any(_says_home(plain(one).strip(_ENDS)) for one in sentences_of(text))
    return said or (
        not _WISHED.search(plain(text))
        and any(_BACK.match(plain(one).strip(_ENDS)) for one in clauses_of(text))
    )


def _says_home(said: str) -> bool:
    return _HOME.search(said) is not None and not _NOT_YET.search(said)


def is_still_home(text: str) -> bool:
    """Whether a message says that nobody has left for the water yet."""
    return _STILL.search(plain(text)) is not None


def stands_there(text: str) -> bool:
    """Whether a message says that somebody is at the water now, whatever else it tells."""
    if is_still_home(text) or is_home(text):
        return False
    return says_here(text) or any(_is_there(plain(one, _ENDS)) for one in clauses_of(text))


def _is_there(said: str) -> bool:
    return _AT_WATER.search(said) is not None and not _OF_THEN.search(said)


def has_no_frame(text: str) -> bool:
    """Whether a message says that there is no frame to go through, or only an old one."""
    return _NONE_TAKEN.search(plain(text)) is not None


def asks_for_now(text: str) -> bool:
    """Whether a message asks for settings, focus or a lens of a frame to come."""
    said = plain(text)
    return _ASKS_NOW.search(said) is not None and not _OF_THEN.search(said)


def wants_review(text: str) -> bool:
    """Whether a message asks to go through frames that are taken."""
    said = plain(text, _ENDS)
    return _REVIEW.search(said) is not None and not _NOT_YET.search(said)


def asks_where_to_begin(text: str) -> bool:
    """Whether a message asks where to begin with frames that are to be sorted out."""
    return _SORTS.search(plain(text, _ENDS)) is not None


def brings_frame(text: str) -> bool:
    """Whether a message says that a frame comes with it or behind it."""
    return _BRINGS.search(plain(text, _ENDS)) is not None
