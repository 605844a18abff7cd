"""Spanish words of the cold: air and wind, cold water, hands in it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "cold_numbers.minus": r"menos",
    "cold_numbers.degrees": r"grados",
    "cold_numbers.below_zero": r"bajo cero",
    "cold_numbers.km_an_hour": NOTHING,
    "cold_numbers.knots": r"nudos",
    "cold_numbers.wind": r"viento\w*|rachas?",
    "cold_numbers.chill_asked": r"sensacion termica|cuanto frio|que tan frio|como de frio",
    "cold_numbers.water": r"agua|rio|arroyo|poza",
    # "How long can hands …", "hands in there, how long".
    "cold_numbers.how_long": r"cuanto (?:tiempo )?|cuantos minutos",
    "cold_numbers.how_long_behind": r"cuanto",
    "cold_numbers.hands": r"manos?|dedos",
    "cold_numbers.cold_water": r"(?:agua|rio|arroyo|poza) (?:fri[ao]|helad[ao])",
}
