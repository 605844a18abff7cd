"""What the tests of reading share: a message and the facts that it must tell, no more."""

from __future__ import annotations

from typing import Any

from bot.dialogue.facts import Facts, Units
from bot.dialogue.reading import read

M, FT = Units.METRIC, Units.IMPERIAL


def told(text: str, *expecting: str, units: Units | None = None) -> dict[str, Any]:
    """The slots that a message fills, by name."""
    return read(text, units=units, expecting=frozenset(expecting)).known()


def unread(text: str, *expecting: str, units: Units | None = None) -> tuple[str, ...]:
    """The pieces of a message that were not placed; nothing else may be told."""
    facts = read(text, units=units, expecting=frozenset(expecting))
    assert facts == Facts(unread=facts.unread, units=facts.units)
    return facts.unread
