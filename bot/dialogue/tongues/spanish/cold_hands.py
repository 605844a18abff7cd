"""Spanish words: cold hands and feet, and what may stand beside them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_FRIO: Final = r"(?:fri[oa]s?|helad[oa]s?|congelad[oa]s?)"
_MANOS: Final = r"(?:manos|dedos|pies)"
_MUY: Final = r"(?:(?:estan|se me ponen|muy|tan|bastante|un poco|super|re|todos?|todas|bien) )*"
_DORMIDAS: Final = rf"{_MANOS} {_MUY}(?:dormid|entumecid)[oa]s"

WORDS: Final[Mapping[str, str]] = {
    "cold_hands.told": (
        rf"{_MANOS} {_MUY}{_FRIO}|se me (?:congelan|hielan|enfrian|congelaron) (?:las"
        rf"|los) {_MANOS}|frio en (?:las|los) {_MANOS}|que (?:hago|hacemos) (?:contra|con) el frio"
        rf"|{_DORMIDAS}"
    ),
    "cold_hands.shaking": r"(?:estoy )?(?:tiritando|temblando|tiemblo|tirito) (?:de|por el) frio",
    "cold_hands.cold_alone": r"(?:tengo|tenemos) (?:algo de |un poco de )?frio",
    "cold_hands.numb": _DORMIDAS,
    "cold_hands.but": r"pero",
    "cold_hands.they_are": r"estoy|todo",
    "cold_hands.fine": r"bien",
    "cold_hands.beside": (
        r"guantes(?: (?:mojados|puestos))?"
        r"|tengo|tenemos|mis|las|los|hoy|y|pero|con|todo|bien|a|grados|por favor"
    ),
    # The picture that goes on, the light that goes, and what is worse than cold hands.
    "cold_hands.picture": (
        r"que sigue|y ahora|ahora que|siguiente paso"
        r"|iso|velocidad|apertura|tiempo|exposicion|pulso|tripode|objetivo|filtro|ajustes?"
        r"|foco|enfoque|fotos?|imagen|ruido|grano"
    ),
    "cold_hands.dusk": (r"(?:ya )?(?:se hace de noche|oscurece|esta oscureciendo|se va la luz)"),
    "cold_hands.worse": (
        r"parar|confus\w*|sueno|dormid[oa] de|mare\w*|blanc[oa]s|azul\w*|dur[oa]s"
        r"|congelacion|caminar"
    ),
    # Before it, behind good news: "all good, only cold fingers".
    "cold_hands.just": r"solo|pero|con|las|los",
}
