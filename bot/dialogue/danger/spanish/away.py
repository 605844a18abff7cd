"""Spanish wordings: who is away from where nobody should stand, and who is meant."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.kinds import DangerKind

_LUGAR: Final = (
    r"(?:sendero|camino|mirador|plataforma|puente|pasarela|carretera|terraza|aparcamiento|parking"
    r"|estacionamiento|coche|carro|auto|refugio|hotel|pista|banco|prado|cafeteria)"
)
_VALLA: Final = r"(?:barandilla|valla|baranda|cuerda|barrera|cerca)"
_EL: Final = r"(?:el |la |los |las |un |una |mi |nuestro |otro )*"

AWAY: Final[Mapping[str, str]] = {
    "reached": (
        rf"(?:en|al?|hasta|detras del?|tras) {_EL}(?:{_LUGAR}|{_VALLA})|en casa"
        r"|(?:de|a) este lado"
    ),
    "returned": (
        r"con la correa"
        r"|(?:ya )?(?:volvio|ha vuelto|regreso|ha regresado|volvieron|han vuelto)"
        r"|(?:ya )?esta(?:n)? (?:(?:aqui|ya) )*(?:conmigo|con nosotros|con nosotras|de vuelta)"
    ),
    "stepped": (
        r"(?:me|nos) (?:he |hemos )?(?:aparte|apartado|alejado|aleje|retire|retirado|apartamos"
        r"|alejamos)"
    ),
    "beside": """
        regrese regresamos regresado vuelvo hemos ha bajado bajamos baje subido llegado llegamos
        llegue quedo quedamos queda ido fui fuimos manana hoy antes abajo esta ya otra vez volvimos
        vuelto pies botas los las llame""",
    "with_things": (
        r"(?:con|y) (?:(?:el|la|mi|todo|toda|los|las|todas|mis) )*(?:tripode|camara|equipo|mochila"
        r"|cosas|perro)|(?:tripode|camara|perro) (?:tambien|conmigo|incluid[oa])"
    ),
    "another": r"mi \w+ esta|el esta|ella esta",
    "for_oneself": r"puedo|podemos|quiero|queremos|voy|vamos|estoy|estamos",
    "who_writes": r"yo|estoy|me he|he vuelto|volvi",
    "self": r"yo|estoy|estamos|conmigo|nosotros|todos|todas|nadie|no",
    "others": (
        r"estamos|todos|todas|nadie|esta|estan|el|ella|ellos|mi \w+|volvio|volvieron|volvimos"
    ),
    "no_more": (
        r"ya no (?:hay nadie|(?:estoy|estamos|esta)(?: (?:ahi|alli|(?:en|sobre|bajo|detras del?)"
        r" (?:(?:el|la) )?\w+))?)"
    ),
}

_RIO: Final = r"(?:agua|rio|arroyo|poza|corriente)"
_EN_TIERRA: Final = r"en la orilla|a la orilla|en tierra|en seco"
_FUERA: Final = (
    r"^(?:ya )?(?:sali|salio|salimos|salieron|he salido|hemos salido|ha salido|estoy fuera"
    r"|estamos fuera|esta fuera)(?: ya)?(?= ,|$)"
)

#: What leaves one kind of place, and no other.
LEFT: Final[Mapping[DangerKind, str]] = {
    DangerKind.LIP: r"(?:lejos|fuera|apartad\w|alejad\w) del (?:borde|filo)",
    DangerKind.WADING: rf"{_EN_TIERRA}|(?:fuera|sali|salimos|salido) del {_RIO}|{_FUERA}",
    DangerKind.ICE: rf"{_EN_TIERRA}|fuera del hielo|(?:baje|sali) del hielo",
    DangerKind.UNDER: rf"fuera de (?:ahi|alli|debajo|detras)|{_FUERA}",
    DangerKind.CLIMB: r"^ya (?:estoy|estamos|esta) abajo(?= ,|$)",
    DangerKind.BARRIER: r"(?:volvi|volvimos) a pasar",
}
