"""Which topic is meant, where the words of a question name one and its sense another."""

from __future__ import annotations

from typing import Final

from bot.dialogue.meaning.said import OWN_TABLES, Said
from bot.dialogue.meaning.topics import TALK, nearness, topic_of

#: So much nearer by its sense than the topic that words name, another is meant (own rule, on a
#: writer's questions that were left out).
_SURELY_OTHER: Final = 0.35
#: What words name too often: every gloss may be by chance, and these may in English (own rule: of
#: 264 examples that were left out in turn the words named 164 right, with this 218).
_LIKELY_OTHER: Final = 0.25
#: And at least as near as this (own rule, as above).
_NEAR: Final = 0.4
_LOOSE: Final = frozenset(
    {"silky_time", "f_number", "focus_where", "need_nd", "mode", "stay", "shade_when"}
    | {"best_time", "time_forgotten"}
)
#: Of the polariser as a whole, where nothing of these is meant more plainly (own rule, as above).
_OF_FILTERS: Final = frozenset(
    {"polariser_first", "polariser_stops", "polariser_turn", "polariser_left", "polariser_seen"}
    | {"both_filters", "filter_order", "variable_polariser", "no_polariser"}
)
_ONE_OF_THEM: Final = 0.6
#: Words of the trade, asked for by themselves.
_TERM: Final = "term."


def meant_by(heard: Said, named: str) -> str:
    """What is asked, where words name a topic by chance and the sense is surely another.

    Args:
        heard: the message.
        named: the topic that words of it name, in English or glossed.
    """
    if named.startswith(_TERM):
        return named  # "what is X" names its X
    topic, near = topic_of(heard), nearness(heard)
    if topic is None or topic.startswith(TALK) or near[topic] < _NEAR:
        return named
    if named == "polariser":
        return topic if topic in _OF_FILTERS and near[topic] >= _ONE_OF_THEM else named
    loose = named in _LOOSE or heard.language in OWN_TABLES
    least = _LIKELY_OTHER if loose else _SURELY_OTHER
    return topic if near[topic] - near.get(named, near[topic]) > least else named
