"""Spanish words: somebody else who wishes a look of the water, as the message names them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WISHERS: Final[Mapping[str, str]] = {
    "wishers.who": (
        r"(?:mi|nuestr[oa]|el|la|una?) (?:[^\W\d]+ )?(?!l[oa]s?\b)[^\W\d]+"
        r"(?= (?:l[oa]s? )?(?:quiere|prefiere|desea|busca)\b)"
    ),
}
