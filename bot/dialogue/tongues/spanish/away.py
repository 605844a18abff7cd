"""Spanish words: who is away from where nobody should stand, and who is meant."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_LUGAR: Final = (
    r"(?:sendero|camino|mirador|plataforma|puente|pasarela|carretera|terraza|aparcamiento|parking"
    r"|estacionamiento|coche|carro|auto|refugio|hotel|pista|banco|prado|cafeteria|toallas?|mantas?)"
)
_VALLA: Final = r"(?:barandilla|valla|baranda|cuerda|barrera|cerca)"
_EL: Final = r"(?:el |la |los |las |un |una |mi |nuestro |otro )*"
_RIO: Final = r"(?:agua|rio|arroyo|poza|corriente)"
_EN_TIERRA: Final = r"en la orilla|a la orilla|en tierra|en seco"
_FUERA: Final = (
    r"^(?:ya )?(?:sali|salio|salimos|salieron|he salido|hemos salido|ha salido|estoy fuera"
    r"|estamos fuera|esta fuera)(?: ya)?(?= ,|$)"
)

WORDS: Final[Mapping[str, str]] = {
    "away.reached": (
        rf"(?:en|al?|hasta|detras del?|tras) {_EL}(?:{_LUGAR}|{_VALLA})|en casa"
        r"|(?:de|a) este lado"
    ),
    "away.returned": (
        r"con la correa|(?:ya )?(?:bajo|bajaron|ha bajado|han bajado) (?:ya|otra vez|de nuevo)"
        r"|(?:ya )?(?:volvio|ha vuelto|regreso|ha regresado|volvieron|han vuelto)"
        r"|(?:ya )?esta(?:n)? (?:(?:aqui|ya) )*(?:conmigo|con nosotros|con nosotras|de vuelta)"
    ),
    "away.stepped": (
        r"(?:me|nos) (?:he |hemos )?(?:aparte|apartado|alejado|aleje|retire|retirado|apartamos"
        r"|alejamos)"
    ),
    "away.beside": """
        regrese regresamos regresado vuelvo hemos ha bajado bajamos baje subido llegado llegamos
        llegue quedo quedamos queda ido fui fuimos manana hoy antes abajo esta ya otra vez volvimos
        vuelto pies botas los las llame""",
    "away.with_things": (
        r"(?:con|y) (?:(?:el|la|mi|todo|toda|los|las|todas|mis) )*(?:tripode|camara|equipo|mochila"
        r"|cosas|perro)|(?:tripode|camara|perro) (?:tambien|conmigo|incluid[oa])"
    ),
    "away.another": r"mi \w+ (?:esta|se|ya|volvio|bajo|salio)|el esta|ella esta",
    "away.for_oneself": r"puedo|podemos|quiero|queremos|voy|vamos|estoy|estamos",
    "away.who_writes": r"yo|estoy|me he|he vuelto|volvi",
    "away.self": r"yo|estoy|estamos|conmigo|nosotros|todos|todas|nadie|no",
    "away.others": (
        r"estamos|todos|todas|nadie|esta|estan|el|ella|ellos|mi \w+|volvio|volvieron|volvimos"
    ),
    "away.no_more": (
        r"ya no (?:hay nadie|(?:estoy|estamos|esta)(?: (?:ahi|alli|(?:en|sobre|bajo|detras del?)"
        r" (?:(?:el|la) )?\w+))?)"
    ),
    # What leaves one kind of place, and no other.
    "away.left_lip": r"(?:lejos|fuera|apartad\w|alejad\w) del (?:borde|filo)",
    "away.left_wading": rf"{_EN_TIERRA}|(?:fuera|sali|salimos|salido) del {_RIO}|{_FUERA}",
    "away.left_ice": rf"{_EN_TIERRA}|fuera del hielo|(?:baje|sali) del hielo",
    "away.left_under": rf"fuera de (?:ahi|alli|debajo|detras)|{_FUERA}",
    "away.left_climb": r"^ya (?:estoy|estamos|esta) abajo(?= ,|$)",
    "away.left_barrier": r"(?:volvi|volvimos) a pasar",
}
