"""Spanish words by which somebody contradicts what was said, and tells nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "contradicts.said": (
        r"(?:todo |muy )?(?:al|lo) contrario|(?:eso )?no puede ser"
        r"|(?:eso )?no es (?:cierto|verdad|asi)"
        r"|(?:es )?imposible"
    ),
}
