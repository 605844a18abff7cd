"""Spanish words of who can hardly type: gloves, cold or wet fingers, one free hand."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FRIO: Final = (
    r"(?:frí[oa]s?|fri[oa]s?|mojad[oa]s?|helad[oa]s?|congelad[oa]s?|entumecid[oa]s?|suci[oa]s?)"
)

WORDS: Final[Mapping[str, str]] = {
    "hands.told": (
        rf"(?:manos|dedos) (?:están |muy |tan )*{_FRIO}|guantes(?: puestos)?$"
        r"|(?:con|llevo|tengo) (?:\w+ )?guantes"
        r"|no puedo (?:escribir|teclear)(?: (?:mucho|bien))?|me cuesta (?:escribir|teclear)"
        r"|(?:solo|sólo) (?:tengo )?una mano|respuestas cortas por favor"
    ),
    # Who asks for gloves.
    "hands.advice": r"debo|necesito|llevar",
}
