"""Spanish words of whose a frame is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_AMIGO: Final = (
    r"(?:amig[oa]|compañer[oa]|mujer|marido|herman[oa]|hij[oa]|padre|madre|profesora?|alumn[oa]"
    r"|guía|otr[oa](?: persona)?|alguien)"
)

WORDS: Final[Mapping[str, str]] = {
    "frame_owner.theirs": (
        rf"(?:de|por) (?:mi|un|una|otro|otra|el|la)? ?{_AMIGO}|no (?:es|era) (?:mí[oa]|mi[oa]|mi"
        rf" foto)"
        r"|(?:de|del) (?:internet|libro|la web|una guía)"
    ),
    "frame_owner.of_a_frame": r"foto|imagen|mí[oa]|libro",
    # Kit that is lent is used all the same.
    "frame_owner.lent": r"prestad\w*|cámara|trípode|objetivo",
    "frame_owner.lent_from": r"de",
    # The frame before, not one to come.
    "frame_owner.the_last": r"esa|eso|esta|ese|no es|no era",
}
