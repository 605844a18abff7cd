"""Spanish words of frames that came out dull or blue, and are to be mended at home."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # The picture as a whole; sky, rock and light may be so.
    "home_edits.dull": (
        r"(?<!cielo )(?<!roca )(?:gris(?:es|ácea)?|apagad[oa]s?|plan[oa]s?|sos[oa]s?|mate"
        r"|lavad[oa]s?|sin (?:contraste|fuerza|vida))"
    ),
    "home_edits.blue": r"azul(?:es|ad[oa]s?)?",
    # Who wants to do something about it.
    "home_edits.wants": (
        r"arregl\w+|edit\w+|salv\w+|mejor\w+|correg\w+|corrijo|revel\w+|por dónde empiezo"
        r"|qué (?:puedo|debo|hago)|cómo (?:lo|la|las|los)? ?(?:arreglo|edito|saco|hago|mejoro)"
        r"|se puede|puedo"
    ),
}
