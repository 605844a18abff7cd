"""Spanish words: stones that the water has come over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "covered.stone": r"piedras?|rocas?|gravas?|marca|escalones|el palo",
    "covered.under": (
        r"bajo el agua|cubiertas?(?: (?:de|por) (?:el )?agua)?|debajo del agua"
        r"|tapadas? por el agua|sumergidas?|ya no se (?:ven|ve)"
        r"|(?:medio|casi|parcialmente) (?:cubiert|tapad|sumergid)[oa]s?"
    ),
    "covered.before": r"ahora|ya|antes|hace un rato|cuando (?:llegamos|llegue)|marque|marcamos"
    r"|estaban? secas?",
}
