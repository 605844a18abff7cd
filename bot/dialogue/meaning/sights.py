"""How near a message is to the sights of each cause of a frame that went wrong."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Final

from bot.dialogue.meaning.likeness import TOLD, learned, nearest_of
from bot.dialogue.meaning.said import Said

#: The label of what tells of no frame.
TALK: Final = "talk"
#: What is no sight of a frame.
NO_FRAME: Final = frozenset({TALK, TOLD})


@lru_cache(maxsize=8)
def nearness(said: Said) -> Mapping[str, float]:
    """How near a message is to the sights of each cause, and to `talk` of other things."""
    return learned("sights").nearness(said.own)


def nearest(said: Said) -> tuple[str, float]:
    """The cause whose sights are nearest, or `talk`, however far, and its nearness."""
    return nearest_of(nearness(said))
