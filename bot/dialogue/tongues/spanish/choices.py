"""Spanish words that choose between going on and a new walk, and small words around a choice."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FROM: Final = r"(?:de|desde) cero|desde el (?:principio|comienzo|inicio)"

WORDS: Final[Mapping[str, str]] = {
    # A new walk, whatever stands open.
    "choices.new_walk": (
        r"nuev[oa] (?:paseo|ruta|recorrido|salida|caminata)"
        r"|(?:paseo|recorrido) nuevo|(?:ruta|salida|caminata) nueva"
        rf"|(?:empez|empiez|empec|comenz|comienz)\w+ (?:de nuevo|otra vez|{_FROM})"
        r"|(?:volver|vuelvo|volvemos|volvamos) a empezar"
    ),
    # The same where it is offered.
    "choices.new": r"nuev[oa]|empezar|comenzar",
    "choices.go_on": (
        r"segu(?:ir|imos|ir con)|sig(?:o|ue|amos)|continu(?:ar|o|a|amos|emos)|continúo|adelante"
        r"|(?:el|la) (?:mism|viej|últim)[oa]|(?:el|la) anterior"
    ),
    "choices.around": (
        "sí si ok vale bueno pues por favor porfa un una uno el la lo los las mi con quiero"
        " queremos quisiera prefiero mejor me nos gustaría a y ya ahora vamos entonces gracias"
        " opción esa ese de dale o"
    ),
    # What takes back some of it, right behind.
    "choices.but": r"pero|excepto|salvo|menos|sólo|solo|o|aunque|no",
}
