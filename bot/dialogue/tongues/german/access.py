"""German words of what people say of their ears and eyes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "access.colour": (
        r"farben ?blind\w*|farb(?:en)?(?:fehlsichtig|schwach|schwäche)\w*"
        r"|rot[- ]grün[- ](?:blind|schw[aä]ch)\w*|rot und grün (?:\w+ ){0,3}(?:nicht|kaum|schlecht)"
    ),
    "access.hearing": (
        r"(?:ich )?höre?(?: \w+){0,2} (?:schlecht|schwer)|schwerhörig|gehörlos|hörgeräte?"
        r"|bin(?: (?:fast|halb|leider|auf \w+ ohr))* taub"
    ),
    "access.sight": (
        r"bildschirm(?:leser|vorlese)\w*|sehbehindert\w*|(?:ich bin|bin)(?: \w+){0,2} blind"
        r"|(?:ich )?sehe?(?: \w+){0,2} schlecht(?! aus)|kleine schrift|lesebrille vergessen"
    ),
    "access.no_needs": r"keine notizen",
}
