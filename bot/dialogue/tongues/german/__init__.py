"""German words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.german.away import AWAY
from bot.dialogue.tongues.german.thunder import THUNDER

GERMAN: Final[Mapping[str, str]] = {
    **AWAY,
    **THUNDER,
}
