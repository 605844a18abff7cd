"""Whether somebody says that they are home again, or wants to go through their frames."""

from __future__ import annotations

from typing import Final

from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import whole_words

_HOME: Final = whole_words("at_home.home")
_REVIEW: Final = whole_words("at_home.review")
_BRINGS: Final = whole_words("at_home.brings")
#: "I left it at home", "we are going home": said on the way, or of something else.
_NOT_YET: Final = whole_words("at_home.not_yet")
#: "Home now. Copied the card to a drive": each sentence for itself.
#: What may stand around a message.
_ENDS: Final = " .!,"


def is_home(text: str) -> bool:
    """Whether a message or a caption says that the person is away from the water for the day.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return any(_says_home(plain(one).strip(_ENDS)) for one in sentences_of(text))


def _says_home(said: str) -> bool:
    return _HOME.search(said) is not None and not _NOT_YET.search(said)


def wants_review(text: str) -> bool:
    """Whether a message asks to go through frames that are taken."""
    said = plain(text, _ENDS)
    return _REVIEW.search(said) is not None and not _NOT_YET.search(said)


def brings_frame(text: str) -> bool:
    """Whether a message says that a frame comes with it or behind it."""
    return _BRINGS.search(plain(text, _ENDS)) is not None
