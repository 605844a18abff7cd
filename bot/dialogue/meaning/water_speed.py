"""Whether a message asks how fast the water is that the bot reckons with."""

from __future__ import annotations

from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of, without
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.tongues import whole_words

_ASKED: Final = whole_words("water_speed.asked")
_OF_PEOPLE: Final = whole_words("water_speed.of_people")


def rest_beside(said: Said) -> str | None:
    """What a message says beside that question, in English; None where it asks nothing of it.

    Who asks for the speed behind a share names that, and has its own sum.

    Args:
        said: the message.
    """
    if not asks(said):
        return None
    rest = without(sentences_of(said.typed), _asks)
    return None if rest is None else glossed(rest, said.language)


def _asks(sentence: str) -> bool:
    """Whether a sentence asks for it, of no share and of nobody who stands in that water."""
    text = folded(sentence)
    return "%" not in sentence and bool(_ASKED.search(text)) and not _OF_PEOPLE.search(text)
