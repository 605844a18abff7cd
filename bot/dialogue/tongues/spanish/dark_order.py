"""Spanish words by which somebody asks what to change first where light is short."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "dark_order.iso": r"isos?",
    "dark_order.aperture": (r"diafragma|apertura|abr(?:o|ir|e)"),
    "dark_order.polariser": r"polarizador|pola|cpl|filtro polarizador",
    # By which it becomes brighter.
    "dark_order.brighter": (
        r"(?:subo|subir|sube|mas|aumento|aumentar)(?: el| la)? iso|abr(?:o|ir|e)"
        r"|(?:quito|quitar|saco|sacar|quita)(?: el)? (?:polarizador|pola|cpl)"
    ),
    "dark_order.order": (r"orden|primero|que va antes|antes que"),
}
