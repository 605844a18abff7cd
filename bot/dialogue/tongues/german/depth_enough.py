"""German words by which somebody asks whether an f-number holds the depth."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "depth_enough.enough": r"reicht|reichen|gen[uü]gt|genug|langt|h[aä]lt|schafft|packt",
    "depth_enough.that": r"(?:reicht|gen[uü]gt|langt|ist) (?:das|es|the|die)",
    # What is no depth: light, time, water.
    "depth_enough.no_depth": r"licht|hell\w*|dunkel\w*|belicht\w*|zeit|seid\w*|stunden?",
}
