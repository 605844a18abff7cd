"""How near a message is to the sights of each cause of a frame that went wrong."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings, both
from bot.dialogue.meaning.sensed import learned
from bot.dialogue.meaning.tables import examples

#: The label of what tells of no frame.
TALK: Final = "talk"


def all_examples() -> Mapping[str, tuple[str, ...]]:
    """Wordings of the sights of each cause, and talk of other things."""
    talk = tuple(text for texts in examples("small_talk").values() for text in texts)
    return {**examples("sights"), TALK: talk}


@cache
def model() -> Meanings:
    """The model of all sights and of small talk, learnt when it is first asked."""
    return Meanings(all_examples())


@lru_cache(maxsize=8)
def nearness(text: str) -> Mapping[str, float]:
    """How near a message is to the sights of each cause, and to `talk` of other things.

    Args:
        text: the message in English, as typed.
    """
    return both(model().nearness(text), learned("sights").nearness(text))


def nearest(text: str) -> tuple[str, float]:
    """The cause whose sights are nearest, or `talk`, however far, and its nearness."""
    return max(nearness(text).items(), key=lambda pair: pair[1])
