"""English words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.english.away import AWAY
from bot.dialogue.tongues.english.thunder import THUNDER

ENGLISH: Final[Mapping[str, str]] = {
    **AWAY,
    **THUNDER,
}
