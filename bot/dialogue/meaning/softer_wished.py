"""Water that is too streaky, or is wished softer with a limit: a longer time, and no mush."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.tongues import whole_words

_STREAKY: Final = whole_words("softer_wished.streaky")
_SOFTER: Final = whole_words("softer_wished.softer")
_LIMIT: Final = whole_words("softer_wished.limit")
#: What else is streaky or soft: leaves that moved, a glass that was wiped.
_OTHER: Final = whole_words("softer_wished.other")


def wished(said: Said, facts: Facts) -> Facts:
    """The facts of a message, with the longer time that too many streaks ask for.

    Args:
        said: the message.
        facts: what was read in it; mush that is only feared is no complaint.
    """
    text = folded(said.typed)
    streaky, softer = _STREAKY.search(text), _SOFTER.search(text)
    if _OTHER.search(text) or not (streaky or softer):
        return facts
    if softer and not streaky and not _LIMIT.search(text):
        return facts
    symptoms = tuple(one for one in facts.symptoms if one is not Symptom.NO_TEXTURE)
    if streaky and Symptom.TOO_FROZEN not in symptoms:
        symptoms = (*symptoms, Symptom.TOO_FROZEN)
    look = "silky" if softer else facts.look
    return facts.model_copy(update={"symptoms": symptoms, "look": look})
