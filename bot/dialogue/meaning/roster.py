"""Questions of who leads: how far the others are, who waits, who has no frame yet."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.phrases import exactly, plain
from bot.dialogue.tongues import in_any

_ASKED: Final = exactly(
    f"{in_any('roster.before')}?{in_any('roster.asked')}{in_any('roster.after')}?"
)


def asks(text: str) -> bool:
    """Whether a message asks how far the others of a group are.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return _ASKED.search(plain(text, " .!?¿¡")) is not None
