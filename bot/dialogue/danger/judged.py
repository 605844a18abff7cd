"""How likely a message tells of danger: by its words, and by its sense where they leave room."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.features import Heard, heard_in
from bot.dialogue.danger.likelihood import Likely, trained
from bot.dialogue.danger.sense import learned, senses_of

#: What the sense adds counts so much, and no more than words that are sure [log odds] are past
#: doubt without it. Own rules: from strangers' files that were left out in turn.
_COUNTS: Final = 0.5
_ROOM: Final = (-7.0, 7.0)


def judged(text: str, heard: Heard | None = None) -> Likely:
    """What a message sounds like.

    Args:
        text: as typed.
        heard: what is found in it, where that is known already.
    """
    likely = trained().likely((heard or heard_in(text)).features)
    if not _ROOM[0] <= likely.odds <= _ROOM[1]:
        return likely
    sense = float(learned().odds(senses_of([text]))[0])
    return likely._replace(odds=likely.odds + _COUNTS * sense)
