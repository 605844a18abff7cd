"""Spanish words that readers look for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.spanish.away import AWAY
from bot.dialogue.tongues.spanish.thunder import THUNDER

SPANISH: Final[Mapping[str, str]] = {
    **AWAY,
    **THUNDER,
}
