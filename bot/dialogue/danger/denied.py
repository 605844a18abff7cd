"""A "no" in words to whether anybody is in danger, or where nobody should stand."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger import Level, read_danger
from bot.dialogue.danger.left_open import leaves_open
from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words

_NO: Final = re.compile(rf"\W*{in_any('doubt.no')}(?!\w)", re.IGNORECASE)
_NOBODY_THERE: Final = re.compile(rf"\W*{in_any('doubt.nobody_there')}(?!\w)", re.IGNORECASE)
_ON_THE_BANK: Final = re.compile(rf"\W*{in_any('doubt.on_the_bank')}(?!\w)", re.IGNORECASE)

#: Who is left out of a "no": "everyone's on the bank but Ben's up there".
_LEFT_OUT: Final = whole_words("clauses.exception", "clauses.hedge", "doubt.left_out")


def begins_with_no(text: str) -> bool:
    """Whether a message begins with a "no" in words, and nothing in it sounds like danger.

    What was only suspected is let go by less than what was told: "nope, just the photo is bad".

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _NO.match(text) is not None and read_danger(text) is None


def nobody_is_there(text: str, *, alone: bool) -> bool:
    """Whether a message says that nobody is out there, and leaves nothing of it open.

    Args:
        text: as typed, in any of Linn's languages.
        alone: nobody but who writes went there, so that their own place tells it.
    """
    said = _NOBODY_THERE.match(text) or (alone and _ON_THE_BANK.match(text))
    if not said or _LEFT_OUT.search(folded(text[said.end() :])):
        return False
    return read_danger(text) is None and not leaves_open(text)


def tells_of_danger(text: str) -> bool:
    """Whether a danger is told outright.

    Args:
        text: as typed, in any of Linn's languages.
    """
    danger = read_danger(text)
    return danger is not None and danger.is_told


def sounds_of_danger(text: str) -> bool:
    """Whether more than a hint of danger is heard.

    Args:
        text: as typed, in any of Linn's languages.
    """
    danger = read_danger(text)
    return danger is not None and danger.level is not Level.HINT
