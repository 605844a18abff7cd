"""Whole messages that are one of the words which work anywhere."""

from __future__ import annotations

import re

from bot.dialogue.texts import COMMAND_WORDS


def command_of(text: str) -> str | None:
    """The command that a whole message is, None for anything else.

    Args:
        text: the message as typed.
    """
    words = re.sub(r"[^\w ]", "", text.casefold()).split()
    return COMMAND_WORDS.get(" ".join(words))
