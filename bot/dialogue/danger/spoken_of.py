"""What speaks of danger without being in it: where nobody may stand, the note left at home."""

from __future__ import annotations

import re
from collections.abc import Mapping
from enum import Enum
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any, whole_words


class Talk(Enum):
    """What people do so that nothing happens; each is good practice."""

    #: Somebody at home knows where they are, until when, and whom to call.
    NOTE_HOME = "note_home"
    #: They ask where they may not stand.
    WHERE_NOT = "where_not"
    #: They say that nobody is hurt or out there.
    NOBODY = "nobody"
    #: They focus or meter on the lip, from wherever they stand.
    PICTURE = "picture"


#: Words of which a message holds one where any of this can be found; that keeps reading quick.
_GATE: Final = whole_words("spoken_of.gate")
_TALK: Final[Mapping[Talk, re.Pattern[str]]] = {
    talk: re.compile(rf"(?<!\w){in_any(f'spoken_of.{talk.value}')}(?!\w)") for talk in Talk
}
#: So many words may stand beside such talk in a message that says nothing else (own rule).
_BESIDE: Final = 8


def without_talk(text: str) -> tuple[str, frozenset[Talk]]:
    """A message without what only speaks of danger.

    Args:
        text: as typed or dictated.

    Returns:
        What else it says, in plain letters where something was taken out; and what was.
    """
    said = folded(text)
    if _GATE.search(said) is None:
        return text, frozenset()
    found = set()
    for talk, pattern in _TALK.items():
        said, times = pattern.subn(" , ", said)
        if times:
            found.add(talk)
    return (said, frozenset(found)) if found else (text, frozenset())


def only_talk(text: str) -> frozenset[Talk]:
    """What a message speaks of when it says little else."""
    rest, found = without_talk(text)
    beside = [word for word in rest.split() if word.isalnum()]
    return found if len(beside) <= _BESIDE else frozenset()
