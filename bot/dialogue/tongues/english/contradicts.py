"""English words by which somebody contradicts what was said, and tells nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "contradicts.said": (
        r"(?:quite |just |rather )?(?:on the contrary|the contrary|the opposite)"
        r"|(?:that|this|it) (?:cant|cannot|can not|couldnt|doesnt) (?:be(?: right| true)?|add up)"
        r"|(?:thats|that is|this is) (?:not right|not true|wrong|impossible|odd)"
    ),
}
