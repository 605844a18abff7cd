"""Spanish words: somebody is asleep, sleepy or confused, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "drowsy.sign": (
        r"dormid[oa]s?|duerme\w*|se (?:ha dormido|durmio)|somnolient[oa]s?|inconsciente"
        r"|confus[oa]s?|aturdid[oa]s?|balbuce\w+|no (?:se )?despierta"
    ),
    # Before a sign, that it is none.
    "drowsy.denied": r"no|ni|nadie|nunca|ya no|tampoco",
}
