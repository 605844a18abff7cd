"""English words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.english.asked_first import ASKED_FIRST
from bot.dialogue.tongues.english.away import AWAY
from bot.dialogue.tongues.english.left_open import LEFT_OPEN
from bot.dialogue.tongues.english.moves import MOVES
from bot.dialogue.tongues.english.thunder import THUNDER

ENGLISH: Final[Mapping[str, str]] = {
    **ASKED_FIRST,
    **AWAY,
    **LEFT_OPEN,
    **MOVES,
    **THUNDER,
}
