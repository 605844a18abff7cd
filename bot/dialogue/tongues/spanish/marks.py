"""Spanish words by which the language of a message is known; own lists."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Small words and greetings that mark the language: none is a word of another one here.
    "marks.small": """
        el los las un una es estoy está con por para que qué del y cómo hay tengo muy
        pero al cuál quiero puedo desde favor hola buenos buenas soy eres somos gracias
        muchas muchos días veo oigo uso lector pantalla tal todo toda nada quién cuándo
        dónde sordo sorda daltónico daltónica""",
    # Words of the trade, and of dialects, that no other language here has.
    "marks.trade": """
        alto alta metros roca piedra trípode tripode cascada salto arroyo móvil movil
        celular cámara camara objetivo polarizador nublado sombra velocidad diafragma
        exposición exposicion fondo pasos blando blanda hojas cielo agua lejos distancia
        unos más mas tiene mide q""",
    # Greetings are enough alone.
    "marks.greetings": "hola buenas gracias",
}
