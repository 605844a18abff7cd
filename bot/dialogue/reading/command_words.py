"""Whole messages that are one of the words which work anywhere."""

from __future__ import annotations

from bot.dialogue.texts import COMMAND_WORDS
from bot.dialogue.texts.commands import folded


def command_of(text: str) -> str | None:
    """The command that a whole message is, None for anything else.

    Args:
        text: the message as typed.
    """
    return COMMAND_WORDS.get(folded(text))
