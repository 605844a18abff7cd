"""Spanish words by which a time is asked for from another one that was right."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "time_sum.asks": (
        r"(?:qu[eé]|cu[aá]l) (?:es el )?(?:tiempo|velocidad|exposici[oó]n)"
        r"|cu[aá]nt[oa]s? (?:segundos|tiempo)|tiempo (?:con|a)"
    ),
    # In front of the settings that were right.
    "time_sum.reference": r"si|yes(?= (?:a |con )?(?:f ?/? ?\d|iso|\d))|cuando|porque|ya que",
    # A polariser that is put on for it, and how much it takes.
    "time_sum.with": r"con|tras|with",
    "time_sum.with_it": r"(?:con [eé]l|puesto)",
    "time_sum.how_much": r"cu[aá]nt[oa]s?|cuesta|quita|pierdo|come",
}
