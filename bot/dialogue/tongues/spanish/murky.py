"""Spanish words: brown or murky water in a few plain words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_ARROYO: Final = (
    r"(?:el |la |este |esta )?(?:agua|arroyo|rio|riachuelo|quebrada|cascada|corriente|poza|estero)"
    r"(?: (?:aqui|aca|de abajo|de arriba))?"
)
_ESTA: Final = (
    r"(?: (?:esta|viene|baja|se ve|se esta|poniendo|se puso|se pone|anda|corre|sale|cae|vino|va"
    r"|se ha puesto|se volvio|ahora|hoy|de repente|ya|muy|bien|re|toda|todo|medio|un poco|algo"
    r"|bastante|como|mas|super|color|de color|medio))+"
)
_TURBIA: Final = (
    r"(?:turbi[oa]|marron(?:cit[oa])?|cafe|cafecit[oa]|suci[oa]|barros[oa]|embarrad[oa]|chocolate"
    r"|lodos[oa]|enturbiad[oa]|terros[oa])"
)
_BEHIND: Final = (
    r"(?: (?:ahora|hoy|ya|de repente|todo|toda|desde (?:hace )?(?:\w+ )?\w+"
    r"|(?:por|con|tras|despues de) (?:la |el |las )?(?:lluvias?|tormenta|aguacero)"
    r"(?: de (?:ayer|anoche|la noche|hoy))?))*"
)

WORDS: Final[Mapping[str, str]] = {
    "murky.told": rf"(?:(?:y|pero|ahora|uy|mira|che|oye) )*{_ARROYO}{_ESTA} {_TURBIA}{_BEHIND}",
}
