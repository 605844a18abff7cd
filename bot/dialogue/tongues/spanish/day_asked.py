"""Spanish words of what is asked of a day's hours: when to start, when to leave the water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # When to start, asked at home; words of the way back ask when to turn round.
    "day_asked.start": (
        r"(?:a qué hora|cuándo|qué hora|cómo de (?:pronto|temprano))\b(?:(?!\b(?:vuelta|volver"
        r"|volvemos|regres\w+|casa|sol)\b)"
        r"[^?.;!]){0,40}?\b(?:salgo|salir|salimos|salgamos|empiezo|empezar|empezamos|arranco"
        r"|arrancar|arrancamos|partir|llegar"
        r"|estar allí)\b"
    ),
    # Whether a start is good, or another would be better.
    "day_asked.start_good": (
        r"(?:está|va|estaría|iría|es|te parece) (?:eso )?(?:bien|buena hora|demasiado (?:pronto"
        r"|tarde|temprano))"
        r"|mejor (?:un poco )?(?:más )?(?:tarde|temprano|pronto|antes|después)"
        r"|demasiado (?:pronto|tarde|temprano)"
    ),
    # When to leave the water, or how long is left.
    "day_asked.leave": (
        r"(?:a qué hora|cuándo|hasta cuándo)\b[^?.;!]{0,30}?\b(?:salir|salgo|salimos|volver"
        r"|vuelvo|volvemos|irme|irnos|irse"
        r"|marchar\w*|regresar|bajar|caminar|recoger|dar la vuelta|parar|terminar"
        r"|dejar de (?:hacer|sacar|tomar))\b"
        r"|(?<!no )(?:es|sería) hora de (?:ir\w*|volver|marchar\w*|recoger|regresar|bajar)"
        r"|(?:cuánto|hasta qué hora|hasta cuándo)(?: \w+)? (?:puedo|podemos) (?:quedar\w*|estar)"
        r"|(?:voy|vamos|llego|llegamos)(?: \w+)? tarde(?! para)"
        r"|(?:alcanzo|llego|llegamos) (?:a tiempo )?(?:al|a coger|a tomar) (?:el )?(?:\S+ )?(?:bus"
        r"|autobús|tren|ferry|barco)"
        r"|cuánto (?:tiempo |rato )?(?:me |nos )?(?:queda|tengo|tenemos)(?! que\b)(?! para\b)"
    ),
    # "It's 2:20 now".
    "day_asked.it_is": r"(?:ya )?son(?: ya)? las|(?:ya )?es la|ahora(?: son las)?",
    "day_asked.about": r"casi|ya|sobre|más o menos",
    "day_asked.now": r"ahora|ya|en punto",
    # Signs for which one leaves at once.
    "day_asked.at_once": (
        r"sub(?:e|iendo)|crec\w+|marrón|turbi\w+|barro|truen\w+|rayos?|relámpagos?|tormenta\w*"
        r"|aguacero"
    ),
    # Before an hour that is asked about alone.
    "day_asked.what_of": r"y|o|qué tal|y si (?:salgo|salimos)",
}
