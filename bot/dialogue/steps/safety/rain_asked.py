"""What is asked of a gorge after rain before setting out: when to go, when to turn back."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger.rain_asked import asks_of_rain, names_a_child
from bot.dialogue.steps.anywhere import heard, manner
from bot.dialogue.steps.safety import of_the_day
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: What is asked of the day beside it, in so few words that both find room.
_BESIDE: Final = frozenset({"pack", "tell_home"})

_JOINED: Final = re.compile(rf"(?<=[.!?])\s+|\s(?={in_any('calm_parts.joined')}\s)")


def is_asked(turn: Turn, text: str) -> bool:
    """Whether a message asks that, while nobody is in any danger.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    conversation = turn.context.conversation
    busy = conversation.emergency or conversation.doubted or conversation.closed
    return not busy and asks_of_rain(text)


def answer(turn: Turn, text: str) -> bool:
    """Answer it, with no setting; whether it was asked. The kit that is told beside it is kept.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    if not is_asked(turn, text):
        return False
    heard.keep_kit(turn, text)
    turn.say(Role.SAFETY, "rain.asked")
    if not any(
        of_the_day.answer(turn, manner.as_said(turn, part), _BESIDE) for part in _parts(text)
    ):
        turn.say(Role.SAFETY, "rain.signs_child" if names_a_child(text) else "rain.signs")
    turn.reason("why.practice")
    return True


def _parts(text: str) -> list[str]:
    """The message as a whole, and what is joined in it: "if it is safe, and what to pack"."""
    return [text, *_JOINED.split(text)]
