"""How likely a message tells of danger: by its words, and by its sense where they leave room."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.features import Heard, heard_in
from bot.dialogue.danger.likelihood import Likely, trained
from bot.dialogue.danger.sense import learned
from bot.dialogue.sense import LONGEST, sense_of

#: What the sense adds counts so much. Own rule: from strangers' files that were left out in turn.
_COUNTS: Final = 0.3
#: Words below the first [log odds] no sense makes a danger, above the second none makes less than
#: certain: there it is not asked, which spares two messages in three the time. Own rule.
_ROOM: Final = (-5.2, 7.5)


def judged(text: str, heard: Heard | None = None) -> Likely:
    """What a message sounds like.

    Args:
        text: as typed.
        heard: what is found in it, where that is known already.
    """
    likely = trained().likely((heard or heard_in(text)).features)
    # What comes late in a long message is not in its sense, which must not outweigh it.
    if len(text) > LONGEST or not _ROOM[0] <= likely.odds <= _ROOM[1]:
        return likely
    sense = float(learned().odds(sense_of(text)))
    return likely._replace(odds=likely.odds + _COUNTS * sense)
