"""Spanish words that all is well, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "all_well.lead": r"todo|se ve",
    "all_well.fine": r"bien|perfecto",
    "all_well.behind": r"asi",
    "all_well.well": r"vale asi",
    "all_well.let_be": r"dejalo(?: asi)?|(?:no )?(?:me )?(?:molesta|importa)|forma parte",
}
