"""English words: bright things at the frame's edge that are out of it now."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "bright_gone.told": (
        r"(?:(?:so|ok|okay|now|and|good) )*(?:the|that|those|all) (?:\w+ )?(?:bright|glaring|shiny)"
        r" (?:stones?|rocks?|patch(?:es)?|spots?|things?|boulders?|leaf|leaves|twigs?)"
        r"(?: (?:is|are|at the (?:edge|side|corner)|on the (?:left|right)|now|all))*"
        r" (?:gone|out|away)(?: (?:now|of (?:it|the (?:frame|picture))))*"
    ),
}
