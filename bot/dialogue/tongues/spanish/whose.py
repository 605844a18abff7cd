"""Spanish words: who is in the danger that a message tells of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "whose.own": (
        r"me (?:cai|he|caigo|resbale|rompi|torci|duele|ahogo|sangra|corte|golpee|perdi)"
        r"|estoy (?:en|atrapad\w|herid\w|perdid\w|solo|sola|mojad\w|congelad\w|temblando|sangrando)"
        r"|no puedo (?:salir|moverme|andar|caminar|respirar|nadar)"
        r"|mi (?:pierna|tobillo|brazo|pie|cabeza|mano|rodilla)"
    ),
    "whose.we": r"estamos|nos|nosotros|nosotras|hemos|somos|mi \w+ y yo",
    "whose.several": (
        r"dos|tres|ambos|varios|ninos|amigos|colegas|alumnos|padres|chicos|chicas|hijos|gente|grupo"
        r"|estan|se han|cayeron|han caido"
    ),
    "whose.other": (
        r"ella|alguien|colegas|mis amig\w+|mi (?:amig\w|hij\w|marido|mujer|esposa|novi\w|hermano"
        r"|hermana|padre|madre)"
    ),
    "whose.first": r"yo|mi|mis|conmigo|estoy|tengo|puedo|veo|oigo|siento|encuentro",
}
