"""German words: somebody is asleep, sleepy or confused, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "drowsy.sign": (
        r"schlaft|schlafen|eingeschlafen|schlafrig|benommen|bewusstlos|verwirrt|lallt|lallen"
        r"|dammert weg|nicht wach|wacht nicht auf|wird nicht wach"
    ),
    # Before a sign, that it is none.
    "drowsy.denied": r"nicht|kein\w*|nie|niemand|keiner|weder|noch",
}
