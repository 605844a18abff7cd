"""Which topic is meant, where the words of a question name one and its sense another."""

from __future__ import annotations

from typing import Final

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.topics import TALK, nearness, topic_of

#: So much nearer by its sense than the topic that words name, another is meant (own rule: of 264
#: examples that were left out in turn the words named 164 right, with this 218).
_SURELY_OTHER: Final = 0.15
#: Of the polariser as a whole, where nothing of these is meant more plainly (own rule, as above).
_OF_FILTERS: Final = frozenset(
    {"polariser_first", "polariser_stops", "polariser_turn", "polariser_left", "polariser_seen"}
    | {"both_filters", "filter_order"}
)
_ONE_OF_THEM: Final = 0.3


def meant_by(heard: Said, named: str) -> str:
    """What is asked, where words name a topic by chance and the sense is surely another.

    Args:
        heard: the message.
        named: the topic that words of it name, in English or glossed.
    """
    topic, near = topic_of(heard), nearness(heard)
    if topic is None or topic.startswith(TALK):
        return named
    if named == "polariser":
        return topic if topic in _OF_FILTERS and near[topic] >= _ONE_OF_THEM else named
    return topic if near[topic] - near.get(named, near[topic]) > _SURELY_OTHER else named
