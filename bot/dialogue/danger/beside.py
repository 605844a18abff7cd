"""Danger told beside other things: in one part of a message, after a list, or with a cry."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.cry import cry_of
from bot.dialogue.danger.judged import judged

#: A danger is heard in its part of the message where a part alone has at least such odds and so
#: many spaces. Own rules: from files that were left out.
_PART: Final = 3.0
_PART_SPACES: Final = 2
#: A call for help is a part of a message that has at least such odds: "help, too many options" has
#: far less, whatever stands beside it (own rule, from files that were left out).
_CALLED: Final = -4.5
#: Parts of lower odds than this are plain talk.
_PLAIN: Final = -4.5
#: Beside so many of them what is left is read for itself, and asked about from such odds on. Own
#: rules: of dangers at the end of a list of settings, from files that were left out, 65 in 100 were
#: heard as a whole, 73 so (alone 88).
_LEFT: Final = ((5, 0.0), (3, 3.0))
_BETWEEN_PARTS: Final = re.compile(
    r"[.!?;,:\n]+|\b(?:and|but|while|und|aber|y|pero)\b", re.IGNORECASE
)


def heard_beside(text: str, odds: float) -> bool:
    """Whether a message that is no danger as a whole sounds of one in some of it.

    Args:
        text: as typed.
        odds: of the whole.
    """
    parts = [part.strip() for part in _BETWEEN_PARTS.split(text) if part.strip()]
    if len(parts) < 2:
        return False
    if odds >= _CALLED and any(map(cry_of, parts)):
        return True
    told = {part: judged(part).odds for part in parts}
    long = (part for part in parts if part.count(" ") >= _PART_SPACES)
    return any(told[part] >= _PART for part in long) or _left(told)


def _left(told: dict[str, float]) -> bool:
    """Whether something is left of a list of plain things that sounds of danger by itself."""
    left = [part for part, odds in told.items() if odds > _PLAIN]
    plain = len(told) - len(left)
    enough = [odds for parts, odds in _LEFT if plain >= parts]
    return bool(left and enough) and judged(", ".join(left)).odds >= min(enough)
