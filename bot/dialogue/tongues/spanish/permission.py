"""Spanish words: who asks for, or tells of, a place where nobody stands."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

#: Between who asks and the place: nothing that denies, and no end of the clause.
_GAP: Final = r"(?: (?!no\b|nunca\b|not\b|never\b|nicht\b|nie\b|kein)[^ ,.]+){0,5}?"
_PUEDO: Final = (
    r"(?:puedo|podemos|podria|podriamos|se puede|puede uno|quiero|queremos|me dejan"
    r"|(?:es seguro|esta permitido|es posible|hasta donde|cuanto|como de cerca|que tan cerca))"
)
_IR: Final = (
    r"(?:ir|irme|subir\w*|llegar|poner\w*|acercar\w*|estar|sentar\w*|parar\w*|asomar\w*|caminar"
    r"|andar|pisar|pasar|colocar\w*|quedar\w*|cerca|avanzar|disparar)"
)
_BORDE: Final = (
    r"(?:al|del|hasta el|en el|sobre el|por el|hacia el|a la|en la|hasta la|sobre la)"
    r" (?:mismo |propio )?(?:borde|filo|labio|precipicio|abismo|cornisa|despenadero|acantilado)"
)
_AL_AGUA: Final = (
    r"(?:puedo|podemos|podria|podriamos|se puede|pueden?|dejo que)"
    r"(?: (?!no\b|nunca\b)[^ ,.]+){0,3}? (?:meter(?:me|te|se|nos)|entrar|banar(?:me|se|nos))"
    r"(?: [^ ,.]+){0,2}? (?:al|en el|en la|dentro del) (?:agua|rio|arroyo|poza|corriente)"
)
_BANARSE: Final = (
    r"(?:banar(?:se|me|nos)?|nadar|chapotear|zambullirse|(?:dar(?:se|nos)|pegar(?:se|nos)) un"
    r" (?:bano|chapuzon|remojon))"
)
#: Somebody of the party, and what they want or may: "los niños quieren bañarse".
_QUIEREN: Final = (
    r"(?:(?:mi|mis|el|la|los|las|nuestr\w+|un|una) (?:[^ ,.]+ )?[^ ,.]+|ellos|ellas|alguien|todos)"
    r"(?: (?:se|me|ya))? (?:quieren?|van? a|pueden?|podrian?|quisieran?)"
    r"(?: (?!no\b|nunca\b)[^ ,.]+){0,2}?"
)
_EL_AGUA: Final = (
    r"(?:al?|en|dentro del?) (?:el |la |las |los )?(?:agua|rio|arroyo|pozas?|corriente|laguna"
    r"|charcas?|olla)"
)
_SE_METEN: Final = (
    rf"{_QUIEREN} (?:{_BANARSE}|(?:meterse|entrar|tirarse|saltar|zambullirse"
    rf"|jugar)(?: [^ ,.]+){{0,2}}? {_EL_AGUA})|(?:puede|pueden|podria|podrian|dejo que) (?:mi|mis"
    rf"|el|la|los|las) (?:[^ ,.]+ )?[^ ,.]+ (?:{_BANARSE}|(?:meterse|entrar|tirarse|saltar"
    rf"|jugar)(?: [^ ,.]+){{0,2}}? {_EL_AGUA})"
)
_ALLI: Final = (
    r"(?:ajustes?|foto|fotos|toma|disparar|objetivo|velocidad)(?: \w+)? (?:desde|en|sobre) (?:el"
    r"|la) (?:labio|filo|precipicio|borde de la cascada|borde del (?:salto|precipicio))"
)
_ESTA: Final = (
    r"(?:hij\w|hijos|nin\w|ninos|amig\w|mujer|marido|hermano|hermana|el|ella|alguien|gente)"
    r" (?:esta|estan|juega|juegan|camina|se acerca|se asoma|se sento)(?: (?!no\b)[^ ,.]+)?"
    r" (?:cerca del|al|en el|junto al|sobre el) (?:borde|precipicio|labio|filo)"
    r"(?! (?:de la (?:foto|imagen)|del encuadre))"
)

WORDS: Final[Mapping[str, str]] = {
    "permission.picture": r"encuadr\w*|imagen|enfoc\w*|recort\w*|cortar|nitid\w*|medir|mido",
    "permission.to_lip": (
        rf"{_PUEDO}{_GAP} {_IR}{_GAP} {_BORDE}|cerca {_BORDE}{_GAP} (?:puedo|podemos|se puede)"
    ),
    "permission.into_water": rf"{_AL_AGUA}|{_SE_METEN}",
    "permission.stands": _ESTA,
    "permission.settings": _ALLI,
}
