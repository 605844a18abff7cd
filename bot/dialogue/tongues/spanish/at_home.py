"""Spanish words of who is home again, or wants to go through frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "at_home.home": (
        r"(?:estoy|estamos|ya|llegué|llegamos) (?:\w+ ){0,2}?(?:a|en) (?:casa|el hotel)|^en casa\b"
    ),
    "at_home.review": (
        r"(?:repasar|revisar|comentar|ver) (?:las |mis |estas )*(?:fotos|imágenes|tomas)|^repaso$"
    ),
    "at_home.brings": r"aquí (?:está|están|va|van)|(?:te )?(?:envío|mando|enseño)",
    # "I left it at home", "we are going home": said on the way, or of something else.
    "at_home.not_yet": r"olvid\w*|dej\w*|cuando|camino|mañana|luego",
}
