"""Light that became darker or brighter, and by how much: "it's a stop darker now"."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.folding import folded
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.numbers import scan
from bot.dialogue.reading.stops import exact_thirds
from bot.dialogue.tongues import in_any, whole_words

_OF_IT: Final = (
    rf"\b{in_any('light_changed.place')}(?:s\b)?(?: {in_any('light_changed.becomes')})* (?:{{0}})\b"
)
#: What becomes darker, where a word of time says so; the light may also be named itself.
_DARKER: Final = re.compile(_OF_IT.format(in_any("light_changed.darker")))
_BRIGHTER: Final = re.compile(_OF_IT.format(in_any("light_changed.brighter")))
_LESS: Final = whole_words("light_changed.less")
_MORE: Final = whole_words("light_changed.more")
_SINCE: Final = whole_words("light_changed.since")
_FILTER: Final = whole_words("light_changed.filter")
_OF_A_PICTURE: Final = whole_words("light_changed.picture")


class LightChange(NamedTuple):
    """What happened to the light.

    Args:
        side: 1 for brighter, -1 for darker.
        stops: by how much, above 0; None where nothing says so.
    """

    side: int
    stops: float | None


def light_change_in(typed: str, language: str) -> LightChange | None:
    """The change of light that a message tells of; None for a picture's brightness and wishes.

    Args:
        typed: the message.
        language: in which it is, by its code.
    """
    for sentence in sentences_of(typed):
        side = None if sentence.rstrip().endswith("?") else _side(folded(sentence))
        if side is not None:
            return LightChange(side, _stops_in(normalise(glossed(sentence, language))))
    return None


def is_behind_a_filter(typed: str) -> bool:
    """Whether it is darker through a filter: no light that changed, and no wish.

    Args:
        typed: the message.
    """
    text = folded(typed)
    return _FILTER.search(text) is not None and _DARKER.search(text) is not None


def _side(text: str) -> int | None:
    if _OF_A_PICTURE.search(text) or _FILTER.search(text):
        return None
    if _LESS.search(text):
        return -1
    if _MORE.search(text):
        return 1
    if not _SINCE.search(text):
        return None
    if _DARKER.search(text):
        return -1
    return 1 if _BRIGHTER.search(text) else None


def _stops_in(text: str) -> float | None:
    """The one number of stops of a sentence, as `normalise` leaves it; None for a range, or two."""
    found = [quantity for quantity in scan(text) if quantity.unit == "stop"]
    if len(found) != 1 or found[0].is_range:
        return None
    return exact_thirds(found[0].value)
