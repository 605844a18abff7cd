"""Which option of the open question a reply in other words means, where words name none."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning import topics
from bot.dialogue.meaning.asking import asks_at_once
from bot.dialogue.meaning.likeness import TOLD
from bot.dialogue.meaning.options import OTHER, Meant, meant_at
from bot.dialogue.meaning.said import Said
from bot.dialogue.questions import Asked

#: An option is meant so far before all else (own rule, on writers left out in turn: of replies in
#: free words 75 in 100 are heard, 2 are taken for another, and 5 in 100 of what answers something
#: else are taken for one).
_AHEAD: Final = 0.15
#: Facts that words of an option are read as, too.
_ABOUT_OPTIONS: Final = frozenset({"blink", "wind", "symptoms", "section", "look"})
#: Topics that a reply is near to, too: what it tells of the frame.
_ABOUT_FRAME: Final = frozenset({"just_white", "sky", "edges", "histogram", "too_long", "leaves"})
#: Questions that hear the same replies as another.
_LIKE: Final = {
    "blink_again": "blink",
    "screen_says": "blink",
    "light_still_frame": "light_still",
    "restart": "resume",
}


def option_of(asked: Asked, said: Said, told: Facts) -> str | None:
    """The option that a reply means by its sense; None where it asks, tells facts or is unsure.

    Args:
        asked: the open question.
        said: the message.
        told: what was read in it.
    """
    if told.unread or set(told.known()) - _ABOUT_OPTIONS or asks_at_once(said):
        return None
    found = _meant(asked, said)
    if found is None or found.option == OTHER or found.ahead < _AHEAD:
        return None
    topic, near = topics.nearest(said)
    beside = topic != TOLD and topic not in _ABOUT_FRAME and near > found.near
    return None if beside else found.option


def is_other(asked: Asked, said: Said) -> bool:
    """Whether a message is surely no reply to a question, whatever words of it it holds."""
    found = _meant(asked, said)
    return found is not None and found.option == OTHER and found.ahead >= _AHEAD


def _meant(asked: Asked, said: Said) -> Meant | None:
    return meant_at(_LIKE.get(asked.name, asked.name), asked.options, said)
