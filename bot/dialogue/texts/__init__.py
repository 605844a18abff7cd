"""Every word that a user reads, by topic."""

from __future__ import annotations

from typing import Final

from bot.dialogue.texts import measures
from bot.dialogue.texts.asked import ASKED
from bot.dialogue.texts.commands import COMMAND_WORDS
from bot.dialogue.texts.everywhere import EVERYWHERE
from bot.dialogue.texts.frames import FRAMES
from bot.dialogue.texts.late import LATE
from bot.dialogue.texts.levers import LEVERS
from bot.dialogue.texts.privacy import PRIVACY
from bot.dialogue.texts.reasons import REASONS
from bot.dialogue.texts.safety import SAFETY
from bot.dialogue.texts.seen import SEEN
from bot.dialogue.texts.spoken import domain_key, domain_values, known
from bot.dialogue.texts.together import TOGETHER
from bot.dialogue.texts.walk import WALK

#: All texts by their keys; `{name}` is filled in, code spans stand in backticks.
TEXTS: Final[dict[str, str]] = {
    **WALK,
    **LEVERS,
    **EVERYWHERE,
    **ASKED,
    **FRAMES,
    **LATE,
    **PRIVACY,
    **REASONS,
    **SAFETY,
    **SEEN,
    **TOGETHER,
}

__all__ = ["COMMAND_WORDS", "TEXTS", "domain_key", "domain_values", "known", "measures"]
