"""Spanish words for a visit: the day, the place, who goes, the car."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import FEW_WORDS, NOTHING

WORDS: Final[Mapping[str, str]] = {
    "visit_words.monday": r"lunes",
    "visit_words.tuesday": r"martes",
    "visit_words.wednesday": r"miércoles|miercoles",
    "visit_words.thursday": r"jueves",
    "visit_words.friday": r"viernes",
    "visit_words.saturday": r"sábado|sabado",
    "visit_words.sunday": r"domingo",
    "visit_words.tomorrow": r"(?<!esta )(?<!la )(?<!buena )mañana|(?<!la )(?<!esta )manana(?! de)",
    "visit_words.after_tomorrow": r"pasado mañana",
    "visit_words.coming": r"este|el|próximo|proximo",
    "visit_words.week": r"fin de semana|semana|mes",
    # What is said of a visit to come, and not only of a day.
    "visit_words.visit": (
        r"vamos|voy|iremos|ire|quiero|queremos|salimos|planear|plan|pronóstico|pronostico|excursión"
    ),
    # A wish for such a day, whatever it is for; who does it already does not wish it.
    "visit_words.wished": r"quier\w+|queremos|voy|vamos|puedo|podemos|puede",
    "visit_words.doing": NOTHING,
    "visit_words.past": r"ayer",
    # What stands before the name of a place to go to, in it, and behind it.
    "visit_words.to_place": (
        r"(?:a la|al|a los|a las|hasta|hacia|visitar|ver|en la|en el) (?:la |el |los |las )?"
    ),
    "visit_words.plan_of_place": NOTHING,
    "visit_words.in_a_name": r"de|del|la|las|los",
    "visit_words.kind_of_place": NOTHING,
    "visit_words.no_place": r"Cascada|Coche|Mochila",
    "visit_words.no_place_of_time": r"mañana",
    # Who goes.
    "visit_words.party": (
        r"(?:yo|Yo) y mi [\w-]+|[Mm]i [\w-]+ y yo"
        rf"|con (?:mi|mis|nuestr[oa]s?) {FEW_WORDS}?(?= ?(?:[,.;!?]|$|y (?:él|ella)|al?\b|en\b))"
    ),
    # Who stays at home, or is written to.
    "visit_words.waits": r"en casa|escrib\w+|se queda",
    # Things that somebody carries.
    "visit_words.no_party": r"cámara|camara|móvil|coche",
    "visit_words.car": r"coche|carro|furgo(?:neta)?|caravana|moto",
    "visit_words.mine": r"mi|nuestro|el|la",
    # "The car is parked at …".
    "visit_words.is": r" está| esta| estará| lo| la",
    "visit_words.stands": r"aparcad[oa]|queda|dejo|dejamos",
    "visit_words.at": r"en|junto|detrás|al",
    "visit_words.hour": r"las",
    # Told behind the car.
    "visit_words.colour": r"gris|roj[oa]|blanc[oa]|negr[oa]|azul|verde|platead[oa]|amarill[oa]",
    "visit_words.lot": r"aparcamiento|estacionamiento",
    "visit_words.we_park": r"aparcamos|aparco|(?:dejamos|dejo) el <visit_words.car>",
    # A clause with a verb of its own, and a measure: they tell nothing of the car.
    "visit_words.clause": r"salimos|vamos|y|cuándo|qué",
    "visit_words.measure": NOTHING,
    # Kit and clothes in a car say nothing of where it stands.
    "visit_words.in_car": (
        r"en el (?:coche|auto)|(?:minutos|min|hasta)\b.*\b(?:al|el|to) (?:the )?(?:coche|auto|car)"
    ),
    # Words that say nothing of how a car looks.
    "visit_words.any_car": r"(?:el )?(?:coche|carro|auto)",
}
