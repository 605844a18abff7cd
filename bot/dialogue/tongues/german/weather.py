"""German words of ice and of storms that are told in passing, or denied."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # Ice where people walk; a frozen look and a frozen screen are none.
    "weather.ice": r"eis(?:ig(?:e[rsnm]?)?|zapfen|platten?)|vereist\w*|glatteis|unter null|frost",
    # "No ice", "no thunder".
    "weather.no": r"kein\w*|ohne",
    # Before a storm alone.
    "weather.nor": NOTHING,
    "weather.of_ice": r"frost|eis\w*",
    "weather.minus": r"[Mm]inus",
    "weather.degrees": r"[Gg]rad",
    "weather.of_storm": r"gewitter|unwetter",
}
