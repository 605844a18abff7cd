"""Spanish words by which somebody asks whether an f-number holds the depth."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "depth_enough.enough": r"basta|bastan|suficiente|llega|alcanza|vale|sirve",
    "depth_enough.that": r"(?:es|is|eso) (?:suficiente|basta)|(?:basta|llega|vale) (?:eso|as[ií])",
    # What is no depth: light, time, water.
    "depth_enough.no_depth": r"luz|clar[oa]\w*|oscur\w*|expos\w*|tiempo|sedos\w*|horas?",
}
