"""Seconds between a flash and its thunder: a storm that is here, and how far it was off."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.folding import folded

_FLASH: Final = r"(?:flash|lightning|bolt|blitz\w*|relampago\w*|rayo\w*)"
_BANG: Final = r"(?:thunder\w*|bang|boom|rumble|donner\w*|knall\w*|trueno\w*|estruendo)"
_BOTH: Final = re.compile(rf"\b{_FLASH}\b.*\b{_BANG}\b|\b{_BANG}\b.*\b{_FLASH}\b")
#: Behind a storm that was told of either word will do.
_EITHER: Final = re.compile(rf"\b(?:{_FLASH}|{_BANG})\b")
_SECONDS: Final = re.compile(
    r"(?<![\d/])(\d{1,3}(?:[.,]\d)?) ?(?:s|secs?|seconds?|sek\w*|sec|segundos?|segs?)\b"
)
#: No storm of now: supposed, or of another day.
_SUPPOSED: Final = re.compile(
    r"^(?:(?:and|so|what|but|y|und|aber) )*(?:if|when|wenn|falls|si|cuando)\b"
    r"|\b(?:whenever|suppose|yesterday|last (?:\w+ )?(?:night|week|month|year|time|summer)"
    r"|generally|in general|gestern|letzte\w*|angenommen|allgemein|ayer"
    r"|supon\w*|en general)\b"
)
#: Nobody counts longer, and thunder is not heard from so far (own rule) [s].
_LONGEST_S: Final = 120.0


def flash_to_bang_s(text: str, *, storm_told: bool = False) -> float | None:
    """The seconds that a message tells between flash and thunder.

    Args:
        text: as typed, in any of Linn's languages.
        storm_told: whether a storm was told of before; then one of the two words is enough.
    """
    said = folded(text)
    named = _EITHER if storm_told else _BOTH
    found = _SECONDS.search(said) if named.search(said) else None
    if found is None:
        return None
    seconds = float(found[1].replace(",", "."))
    return seconds if seconds <= _LONGEST_S else None


def is_storm_of_now(text: str) -> bool:
    """Whether seconds between flash and thunder were counted in a storm that is here.

    Args:
        text: as typed, in any of Linn's languages.
    """
    return flash_to_bang_s(text) is not None and not is_supposed(text)


def is_storm_supposed(text: str) -> bool:
    """Whether such seconds are only supposed, or of another day."""
    return flash_to_bang_s(text) is not None and is_supposed(text)


def is_supposed(text: str) -> bool:
    """Whether a message only supposes what it tells, or tells of another day."""
    return _SUPPOSED.search(folded(text)) is not None
