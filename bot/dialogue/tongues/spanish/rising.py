"""Spanish words: water that is browner or higher than it was."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "rising.water": r"agua|arroyo|rio|riachuelo|quebrada|nivel|caudal|poza|corriente",
    "rising.more": (
        r"mas (?:marron|turbi[oa]|suci[oa]|alt[oa]|barros[oa]|hond[oa]|profund[oa]|cafe)"
    ),
    "rising.than": (
        r"que (?:antes|al (?:llegar|principio)|esta manana"
        r"|cuando (?:llegue|llegamos|vine|vinimos|empece|empezamos)"
        r"|hace (?:un rato|una hora|media hora|\w+ minutos|\w+ horas))"
    ),
    # What takes it back, or only asks or supposes it.
    "rising.denied": r"no|ni|nunca|tampoco|si|apenas",
    "rising.picture": r"pantalla|histograma|polarizador|camara|objetivo|exposicion",
}
