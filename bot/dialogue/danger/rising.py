"""Water that is browner or higher than it was: it rises, however small the difference."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.tongues import in_any, whole_words

_WATER: Final = whole_words("rising.water")
#: So many words may stand between what it is and since when (own rule).
_MORE: Final = re.compile(rf"\b{in_any('rising.more')}(?: \w+){{0,4}}? {in_any('rising.than')}\b")
_DENIED: Final = whole_words("rising.denied")
#: There colours and depths are of the picture.
_PICTURE: Final = whole_words("rising.picture", "permission.picture")


def is_rising(text: str) -> bool:
    """Whether a message says that the water is browner or higher than before.

    Args:
        text: as typed or dictated, in any of Linn's languages; what is denied, asked or supposed,
            or said of a picture, is no such thing.
    """
    return any(map(_tells, map(folded, sentences_of(text))))


def _tells(said: str) -> bool:
    found = _MORE.search(said) if _WATER.search(said) else None
    if found is None or _PICTURE.search(said):
        return False
    return _DENIED.search(said[: found.end()]) is None
