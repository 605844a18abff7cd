"""Spanish words of white that may be lost in a frame: what is asked of it, how wide it is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "white_asked.white": (
        r"blanc[oa]s?|manchas?|quemad[oa]s?|reventad[oa]s?|altas luces|luces|sobreexpuest[oa]s?"
    ),
    # What is asked of it: may it be kept, does it come back.
    "white_asked.fate": (
        r"(?:puedo|se puede|podría|puede)\b[^.;!?]{0,40}?\b(?:salvar\w*|recuperar\w*|usar\w*"
        r"|aprovechar\w*|guardar\w*|rescatar\w*)|sirve (?:todavía|aún)|todavía sirve"
        r"|o (?:está |ya está )?(?:perdid[oa]|a la basura|la tiro|la borro)"
        r"|(?:perdid[oa]|recuperable|utilizable|sirve)(?= ?\?)"
        r"|(?:la|lo) (?:tiro|borro|guardo)(?= ?[?o])"
    ),
    # Asked only with its mark: "is it gone?".
    "white_asked.fate_marked": (
        r"(?:está|están|es)\b[^.;!?]{0,40}?\b(?:perdid[oa]s?|recuperables?|utilizables?|salvables?)"
    ),
    # Sparkle, which does no harm.
    "white_asked.dots": (
        r"(?:puntos|píxeles|brillos|destellos) (?:sueltos|pequeños|aislados)|solo puntos|puntitos"
        r"|unos pocos (?:puntos|píxeles)"
    ),
    "white_asked.all_channels": (
        r"(?:los tres|todos los|cada|las tres|todas las) (?:canal(?:es)?|gráfic[oa]s?|histogramas?"
        r"|curvas?)"
    ),
    "white_asked.one_channel": (
        r"(?:solo|sólo|un(?: solo)?|una(?: sola)?)(?: en)?(?: un| el)? (?:canal|gráfic[oa]"
        r"|histograma)"
        r"|solo (?:en )?(?:el )?(?:rojo|verde|azul)"
    ),
    # Things that a patch on a screen is as wide as.
    "white_asked.pinhead": r"cabeza de alfiler|grano de arroz",
    "white_asked.pea": r"guisantes?|lentejas?|lápiz",
    "white_asked.fingernail": r"uñas?|botón",
    "white_asked.finger": r"dedos?(?! gordo)",
    "white_asked.thumb": r"pulgar(?:es)?|dedo gordo|monedas?|sellos?",
    "white_asked.fist": r"puños?|manos?",
    "white_asked.screen": r"pantalla|monitor|portátil",
    "white_asked.rear_screen": r"pantalla de la cámara",
    "white_asked.inch": r"pulgadas?",
}
