"""Spanish words: what people tell while an emergency is held, and what makes it no move."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "moves.water": r"agua|rio|arroyo",
    "moves.louder": r"mas fuerte",
    "moves.roar": r"ruge",
    "moves.who": r"ella|el|amig\w*|dijo|fue|iba",
    "moves.went_or_said": r"iba|queria|dice|vio|vieron|fue|quizas?|seguramente",
    "moves.place": r"coche|carro|refugio|bano|aparcamiento|puente|sendero|mirador",
    "moves.found": r"hay|veo|vemos|arriba|lleva|va",
    "moves.way": r"pista|carretera|camino|sendero|puente",
    "moves.going": r"subo|subimos|subiendo|vamos|voy|salimos|saliendo|nos vamos|de camino",
    "moves.turned_round": r"nunca|tampoco|si|debo|puedo|cruz\w*|vad\w*|atrapad\w*",
    "moves.out_of": r"fuera de|lejos de|(?:salimos|saliendo|salgo) de",
    "moves.the": r"la|el",
    "moves.to_danger": (
        r"agua|rio|arroyo|cauce|cascada|garganta|barranco|orilla|borde|cresta|cumbre|arbol"
        r"|herid\w*|cojea|cayo"
    ),
    "moves.for_gear": r"tripode|camara|mochila|bolsa|foto|equipo|bateria",
    "moves.down": r"abajo|bajo|baja",
    "moves.not": r"no",
}
