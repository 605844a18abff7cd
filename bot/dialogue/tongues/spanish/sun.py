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
        r"|manchas de (?:sol|luz)"
    ),
    # It comes through, and there are patches of it.
    "sun.comes_through": r"(?:sale|asoma|aparece|salio|se cuela)",
    "sun.patches": r"manchas (?:claras|brillantes|blancas|de luz)",
    # The even light is back.
    "sun.gone": (
        r"(?:se fue|ya no hay|sin) (?:el )?sol|se nublo|todo parejo|otra vez (?:en )?sombra"
    ),
}
