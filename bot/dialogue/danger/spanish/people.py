"""Spanish wordings: who and what a message speaks of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PEOPLE: Final[Mapping[str, str]] = {
    "person": """
        (yo|me|mi|nos|nosotros|nosotras|el|ella|ellos|ellas|le|les|lo|la|los|alguien|uno|una|
        todos|se|estoy|estamos|voy|vamos), (nino|nina|ninos|ninas|chico|chica|chicos|chicas|
        hombre|mujer|hijo|hija|hermano|hermana|madre|padre|mama|papa), (abuelo|abuela|tio|tia|
        primo|prima|amigo|amiga|amigos|companero|companera|pareja|marido|novio|novia|alumno|
        alumna), (alumnos|profe|profesor|profesora|maestra|seno|guia|senor|senora|grupo|gente|
        excursionista|turista|turistas|perro|bebe|peque|esposa|mujer|muchacho|muchacha|chaval|
        chavales|crio|crios)""",
    "other": """
        (ella|ellos|ellas|alguien|otro|otra|nino|nina|ninos|ninas|chico|chica|chicos|chicas|
        hombre|mujer|hijo|hija|hermano|hermana|madre|padre|mama|papa), (abuelo|abuela|tio|tia|
        primo|prima|amigo|amiga|amigos|companero|companera|pareja|marido|novio|novia|alumno|
        alumna|alumnos|profe|profesor|profesora|maestra|seno|guia|senor|senora|excursionista|
        turista|perro|peque|esposa|muchacho|muchacha|chaval|crio|uno de|una de|dos de|(mi|mis|
        nuestro|nuestra)), los (dos|tres|demas|otros), la (otra|seno|profe), el (profe|otro|
        guia)""",
    "thing": """
        (tapa|gorra|sombrero|objetivo|tripode|camara|movil|hoja|hojas|rama|pato|filtro|anillo|
        histograma|foto|fotos|archivo|archivos|luz|sombra|pata)""",
    "thing_adrift": """
        (tapa|gorra|sombrero|hoja|pato|filtro|botella|espuma|niebla|burbujas|anillo|enfoque)""",
    "water": """
        (agua|aguas|rio|arroyo|corriente|poza|charca|laguna|lago|remolino|cascada|salto|
        torrente|cauce|riachuelo|vado|rapidos|rapido|quebrada|riera|crecida|caudal|nivel|caida)""",
}
