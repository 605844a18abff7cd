"""Who falls asleep or wanders in mind while an emergency is held: no good news ends it then."""

from __future__ import annotations

from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import whole_words

#: Signs of deep cold and of a hurt head (trade: drowsy, confused, slurred speech: call for help).
_SIGN: Final = whole_words("drowsy.sign")
_DENIED: Final = whole_words("drowsy.denied")
#: Up to so many words before a sign deny it: "not at all sleepy" (own rule).
_BEFORE: Final = 3


def is_drowsy(text: str) -> bool:
    """Whether a message tells that somebody is asleep, sleepy or confused, and does not deny it.

    Args:
        text: as typed or dictated, in any of Linn's languages.
    """
    said = folded(text)
    return any(
        _DENIED.search(" ".join(said[: found.start()].split()[-_BEFORE:])) is None
        for found in _SIGN.finditer(said)
    )
