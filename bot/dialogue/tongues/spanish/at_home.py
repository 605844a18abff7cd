"""Spanish words of who is home again, or wants to go through frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "at_home.home": (
        r"(?:estoy|estamos|ya|llegué|llegamos) (?:\w+ ){0,2}?(?:a|en) (?:casa|el hotel)"
        r"|^(?:(?:ya|bueno|listo|por fin)[ ,]+)*en casa\b"
    ),
    "at_home.review": (
        r"(?:repasar|revisar|comentar|ver) (?:las |mis |estas |\d+ )*(?:fotos|imágenes|imagenes"
        r"|tomas)|^repaso$"
    ),
    # Where one begins to sort.
    "at_home.sort": (
        r"(?:por|con) (?:dónde|donde|cuál|cual) (?:empiezo|empezamos|comienzo|empezar|comenzar)"
        r"(?= ?[?.!,]|$| (?:a (?:escoger|elegir|separar|seleccionar|ordenar)|con (?:las fotos|ellas"
        r"|tantas)))"
        r"|(?:cómo|como) (?:empiezo|comienzo|hago)(?: \w+){0,2} (?:a )?(?:escoger|elegir|separar"
        r"|seleccionar|ordenar)"
    ),
    "at_home.brings": r"aquí (?:está|están|va|van)|(?:te )?(?:envío|mando|enseño)",
    # "I left it at home", "we are going home": said on the way, or of something else.
    "at_home.not_yet": r"olvid\w*|dej\w*|cuando|camino|mañana|luego",
    # A part of a sentence that says so by itself: "caught the bus, home with tea now".
    "at_home.back": (
        r"(?:(?:y|ya|ahora|de vuelta|por fin) )*en casa"
        r"(?: (?:ya|ahora|por fin|sec[oa]s?|con (?:un |una )?\w+))+"
    ),
    # Who only longs for it.
    "at_home.wished": r"quiero|queremos|quisiera|ojalá|pronto",
    # Before the walk: nobody has left yet.
    "at_home.still": (
        r"(?:aún|todavía|sigo|seguimos|aun|todavia) (?:\w+ ){0,2}?(?:en (?:casa|el hotel|la cocina"
        r"|la cama|el refugio))|(?:aún|todavía) no (?:he|hemos) salido|sin salir"
    ),
    # What only somebody says who stands there.
    "at_home.at_water": (
        r"(?:trípode|tripode|cámara|camara) (?:ya )?(?:está )?(?:puest[oa]|montad[oa])"
        r"|(?:estoy|estamos|sigo|seguimos) (?:\w+ ){0,2}?(?:delante|enfrente|frente a"
        r"|en (?:la pasarela|el puente|la plataforma|la orilla|el mirador)"
        r"|junto (?:al|a la) (?:agua|arroyo|cascada|río)|ante la cascada|ahí|allí)"
        r"|(?:estoy|estamos) a (?:unos )?\d|no me he movido|no nos hemos movido"
    ),
    # No frame is there to be gone through.
    "at_home.none_taken": (
        r"no (?:he|hemos) (?:hecho|sacado|tomado) (?:todavía |aún )?(?:ninguna|ni una|fotos?)"
        r"|(?:ninguna|sin|no tengo(?: ninguna)?) fotos?(?= ?(?:todavía|aún|[,.;!?]|$))"
        r"|(?:de )?la (?:foto|toma) (?:vieja|anterior)"
    ),
    # What is asked for a frame to come.
    "at_home.asks_now": (
        r"(?:dónde|a qué) enfoco|qué (?:objetivo|diafragma|apertura|tiempo|velocidad|filtro"
        r"|ajustes)"
        r" (?:le )?(?:pongo|uso|elijo|meto)|qué le pongo|con qué empiezo"
    ),
    # What was, or is asked for another time.
    "at_home.of_then": (
        r"en (?:esa|esta|la \w+) (?:foto|toma|imagen)"
        r"|era|estaba|había|hubiera|debí|próxima|mañana|pasad[oa]"
    ),
}
