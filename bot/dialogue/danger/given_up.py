"""Who asked for leave says that it was only asked, or that they let it be."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any

_SMALL: Final = in_any("given_up.small")
_LEFT: Final = in_any("given_up.left")
#: Each small word is taken once, whatever languages have it, so that a long run of them ends.
_GIVEN_UP: Final = re.compile(rf"(?>{_SMALL}\W+)*{_LEFT}(?>\W+(?:{_LEFT}|{_SMALL})(?!\w))*\W*")


def gives_up(text: str) -> bool:
    """Whether a message says in few words that nobody goes where leave was asked, and nothing else.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _GIVEN_UP.fullmatch(plain(text)) is not None


_WISHES: Final = re.compile(rf"(?<!\w){in_any('given_up.wishes')}(?!\w)")


def wishes(text: str) -> bool:
    """Whether a message only wishes to go somewhere, for its writer or another one.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _WISHES.search(plain(text)) is not None
