"""A time by how many times the last one it is: "double the time then"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.tongues import in_any

_FACTORS: Final = (
    (2.0, re.compile(rf"\b{in_any('time_factor.twice')}\b")),
    (0.5, re.compile(rf"\b{in_any('time_factor.half')}\b")),
)
#: "Half the time it is good": how often.
_AS_OFTEN: Final = re.compile(r"\bhalf (?:of )?the time (?:it|its|they|theyre|i|im|we|were|you)\b")
#: What may stand beside it where nothing else is said.
_ONLY: Final = re.compile(rf"(?:\W|\b{in_any('time_factor.only')}\b)*")


def time_factor_in(typed: str) -> float | None:
    """The factor that a clause tells and nothing else; None without one.

    Args:
        typed: a message in any of Linn's languages.
    """
    for clause in re.split(r" [.,] ", folded(typed)):
        for factor, words in _FACTORS:
            if _AS_OFTEN.search(clause):
                continue
            if words.search(clause) and _ONLY.fullmatch(words.sub(" ", clause)):
                return factor
    return None
