"""Spanish words of who teaches: a group of mixed cameras, formats, one other person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_LOS: Final = r"(?:todos|todas|(?:el|mi|mis|los|las) <group.people>)"

_THINGS: Final = """
    esto eso equipo cámara objetivo luz agua todo nada
"""

WORDS: Final[Mapping[str, str]] = {
    "group.count": r"dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|doce",
    "group.people": r"alumn[oa]s?|participantes?|grupo|clase|taller|todos|todas|personas",
    "group.cameras": r"cámaras?|formatos?",
    "group.mixed": r"distint[ao]s?|diferentes?|vari[ao]s|mezclad[ao]s?",
    "group.we": r"somos <group.count>",
    "group.asked": (
        rf"qué (?:les )?(?:digo|doy) a (?:mis |los |las |todos|todo )?(?:<group.count>"
        rf" )?<group.people>?|(?:ajustes|valores|una línea) para {_LOS}"
    ),
    "group.phone": r"móvil(?:es)?|teléfonos?",
    "group.full_frame": r"formato completo",
    "group.and": r"y",
    # What is asked for other formats: "and on APS-C?".
    "group.for_it": (
        r"^(?:y |ok )*(?:para|en|con)|(?:traduc\w*|convert\w*|qué significa|ajustes|valores)"
        r" (?:\w+ ){0,2}?(?:para|en|con|a)"
    ),
    "group.mine": r"yo|mi|mis|tengo|uso|llevo",
    "group.own": r"tengo|uso",
    "group.of_us": r"de nosotros",
    "group.counted": r"móviles",
    # Somebody, what they do with a camera, and which number they have.
    "group.who": (
        r"(?:el|la|un|una|mi) (?:\w+ )?(?:alumn[oa]|amig[oa]|chic[oa])(?: \d{1,2})?|él|ella"
    ),
    "group.has": r"tiene|usa|lleva|trabaja",
    "group.numbered": r"alumn[oa]",
    "group.only": r"solo|sólo",
    "group.then": r"y",
    # What has a camera, or is one, and is nobody.
    "group.things": _THINGS,
    "group.phone_person": (
        r"(?:la|el|las|los|una?|mi|mis) (?:alumn[oa]s?|chic[oa]s?|personas?|participantes?)"
        r" (?:del|de los|con(?: el)?) (?:móvil(?:es)?|teléfonos?|movil(?:es)?)"
    ),
}
