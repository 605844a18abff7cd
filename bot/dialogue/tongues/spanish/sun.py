"""Spanish words of sun that comes and goes, or lies on a part, as `folded` leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "sun.sun": r"sol|solead\w+",
    # It comes and goes.
    "sun.by_turns": (
        r"va y viene|viene y va|a ratos|de vez en cuando|entra y sale|sale y (?:se va|entra)"
        r"|sol y (?:nubes|sombra)|por momentos|intermitente"
    ),
    # It lies on a part, or in patches.
    "sun.on_part": (
        r"(?:en|sobre|a|da en|pega en) (?:la )?(?:parte|mitad)|medio al sol"
        r"|mitad (?:al|a) (?:pleno )?sol"
        r"|(?:manchas|manchones|manchitas|parches|pedazos) de (?:sol|luz)"
    ),
    # It comes through, and there are patches of it.
    "sun.comes_through": r"(?:sale|asoma|aparece|salio|se cuela|entra|entro|esta entrando)",
    "sun.patches": (
        r"(?:manchas|manchones|parches) (?:claras|claros|brillantes|blancas|blancos|de luz)"
    ),
    # It is on the glass; and what is left of the water lies in shade.
    "sun.on_glass": r"vidrio|cristal|lente|objetivo|filtro",
    "sun.rest_dark": (
        r"(?:lo demas|el resto)(?: (?:esta|sigue|todo|aun|todavia|en|la))* (?:sombra|oscuro)"
    ),
    # What to do meanwhile.
    "sun.what_now": r"que (?:hago|hacemos|se hace|puedo hacer)(?: ahora)?|y ahora que",
    # The even light is back.
    "sun.gone": (
        r"(?:se fue|ya no hay|sin) (?:el )?sol|se nublo|todo parejo|otra vez (?:en )?sombra"
    ),
}
