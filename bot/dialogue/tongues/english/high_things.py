"""English words: things as high as a part of the body."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "high_things.thing": (
        r"tripod|legs|clamp|stand|pole|rocks?|boulders?|stones?|logs?|ferns?|grass|bush(?:es)?|wall|fence|railing|tree|sapling"
    ),
    "high_things.height": r"(?:ankle|shin|knee|thigh|waist|hip|chest)[ -]?(?:high|height|tall)",
}
