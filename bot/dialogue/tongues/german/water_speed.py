"""German words by which the speed of the water that the bot reckons with is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "water_speed.asked": (
        r"(?:wasser|fall|fliess|stromungs)(?:geschwindigkeit|tempo)"
        r"|(?:geschwindigkeit|tempo) (?:des|vom|fur das) wassers?"
        r"|wie schnell (?:ist|fallt|fliesst|lauft|kommt|stromt) (?:denn |bei \w+ )?"
        r"(?:das |dein |ihr )?wasser"
    ),
    # Of people in it.
    "water_speed.of_people": (
        r"sicher\w*|gefahr\w*|(?:durch)?waten?|uberquer\w*|stehen|schwimm\w*|stark"
    ),
}
