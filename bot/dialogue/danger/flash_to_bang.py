"""Seconds between a flash and its thunder: a storm that is here, and how far it was off."""

from __future__ import annotations

from typing import Final

from bot.dialogue.danger.thunder_words import FLASH_AND_BANG, FLASH_OR_BANG, SECONDS, SUPPOSED
from bot.dialogue.folding import folded

#: Nobody counts longer, and thunder is not heard from so far (own rule) [s].
_LONGEST_S: Final = 120.0


def flash_to_bang_s(text: str, *, storm_told: bool = False) -> float | None:
    """The seconds that a message tells between flash and thunder.

    Args:
        text: as typed, in any of Linn's languages.
        storm_told: whether a storm was told of before; then one of the two words is enough.
    """
    said = folded(text)
    named = FLASH_OR_BANG if storm_told else FLASH_AND_BANG
    found = SECONDS.search(said) if named.search(said) else None
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
    return SUPPOSED.search(folded(text)) is not None
