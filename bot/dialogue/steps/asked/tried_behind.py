"""What is tried behind a sentence that tells nothing: "on the contrary. What if I add the ND?"."""

from __future__ import annotations

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
            head = read(glossed(" ".join(sentences[:place]), said.language))
            return said if head.known() or head.unread else tried
    return said
