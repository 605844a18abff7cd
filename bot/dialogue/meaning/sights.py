"""How near a message is to the sights of each cause of a frame that went wrong."""

from __future__ import annotations

from functools import cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings
from bot.dialogue.meaning.tables import examples

#: The label of what tells of no frame.
TALK: Final = "talk"


@cache
def model() -> Meanings:
    """The model of all sights and of small talk, learnt when it is first asked."""
    talk = tuple(text for texts in examples("small_talk").values() for text in texts)
    return Meanings({**examples("sights"), TALK: talk})


def nearness(text: str) -> dict[str, float]:
    """How near a message is to the sights of each cause, and to `talk` of other things.

    Args:
        text: the message in English, as typed.
    """
    return model().nearness(text)


def nearest(text: str) -> tuple[str, float]:
    """The cause whose sights are nearest, or `talk`, however far, and its nearness."""
    return model().nearest(text)
