"""Spanish words: a child that is cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "cold_child.child": (
        r"nin[oa]s?|hij[oa]s?|peques?|pequen[oa]s?|niet[oa]s?|bebe|chic[oa]s|alumn[oa]s"
    ),
    # What stands between: no hands, and nothing that denies.
    "cold_child.is": (
        r"esta|estan|tiene|tienen|mucho|muy|ya|tanto|bastante|un poco|algo|de|se|y|mojad[oa]s?"
        r"|empapad[oa]s?"
        r"|pasan|pasa|con|muchisimo|empiezan? a|tener|ahora"
    ),
    "cold_child.cold": (
        r"frio|helad[oa]s?|congelad[oa]s?|tirita\w*|tiembla\w*|tiritando|temblando"
    ),
    "cold_child.wet": (
        r"mojad[oa]s?|empapad[oa]s?|humed[oa]s?|tirit\w*|tembl\w*|tiembl\w*|cuanto tiempo"
        r"|preocup\w*"
        r"|irnos|nos vamos|volver|labios"
    ),
    "cold_child.not": (
        r"no (?:\w+ )?(?:tienen?|frio|tirita\w*)|tenian?|ya no|color(?:es)? frios?|luz fria"
        r"|si (?:los|las|el|la|tienen?)|entro en calor|emocion|risa"
    ),
}
