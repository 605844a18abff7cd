"""What is tried behind a sentence that tells nothing: "on the contrary. What if I add the ND?"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked import trials


def alone(said: Said) -> Said:
    """The part of a message that only tries something, where nothing in front of it tells facts.

    Args:
        said: the message; any other is as it was.
    """
    sentences = sentences_of(said.typed)
    for place in range(1, len(sentences)):
        tail = " ".join(sentences[place:])
        tried = said._replace(english=glossed(tail, said.language), typed=tail)
        if trials.supposes(tried) or "what if" in glossed(sentences[place], said.language):
            return said if _says_more(sentences[:place], said.language) else tried
    return said


def _says_more(sentences: Sequence[str], language: str) -> bool:
    """Whether sentences tell facts, or ask something of their own."""
    head = read(glossed(" ".join(sentences), language))
    return bool(head.known() or head.unread) or any("?" in one for one in sentences)
