"""What a person says of their ears and eyes, so that messages can be made to fit."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Need
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import whole_words

#: How each need is told of oneself; "colour-blind" is not "blind", and a loud fall deafens nobody
#: for good.
_TOLD: Final = {
    Need.COLOUR: whole_words("access.colour"),
    Need.HEARING: whole_words("access.hearing"),
    Need.SIGHT: whole_words("access.sight"),
}
_NO_NEEDS: Final = whole_words("access.no_needs")


def needs_of(text: str) -> frozenset[Need] | None:
    """What a message says of the person's ears and eyes.

    Args:
        text: as typed, in any of the languages, or glossed.

    Returns:
        The needs that it tells; an empty set where it says that there are none any more; None
        where it speaks of nothing like that.
    """
    said = plain(text, " .!")
    if _NO_NEEDS.fullmatch(said):
        return frozenset()
    told = frozenset(need for need, pattern in _TOLD.items() if pattern.search(said))
    return told or None
