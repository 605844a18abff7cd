"""German words of which a message is made that tells who walks along, and nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "party.plain": (
        r"wir|ich|haben|habe|mein|meine|sind|dabei|mit|und|ist|ein|eine|auch|schlecht|nass"
        r"|rutschig|wenn|davon|es|aber|nicht|sehr|er|sie|morgen"
    ),
}
