"""How near a message is to the sights of each cause of a frame that went wrong."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings
from bot.dialogue.meaning.said import Said, in_both
from bot.dialogue.meaning.sensed import nearness_to

#: The label of what tells of no frame.
TALK: Final = "talk"


def all_examples(language: str = "en") -> Mapping[str, tuple[str, ...]]:
    """Wordings of the sights of each cause, and talk; beside another language's, English."""
    small_talk = in_both(("small_talk",), language)
    talk = tuple(text for texts in small_talk.values() for text in texts)
    return {**in_both(("sights",), language), TALK: talk}


@cache
def model() -> Meanings:
    """The model of the words of all sights and of small talk, learnt when it is first asked."""
    return Meanings(all_examples())


@lru_cache(maxsize=8)
def nearness(said: Said) -> Mapping[str, float]:
    """How near a message is to the sights of each cause, and to `talk` of other things."""
    return nearness_to(said, "sights", model)


def nearest(said: Said) -> tuple[str, float]:
    """The cause whose sights are nearest, or `talk`, however far, and its nearness."""
    return max(nearness(said).items(), key=lambda pair: pair[1])
