"""English words of ice and of storms that are told in passing, or denied."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    # Ice where people walk; a frozen look and a frozen screen are none.
    "weather.ice": (
        r"icy|icicles?|black ice|verglas|ice (?:on|at|along|over|all|everywhere|under)"
        r"|(?:some|thin|thick|a bit of|lots? of|sheets? of) ice|iced(?: over)?|hard frost"
        r"|frozen (?:over|ground|spray|path|trail|edges?|rocks?)|below freezing"
    ),
    # "No ice", "no thunder".
    "weather.no": r"no|without",
    # Before a storm alone.
    "weather.nor": NOTHING,
    "weather.of_ice": r"ice|icicles|frost",
    "weather.minus": r"[Mm]inus",
    "weather.degrees": r"degrees",
    "weather.of_storm": r"thunder|lightning|storm",
}
