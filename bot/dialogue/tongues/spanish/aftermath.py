"""Spanish words: parts of a reply after a fright that tell of nobody's trouble."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_YA: Final = (
    r"(?: (?:ya|en ?seguida|de inmediato|luego luego|rapido|todos|todas|los dos|las dos|a tiempo"
    r"|corriendo|juntos|juntas|arriba|en cuanto dijiste|de una))*"
)
_NOMAS: Final = r"(?:nomas|no mas|nada mas|solo|solamente)"

WORDS: Final[Mapping[str, str]] = {
    "aftermath.lead": r"y|pero|si|ya|ok|bueno|vale|uf|pues|entonces|1|2",
    "aftermath.left": (
        r"(?:ya |nos )*(?:subimos|fuimos|salimos|nos fuimos|me fui|sali|subi|recogimos todo"
        rf"|empacamos|dimos la vuelta){_YA}"
    ),
    "aftermath.view": (
        r"(?:desde (?:aqui|aca)(?: arriba)? )?(?:(?:todavia|aun) )?(?:se ve|vemos|veo|se alcanza a"
        r" ver)"
        r" (?:el|la) (?:cascada|salto|caida|agua|rio|arroyo|barranco|valle)"
        r"(?: (?:bien|desde (?:aqui|aca)(?: arriba)?|entre l[oa]s \w+|abajo|alla abajo))*"
    ),
    # Somebody only would have liked to.
    "aftermath.keen": (
        rf"(?:(?:ella|el) )?{_NOMAS} (?:tiene|tenia|tienen|trae|le dan|le dieron)(?: muchas)? ganas"
        rf"|(?:ella|el) {_NOMAS} (?:quiere|queria)"
    ),
    "aftermath.wonders": (
        rf"(?:(?:yo|te|q|que) )*(?:{_NOMAS} )?(?:pregunto|preguntaba|preguntamos"
        r"|queria saber|quiero saber) si"
    ),
    "aftermath.sun": (
        r"(?:ahora |ya )?(?:sale|salio|esta saliendo|se asoma) el sol"
        r"(?: y (?:pega|da|cae) (?:justo |directo )?(?:en|sobre) (?:la|el)"
        r" (?:cascada|agua|caida|salto))?"
    ),
    "aftermath.next": r"(?:y )?para la (?:proxima|otra)(?: vez)?",
    # Whether something is safe, asked behind a "no" to whether anybody is in danger.
    "aftermath.is_it_safe": (
        r"(?:es|esta|sera|seria) (?:\w+ )?(?:peligros[oa]|segur[oa]|riesgos[oa])|se puede"
        r"|(?:puede|podemos) (?:pasar|cruzar)"
    ),
    # Somebody who is not with them: whom Spanish marks by an "a", as it does no thing.
    "aftermath.without_somebody": (
        r"(?:dejamos|deje|hemos dejado|perdimos|perdi|hemos perdido|abandonamos)(?: atras)?"
        r" (?:al|a) (?!(?:salvo|tiempo|casa|cargo|un lado|lado|mano|las|los|todo)\b)\w+"
        r"|(?:lo|la|los|las) (?:dejamos|perdimos)(?: atras)?(?= [.,]|$)"
    ),
    "aftermath.nothing_more": (
        r"para (?:los |las |el |la |mi |mis )?(?:nosotr[oa]s|mi|ella|ellos|nin[oa]s?|todos|perro"
        r"|hij[oa]s?)|ahi|alli|aqui|ahora|entonces|o no|hacerlo|ir"
    ),
    "aftermath.wet": (
        r"agua|arroyo|rio|poza|vado|cruzar\w*|pasar\w*|vadear\w*|piedras?|rocas?|tronco|otro lado"
        r"|nadar|banar\w*|saltar\w*|meter\w*"
    ),
    "aftermath.shaken": (
        rf"(?:{_NOMAS} )?(?:me|nos|le|les) (?:tiemblan|temblaban|flaquean|estan temblando)"
        rf"(?: (?:un poco|todavia|aun))* (?:las )?(?:piernas|rodillas)"
        rf"(?: (?:{_NOMAS}|un poco|todavia|aun|jaja))*"
        rf"|(?:{_NOMAS} )?(?:las piernas|las rodillas) (?:me|nos) (?:tiemblan|flaquean)"
        rf"(?: (?:{_NOMAS}|un poco|todavia|aun))*"
        rf"|(?:{_NOMAS} )?(?:estoy|estamos) (?:un poco )?temblorosos?"
    ),
    # What is asked of another day, or of a shop: no picture of now.
    "aftermath.later": (
        r"(?:la )?proxima(?: vez)?|otro dia|compr(?:o|ar|arme|amos)|me alcanza|me conviene comprar"
    ),
    # Where people stand who are away from the water.
    "aftermath.from_here": r"desde (?:aqui|aca|alli|ahi|el (?:camino|sendero))(?: arriba)?",
}
