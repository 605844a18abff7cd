"""German words of water that is wished soft, with its strands still to be seen."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "soft_strands.soft": r"weich|weicher|seidig|seidiger|samtig|cremig|fliessend|butterweich",
    "soft_strands.but": r"aber|doch|trotzdem|noch|mit|dennoch",
    "soft_strands.strands": r"strahnen?|faden|struktur|textur|linien|zeichnung|schlieren",
    # What is wrong with a frame, or denied.
    "soft_strands.wrong": r"zu|kein\w*|ohne|verloren|fehl\w*|weder|oder|nicht|licht|fokus|fels\w*",
    # A frame is told of by these in front, and nothing is wished.
    "soft_strands.is": r"sieht|ist|is|sind|war|wurde|geworden",
}
