"""Spanish words by which somebody asks outright for settings, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_SETTINGS: Final = r"(?:ajustes?|valores?|configuracion|tiempo|velocidad|numeros?|exposicion)"

WORDS: Final[Mapping[str, str]] = {
    # Anywhere in a message.
    "settings_asked.outright": (
        r"(?:que|q|como) (?:le |la )?(?:pongo(?! en (?:la|el|mi) (?!camara))"
        r"|configuro|ajusto|seteo)"
        rf"|(?:dame|dime|dan?me solo) (?:\w+ ){{0,4}}?{_SETTINGS}"
        r"|(?:que|cuales) (?:ajustes|valores|configuracion)|(?:que|cual) (?:tiempo|velocidad)"
        r" (?:pongo|uso|le pongo)"
    ),
    # As the last words of it.
    "settings_asked.at_end": rf"(?:que|cual|cuanto) {_SETTINGS}|{_SETTINGS} por favor",
    # As a sentence of its own, with a question's mark.
    "settings_asked.alone": rf"(?:y )?(?:el |la |los )?{_SETTINGS}",
}
