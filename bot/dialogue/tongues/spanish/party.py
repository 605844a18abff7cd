"""Spanish words of which a message is made that tells who walks along, and nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "party.plain": (
        r"vamos|mi|mis|y|el|la|va|con|es|muy|que|nos|acompañan?|acompanan?|viene|vienen|venimos|un"
        r"|una"
    ),
}
