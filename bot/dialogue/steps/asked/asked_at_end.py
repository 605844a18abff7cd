"""A question behind what is told, with no sign between: "only dots now but green is it that"."""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from bot.dialogue.meaning.asking import questions_begin
from bot.dialogue.meaning.said import OWN_TABLES, Said
from bot.dialogue.meaning.sentences import SENTENCE_ENDS
from bot.dialogue.meaning.topics import TALK, nearness, topic_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked import variable_answers
from bot.dialogue.steps.asked.topic_answers import MOVING, TOPICS
from bot.dialogue.turn import Turn

_SENTENCE: Final = re.compile(SENTENCE_ENDS)
#: Such words ask something by their sense from this nearness on (own rule: as a clause does).
_SURE: Final = 0.4
#: With fewer words before it, a message is its question, and is read as a whole (own rule).
_LEAST_TOLD: Final = 3
#: So many places are looked at, the last ones (own rule: people ask at the end).
_MOST: Final = 6
#: What words of a question hold without telling it; who tells more in it is heard for that.
_VAGUE: Final = frozenset(
    {"stream", "has_tripod", "hand_held", "has_polariser", "polariser_on", "nd_stops", "light"}
    | {"look", "wind", "automatic", "camera_format", "section", "portrait", "flow", "units"}
)


#: Answers that are settings, for the light and the look that the same message tells.
_WHOLE: Final = frozenset({"variable_turn", "polariser_turn"})
_OF_LIGHT: Final = frozenset({"light", "look"})


class AtEnd(NamedTuple):
    """What a message asks behind what it tells.

    Args:
        topic: that is asked about.
        asked: the words that ask.
        told: all other words, in English.
    """

    topic: str
    asked: Said
    told: str


def answer(turn: Turn, heard: Said) -> str | None:
    """Answer such a question on a walk; before one, what is told begins it.

    Args:
        turn: the answer under construction.
        heard: the message.

    Returns:
        What was told before it, in English; None where nothing surely asks.
    """
    found = _asked(heard) if turn.context.conversation.walk is not None else None
    if found is None or found.topic in MOVING:
        return None
    whole = found.topic in _WHOLE and variable_answers.is_meant(heard.english)
    if whole:
        told = read(found.told)
        turn.learn(told.only(told.known().keys() & _OF_LIGHT))
    TOPICS[found.topic](turn, heard.english)
    if not turn.notes:
        turn.reason("why.practice")
    return "" if whole else found.told


def _asked(said: Said) -> AtEnd | None:
    """The question that stands behind what a message tells; None where none surely does."""
    found = [one for start in _starts(said) if (one := _from(said, start)) is not None]
    return max(found, key=lambda one: nearness(one.asked)[one.topic], default=None)


def _starts(said: Said) -> list[int]:
    """Where a question may begin, behind enough that is told."""
    starts = questions_begin(said)
    return [start for start in starts if len(said.own[:start].split()) >= _LEAST_TOLD][-_MOST:]


def _from(said: Said, start: int) -> AtEnd | None:
    """The topic of the words from one place to the end of their sentence, where they have one."""
    ends = _SENTENCE.search(said.own, start)
    end = len(said.own) if ends is None else ends.start()
    words, others = said.own[start:end], f"{said.own[:start]} {said.own[end:]}".strip()
    own = said.language in OWN_TABLES
    asked = Said(glossed(words, said.language) if own else words, words, said.language)
    topic = topic_of(asked)
    if topic is None or topic.startswith(TALK) or nearness(asked)[topic] < _SURE:
        return None
    if read(asked.english).known().keys() - _VAGUE or "what if" in asked.english.casefold():
        return None
    return AtEnd(topic, asked, glossed(others, said.language) if own else others)
