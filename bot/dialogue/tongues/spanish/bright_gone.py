"""Spanish words: bright things at the frame's edge that are out of it now."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_CLARA: Final = (
    r"(?:piedras?|rocas?|manchas?|hojas?|ramas?|cosas?|zonas?)(?: \w+)? (?:clar|brillos|blanc)as?"
    r"|(?:piedras?|rocas?|hojas?|cosas?) brillantes?"
)
_FUERA: Final = r"(?:fuera(?: del? (?:cuadro|encuadre|foto|la foto))?|afuera)"

WORDS: Final[Mapping[str, str]] = {
    "bright_gone.told": (
        rf"(?:(?:ya|ahora|ok|listo|bueno|y) )*(?:no (?:esta|estan|se ven?|sale|salen)|desaparecio"
        rf"|desaparecieron|se fue|se fueron|saque|quite) (?:la|las) (?:{_CLARA})"
        r"(?: (?:del|de la|en el|ya|borde|esquina|lado|encuadre|cuadro|foto|ahora))*"
        rf"|(?:(?:ya|ahora|ok|listo|bueno|y) )*(?:la|las) (?:{_CLARA}) (?:ya )?(?:no (?:esta|estan"
        rf"|se ven?|salen?)|quedo {_FUERA}|quedaron {_FUERA}|estan? {_FUERA}|desaparecio"
        r"|desaparecieron)(?: (?:ya|ahora))*"
    ),
}
