"""Whether a message asks what the brown of the water means, and what it tells of it."""

from __future__ import annotations

import re
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import is_asking
from bot.dialogue.meaning.sentences import clauses_of, sentences_of
from bot.dialogue.tongues import TONGUES, in_any, whole_words

_BROWN: Final = whole_words("water_colour.brown")
_ASKED: Final = whole_words("water_colour.asked")
_SAFE: Final = whole_words("water_colour.safe")
_CLEAR: Final = whole_words("water_colour.clear")
_CLOUDY: Final = re.compile(
    rf"(?<!\bno )(?<!\bnot )(?<!\bnor )(?<!keine )(?<!\bni )(?<!\bsin )(?<!aint )(?<!isnt )"
    rf"\b{in_any('water_colour.cloudy')}\b(?! nich)"
)
_WATER: Final = whole_words("rising.water")
#: Where colours are of the picture.
_ELSE: Final = whole_words("water_colour.else", "permission.picture")


class Brown(Enum):
    """How brown water is told."""

    CLEAR = "clear"
    CLOUDY = "cloudy"
    UNTOLD = "untold"


def brown_asked(text: str) -> Brown | None:
    """What a message that asks of brown water tells of it.

    Args:
        text: as typed, in any of Linn's languages.

    Returns:
        None where brown water is not asked about, or where the colour is the picture's.
    """
    said = folded(text)
    if _BROWN.search(said) is None or _ELSE.search(said) or not _is_of_water(said):
        return None
    if not any(map(_asks, clauses_of(text))):
        return None
    if _CLOUDY.search(said):
        return Brown.CLOUDY
    return Brown.CLEAR if _CLEAR.search(said) else Brown.UNTOLD


def asks_whether_safe(text: str) -> bool:
    """Whether it is asked whether somebody may be at such water.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return any(_SAFE.search(folded(sentence)) for sentence in sentences_of(text))


def _is_of_water(said: str) -> bool:
    return _WATER.search(said) is not None or _CLEAR.search(said) is not None


def _asks(part: str) -> bool:
    """Whether a part asks for mud, or for what is normal or safe."""
    if _ASKED.search(folded(part)) is None:
        return False
    return "?" in part or any(is_asking(part.strip(), language) for language in TONGUES)
