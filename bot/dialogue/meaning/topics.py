"""What a message asks or tells of beside the walk: a topic of the trade, or small talk."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings, both
from bot.dialogue.meaning.sensed import learned
from bot.dialogue.meaning.tables import examples
from bot.dialogue.meaning.words import tokens

#: A topic is meant from this nearness on (own rule, on the examples left out in turn).
NEAR: Final = 0.15
NEAR_TALK: Final = 0.25
#: A word or two answer something more often than they chat (own choice, as above).
NEAR_SHORT_TALK: Final = 0.4
#: And this far before all small talk (own rule, as above).
BEFORE_TALK: Final = 0.05
#: How the labels of small talk begin.
TALK: Final = "talk."
#: Fewer words than these name no topic: they answer something, or lack what is asked of it.
LEAST_WORDS: Final = 3  # own rule


def all_examples() -> Mapping[str, tuple[str, ...]]:
    """Wordings of each topic and of each kind of small talk."""
    return {**examples("topics"), **examples("small_talk")}


@cache
def model() -> Meanings:
    """The model of all topics and of small talk, learnt when it is first asked."""
    return Meanings(all_examples())


def topic_of(text: str) -> str | None:
    """The topic of a message, a kind of small talk among them; None where nothing is near.

    Args:
        text: the message in English, as typed.
    """
    near = nearness(text)
    first = max(near, key=lambda label: near[label])
    if first.startswith(TALK):
        least = NEAR_TALK if len(tokens(text)) >= LEAST_WORDS else NEAR_SHORT_TALK
        return first if near[first] >= least else None
    beside = max(nearness for label, nearness in near.items() if label.startswith(TALK))
    far = near[first] < NEAR or near[first] - beside < BEFORE_TALK
    return None if far or len(tokens(text)) < LEAST_WORDS else first


@lru_cache(maxsize=8)
def nearness(text: str) -> Mapping[str, float]:
    """How near a message is to each topic and kind of small talk, by its words and its sense."""
    return both(model().nearness(text), learned("topics").nearness(text))


def nearest(text: str) -> tuple[str, float]:
    """The nearest topic or kind of small talk, however far, and its nearness."""
    return max(nearness(text).items(), key=lambda pair: pair[1])
