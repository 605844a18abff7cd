"""Whether a message names a thunderstorm, or tells that one goes on."""

from __future__ import annotations

from bot.dialogue.danger.thunder_words import GOES_ON, NAMED
from bot.dialogue.folding import folded


def names_storm(text: str) -> bool:
    """Whether a message names a thunderstorm, as people write of a forecast.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return NAMED.search(folded(text)) is not None


def tells_of_storm(text: str) -> bool:
    """Whether a message of people in shelter tells of the storm that sent them there.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return GOES_ON.search(folded(text)) is not None
