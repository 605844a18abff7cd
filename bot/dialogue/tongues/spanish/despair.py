"""Spanish words: a wish to end one's life."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "despair.of_life": (
        r"(?:quiero|quiere|queria|quisiera) (?:morir(?:me|se)?|matarme|matarse|estar muert[oa])"
        r"|suicid\w+"
        r"|(?:quitarme|quitarse|quitar) la vida|no (?:quiero|quiere) (?:seguir )?(?:vivir|viviendo)"
        r"|acabar con (?:mi|su) vida|hacer(?:me|se) dano"
    ),
}
