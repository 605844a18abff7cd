"""English words by which somebody asks whether an f-number holds the depth."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "depth_enough.enough": (
        r"enough|suffic\w+|holds?|covers?|reach(?:es)?"
        r"|keep\w*(?! (?:the |my |it )?(?:aperture|at|on|f))"
        r"|do(?= (?:it|for|the job)\b|\W*$)"
    ),
    "depth_enough.that": r"(?:is|would|will|does) (?:that|it|this|which)(?: be)?",
    # What is no depth: light, time, water.
    "depth_enough.no_depth": r"light|bright\w*|dark\w*|expos\w*|time|silk\w*|smooth\w*|hours?",
}
