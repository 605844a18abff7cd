"""Whether a message asks outright for settings: "what do I set", "just give me a number"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.tongues import in_any, whole_words

_OUTRIGHT: Final = whole_words("settings_asked.outright")
_AT_END: Final = re.compile(rf"\b{in_any('settings_asked.at_end')}$")
_ALONE: Final = re.compile(in_any("settings_asked.alone"))


def asked(said: Said) -> bool:
    """Whether settings are asked for as such, in whatever part of a message.

    Args:
        said: the message.
    """
    return any(map(_asks, sentences_of(said.typed)))


def _asks(sentence: str) -> bool:
    text = folded(sentence)
    if _OUTRIGHT.search(text) or _AT_END.search(text):
        return True
    return sentence.rstrip().endswith("?") and _ALONE.fullmatch(text) is not None
