"""Spanish words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.spanish.asked_first import ASKED_FIRST
from bot.dialogue.tongues.spanish.away import AWAY
from bot.dialogue.tongues.spanish.left_open import LEFT_OPEN
from bot.dialogue.tongues.spanish.moves import MOVES
from bot.dialogue.tongues.spanish.thunder import THUNDER

SPANISH: Final[Mapping[str, str]] = {
    **ASKED_FIRST,
    **AWAY,
    **LEFT_OPEN,
    **MOVES,
    **THUNDER,
}
