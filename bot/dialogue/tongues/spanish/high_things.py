"""Spanish words: things as high as a part of the body."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "high_things.thing": (
        r"tr[ií]pode|patas|pinza|palo|rocas?|piedras?|tronco|helechos?|hierba|arbusto|muro|valla|barandilla|[áa]rbol"
    ),
    "high_things.height": (
        r"(?:hasta|a|por) la (?:altura de la )?(?:rodilla|cintura|cadera)"
        r"|a la altura de la (?:rodilla|cintura)"
    ),
}
