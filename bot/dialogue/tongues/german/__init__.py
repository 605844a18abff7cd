"""German words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.german.asked_first import ASKED_FIRST
from bot.dialogue.tongues.german.away import AWAY
from bot.dialogue.tongues.german.cold_hands import COLD_HANDS
from bot.dialogue.tongues.german.cry import CRY
from bot.dialogue.tongues.german.left_open import LEFT_OPEN
from bot.dialogue.tongues.german.moves import MOVES
from bot.dialogue.tongues.german.permission import PERMISSION
from bot.dialogue.tongues.german.spoken_of import SPOKEN_OF
from bot.dialogue.tongues.german.thunder import THUNDER
from bot.dialogue.tongues.german.whereabouts import WHEREABOUTS
from bot.dialogue.tongues.german.whose import WHOSE

GERMAN: Final[Mapping[str, str]] = {
    **ASKED_FIRST,
    **AWAY,
    **COLD_HANDS,
    **CRY,
    **LEFT_OPEN,
    **MOVES,
    **PERMISSION,
    **SPOKEN_OF,
    **THUNDER,
    **WHEREABOUTS,
    **WHOSE,
}
