"""Spanish words for a filter that is before the lens now, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "filters_on.both": r"(?:los dos|ambos|los 2)(?: filtros)?",
    "filters_on.polariser": r"(?:filtro )?polari[sz]ador|pola|cpl",
    "filters_on.nd": (
        r"(?:filtro )?nd|filtro (?:gris|oscuro|negro)(?: de clip| de pinza)?|densidad neutra"
    ),
    "filters_on.filter": r"filtros?",
    "filters_on.it": r"lo|ya|esta",
    "filters_on.anything": NOTHING,
    "filters_on.is_on": (
        r"(?:esta |estan |ya |ahora |va |van )*(?:puest[oa]s?|montad[oa]s?|enroscad[oa]s?)"
    ),
    "filters_on.put": (
        r"puse|puesto|pongo|poniendo|coloque|colocado|monte|montado|enrosque|enroscado|tengo|llevo"
    ),
    "filters_on.fitted": (
        r"puse|puesto|pongo|poniendo|coloque|colocado|monte|montado|enrosque|enroscado"
    ),
    "filters_on.on": r"(?:puest[oa]s?|montad[oa]s?|enroscad[oa]s?|delante|en el objetivo)(?: ya)?",
    "filters_on.all_along": (
        r"desde|todo el (?:rato|tiempo)|ya (?:estaba|lo tenia|esta|lo llevaba)|dos veces"
    ),
    "filters_on.with": r"con|y con",
    "filters_on.small": (
        r"ya|ahora|he|le|me|lo|y|pero|ok|bueno|si|listo|el|los|la|mi|mis|un|esta vez"
        r"|otra vez|acabo de"
    ),
}
