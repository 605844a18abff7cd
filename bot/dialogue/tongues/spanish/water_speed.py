"""Spanish words by which the speed of the water that the bot reckons with is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "water_speed.asked": (
        r"velocidad (?:del agua|de caida|de la corriente)"
        r"|(?:a que velocidad|cuan rapido|que tan rapido|como de rapido) (?:cae|va|corre|baja)"
        r" (?:el |esa |la )?(?:agua|cascada|corriente)"
    ),
    # Of people in it.
    "water_speed.of_people": r"segur\w*|peligr\w*|vade\w*|cruz\w*|nadar|fuerte",
}
