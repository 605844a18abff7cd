"""Spanish words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        r"(?:quiero|quiere|queria|quisiera) (?:morir(?:me|se)?|matarme|matarse|estar muert[oa])"
        r"(?! de)|(?:me|se) (?:voy|va|quiero|quiere) (?:a )?(?:matar|suicidar)"
        r"|suicidio|suicidarse|suicidarme|(?:quitarme|quitarse) la vida"
        r"|no (?:quiero|quiere) (?:seguir )?(?:vivir|viviendo)(?! (?:en|aqui|cerca|con|sin))"
        r"|acabar con (?:mi|su) vida|(?:quiero|quiere) acabar con todo"
    ),
    # Beside a leap from a height it is no game.
    "despair.beside_a_leap": (
        r"a nadie le (?:importo|importa|importaria)|nadie (?:me|lo|la) (?:extranaria|quiere)"
        r"|no puede mas|no puedo mas|no tiene sentido|adios (?:a todos|para siempre)|esta llorando"
        r"|desesperad[oa]"
    ),
}
