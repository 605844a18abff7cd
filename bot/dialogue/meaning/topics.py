"""What a message asks or tells of beside the walk: a topic of the trade, or small talk."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Final

from bot.dialogue.meaning.likeness import TOLD, learned, nearest_of
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.words import tokens

#: A topic is meant from this nearness on (own rule, on the examples left out in turn: of topics
#: 81 in 100 are found, 8 are taken for another; 6 in 100 of other talk are taken for one).
NEAR: Final = 0.2
NEAR_TALK: Final = 0.15
#: A word or two answer something more often than they chat (own choice, as above).
NEAR_SHORT_TALK: Final = 0.4
#: And this far before small talk and what tells facts (own rule, as above).
BEFORE_TALK: Final = 0.05
#: White sky in the frame, at the water and at home; a stabiliser that was on; a lens and its mm.
_OF_ONE_THING: Final = (
    ("sky", "clone_sky"),
    ("stabiliser", "stabiliser_seen"),
    ("lens", "term.focal"),
    ("both_filters", "variable_polariser"),
)
#: How the labels of small talk begin.
TALK: Final = "talk."
#: Fewer words than these name no topic: they answer something, or lack what is asked of it.
LEAST_WORDS: Final = 3  # own rule
#: But this near they do: "welche einstellungen" (own rule).
NEAR_SHORT: Final = 0.5


def topic_of(said: Said) -> str | None:
    """The topic of a message, a kind of small talk among them; None where nothing is near."""
    near = nearness(said)
    first = max(near, key=lambda label: near[label])
    few = len(tokens(said.own)) < LEAST_WORDS
    if first == TOLD:
        return None
    if first.startswith(TALK):
        return first if near[first] >= (NEAR_SHORT_TALK if few else NEAR_TALK) else None
    beside = max(near[label] for label in near if label == TOLD or label.startswith(TALK))
    far = near[first] < NEAR or near[first] - beside < BEFORE_TALK
    return None if far or (few and near[first] < NEAR_SHORT) else first


def before_told(said: Said, topic: str) -> float:
    """How much nearer a message is to a topic than to what tells facts and asks nothing."""
    near = nearness(said)
    return near[topic] - near[TOLD]


@lru_cache(maxsize=8)
def nearness(said: Said) -> Mapping[str, float]:
    """How near a message is to each topic and kind of small talk.

    Two topics of the same thing share what is near to both: the nearer one has it all.
    """
    near = learned("topics").nearness(said.own)
    for one, other in _OF_ONE_THING:
        nearer, farther = (one, other) if near[one] >= near[other] else (other, one)
        near[nearer] += max(near[farther], 0.0)
    return near


def nearest(said: Said) -> tuple[str, float]:
    """The nearest topic or kind of small talk, however far, and its nearness."""
    return nearest_of(nearness(said))
