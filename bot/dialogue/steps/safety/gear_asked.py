"""What people ask when they had to leave the water: of their gear, and when they may go back."""

from __future__ import annotations

from typing import Final

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.topics import nearness, topic_of
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.turn import Turn

#: Answers that send nobody anywhere but away from the water.
_TOPICS: Final = frozenset({"leave_gear", "after_flood"})
#: From this nearness on it is asked (own rule: as a whole message beside facts).
_SURE: Final = 0.3


def answer(turn: Turn, text: str) -> bool:
    """Answer it in an emergency, in front of what that says; whether it was asked.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    found = next(filter(None, map(_asked, _parts(turn, text))), None)
    if found is None:
        return False
    TOPICS[found](turn, text)
    return True


def _parts(turn: Turn, text: str) -> list[Said]:
    """The message as a whole, and each of its sentences."""
    return [manner.as_said(turn, one) for one in dict.fromkeys((text, *sentences_of(text)))]


def _asked(said: Said) -> str | None:
    """Which of them a part of a message asks; None for what asks something else, or tells."""
    topic = topic_of(said)
    if topic not in _TOPICS or not asks(said) or nearness(said)[topic] < _SURE:
        return None
    return topic
