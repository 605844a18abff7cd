"""Every word that a user reads, by topic, in the language that is being spoken."""

from __future__ import annotations

from bot.dialogue.texts import measures
from bot.dialogue.texts.catalogue import TEXTS
from bot.dialogue.texts.commands import COMMAND_WORDS
from bot.dialogue.texts.languages import speaking
from bot.dialogue.texts.spoken import domain_key, domain_values, known, known_trip

__all__ = [
    "COMMAND_WORDS",
    "TEXTS",
    "domain_key",
    "domain_values",
    "known",
    "known_trip",
    "measures",
    "speaking",
]
