"""What a message asks or tells of beside the walk: a topic of the trade, or small talk."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings
from bot.dialogue.meaning.said import OWN_TABLES, Said, in_both
from bot.dialogue.meaning.sensed import nearness_to
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
#: But in languages of few words ("welche einstellungen") this near they do (own rule).
NEAR_SHORT: Final = 0.5


def all_examples(language: str = "en") -> Mapping[str, tuple[str, ...]]:
    """Wordings of each topic and of each kind of small talk; beside another language's, English."""
    return in_both(("topics", "small_talk"), language)


@cache
def model() -> Meanings:
    """The model of the words of all topics and of small talk, learnt when it is first asked."""
    return Meanings(all_examples())


def topic_of(said: Said) -> str | None:
    """The topic of a message, a kind of small talk among them; None where nothing is near."""
    near = nearness(said)
    first = max(near, key=lambda label: near[label])
    few = len(tokens(said.own)) < LEAST_WORDS
    if first.startswith(TALK):
        return first if near[first] >= (NEAR_SHORT_TALK if few else NEAR_TALK) else None
    beside = max(nearness for label, nearness in near.items() if label.startswith(TALK))
    far = near[first] < NEAR or near[first] - beside < BEFORE_TALK
    short = few and not (said.language in OWN_TABLES and near[first] >= NEAR_SHORT)
    return None if far or short else first


@lru_cache(maxsize=8)
def nearness(said: Said) -> Mapping[str, float]:
    """How near a message is to each topic and kind of small talk."""
    return nearness_to(said, "topics", model)


def nearest(said: Said) -> tuple[str, float]:
    """The nearest topic or kind of small talk, however far, and its nearness."""
    return max(nearness(said).items(), key=lambda pair: pair[1])
