"""What people ask when they had to leave the water: of their gear, and when they may go back."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.topics import nearness, topic_of
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.turn import Turn

#: What is said: in so few words that the instruction and its question find room.
_TEXTS: Final[Mapping[str, str]] = {
    "leave_gear": "danger.gear_stays",
    "after_flood": "danger.not_today",
}
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
    turn.say(Role.SAFETY, _TEXTS[found])
    return True


def _parts(turn: Turn, text: str) -> list[Said]:
    """The message as a whole, and each of its sentences."""
    return [manner.as_said(turn, one) for one in dict.fromkeys((text, *sentences_of(text)))]


def _asked(said: Said) -> str | None:
    """Which of them a part of a message asks; None for what asks something else, or tells."""
    topic = topic_of(said)
    if topic is None or topic not in _TEXTS or not asks(said):
        return None
    return topic if nearness(said)[topic] >= _SURE else None
