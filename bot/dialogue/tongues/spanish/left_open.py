"""Spanish words: a "no" that leaves things there, comes later, or refuses."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "left_open.things": r"tripode|camara|equipo|mochila|mando|disparador|perro",
    "left_open.still": r"todavia|aun|alli|alla|ahi|deje|dejado|olvide|olvidado|sigue|arriba|fuera",
    "left_open.from_there": (
        r"desde (?:alli|alla|ahi)(?: arriba)?"
        r"|(?:quedar\w*|estar|subir|ir|sentar\w*) (?:alli|ahi|alla)"
    ),
    "left_open.later": r"luego|en un (?:rato|momento|minuto)|ahora (?:voy|vamos)|despues",
    "left_open.climbed": r"^ya bajamos(?= [.,]|$)",
    "left_open.no": r"no",
    "left_open.yes": r"si",
    "left_open.refusal": r"no",
    "left_open.refused": (
        r"gracias|hace falta|se lo que\b.*|no me (?:muevo|voy)\b.*"
        r"|(?:estoy|estamos) (?:sentad\w+|de pie)"
    ),
    "left_open.here": r"aqui",
    "left_open.and": r"y|ahora|¿",
    "left_open.which": r"qu[eé]|cu[aá]l|cu[aá]nto",
    "left_open.setting": r"tiempo|diafragma|filtro|objetivo|velocidad|ajustes",
    # A thing that was left, where nobody says that they fetch it.
    "left_open.abandoned": r"(?:deje|dejamos|dejado|olvide|olvidamos)",
    # Somebody who is there, by a name that nobody knows.
    "left_open.is_there": (
        r"^(?:y |pero |solo )*(?!(?:nadie|no|sol|cielo|luz)\b)\w+ (?:esta|estan|sigue"
        r"|siguen) (?:todavia |aun )?(?:en el (?:borde|filo)|(?:alli|ahi|alla) (?:arriba|fuera))"
    ),
}
