"""Spanish words: somebody out of hearing, loose rock, and when neither is an alarm."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "asked_first.unheard": (
        r"no (?:oigo|oimos) (?:si|a mi|a nuestr\w+|cuando)|no (?:lo|la|los|las) (?:oigo|oimos)"
        r"|sin contacto con"
    ),
    # Somebody who is held where they are, or hurt, in a few words.
    "asked_first.stuck": (
        r"(?:estoy|estamos|quede|quedamos) (?:atrapad|herid|encerrad|colgad|varad|lastimad)[oa]s?"
        r" (?:en|por|junto|cerca|aqui|aca|ahi)"
    ),
    "asked_first.loose": r"rocas? sueltas?|cay\w+ (?:piedras|rocas|una (?:piedra|roca))",
    "asked_first.of_picture": r"tripode|primer plano|foto|encuadre|cartel|enfo\w*",
    "asked_first.passed": r"(?:en|por) el camino (?:de ida|hasta aqui|hacia aqui)",
    "asked_first.noise": NOTHING,  # not written yet
}
