"""Spanish words: parts of a reply that tell that somebody is near, or was no person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Anybody, by a pronoun, as kin, or by a name.
_QUIEN: Final = (
    r"(?:(?!(?:nadie|ninguno|ninguna|no|quien|yo|mano|sangre)\b)"
    r"(?:(?:los dos|ambos|todos|mi|mis|el|la|los|las|nuestr\w+) )*\w+ )?"
)
_ESTA: Final = (
    r"(?:ya |se )*(?:esta|estan|sigue|siguen|quedo|quedaron|queda|quedan|va|van)"
    r"(?: (?:ya|ahora|aqui|todos|los dos|bien|siempre))*"
)
# What may stand in such a wish: nobody, and no place to go to.
_MAS: Final = (
    r"(?!(?:el|ella|al|alli|ahi|borde|orilla|rocas?|piedras?|perdi|perdido|mochila|tripode|volver"
    r"|cruzar|subir|meterme)\b)\w+"
)

WORDS: Final[Mapping[str, str]] = {
    "with_me.lead": r"y|pero|no|si|ya|ok|bueno|vale|ahora|1|2|uf",
    "with_me.told": (
        rf"{_QUIEN}{_ESTA} (?:conmigo|con nosotros|a mi lado|junto a mi|a nuestro lado)"
        r"(?: (?:ahora|ya|en el (?:camino|sendero|mirador)|en la orilla|todo el rato))*"
        r"|(?:(?:aqui|ya) )*(?:tod[oa]s|amb[oa]s|l[oa]s (?:dos|tres))(?: (?:aqui|ya|bien))*"
        r" (?:conmigo|con nosotr[oa]s|a mi lado|junto a mi)"
        r"|(?:ya )?(?:me|nos) (?:tiene|tienen|agarra|agarran|coge|da|dan) (?:de )?la mano"
        r"|(?:(?:ya|aqui) )*(?:l[aoe]s? )?(?:tengo|tenemos|llevo|agarro)"
        r"(?: (?:a (?:mi|mis|la|el|los|las) \w+))?"
        r" (?:de la mano|conmigo|del brazo|junto a (?:mi|nosotr[oa]s)|a mi lado|al lado)"
        r"(?: ya| ahora)*"
    ),
    "with_me.animal": (
        r"(?:es|era|fue)(?: solo)? (?:el|mi|nuestro|un) perro(?:(?: ,)? (?:y )?no (?:un|el|mi|una)"
        r" (?:nino|nina|persona|hijo))?|(?:el perro )?se (?:esta )?sacud\w+(?: el agua)?"
    ),
    "with_me.wish": (
        rf"(?:yo )?(?:solo )?(?:quiero|queremos|quisiera"
        rf"|necesito)(?: solo)? (?:{_MAS} )*?(?:cerca|foto"
        rf"|imagen|toma|ajustes?|zoom|camara|movil|celular|objetivo|iso|tiempo|seda)(?: {_MAS})*"
    ),
    # Who they are, one after the other, who writes among them.
    "with_me.named": (r"(?:mi |la |el )?\w+ y yo|yo(?: \w+){0,2} y (?:mi |la |el )?\w+"),
    # Somebody rests where nothing happens.
    "with_me.rests": (
        rf"{_QUIEN}{_ESTA} (?:(?:sentad[oa]s?|tranquil[oa]s?|descansando|comiendo|tumbad[oa]s?) )*"
        r"(?:en|al) (?:(?:la|el|su|mi|nuestra) )*(?:toalla|manta|orilla|hierba|banco|coche|sol)"
        r"(?: (?:ya|ahora|(?:con|junto a) \w+))*"
    ),
    "with_me.calm": r"(?:estoy |estamos )?(?:muy |todos )?(?:tranquil[oa]s?|relajad[oa]s?)",
}
