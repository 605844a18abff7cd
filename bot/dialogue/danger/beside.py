"""Danger told beside other things: in one part of a message, beside facts, or with a cry."""

from __future__ import annotations

import math
import re
from collections.abc import Collection
from typing import Final

from bot.dialogue.danger.cry import cry_of
from bot.dialogue.danger.judged import judged
from bot.dialogue.tongues import in_any

#: A danger is heard in its part of the message where a part alone has at least such odds and so
#: many spaces. Own rules: from files that were left out.
_PART: Final = 3.0
_PART_SPACES: Final = 2
#: A call for help is a part of a message that has at least such odds: "help, too many options" has
#: far less, whatever stands beside it (own rule, from files that were left out).
_CALLED: Final = -4.5
#: Parts of lower odds than this are plain talk.
_PLAIN: Final = -4.5
#: Beside so many of them what is left is read for itself, and asked about from such odds on. Own
#: rules: of dangers at the end of a list of settings, from files that were left out, 65 in 100 were
#: heard as a whole, 73 so (alone 88).
_LEFT: Final = ((5, 0.0), (3, 3.0))
#: A part with a number, or of kit and light, that has no higher odds than this tells facts; what is
#: left beside such parts is read for itself, if it has so many words, and asked about from such
#: odds on. Own rules: behind "the fall is 5 m, 8 m away" 73 of 100 dangers that were left out were
#: heard as a whole, 88 so (alone 94), with 3 and 5 false alarms among 100 harmless ones (alone 9).
_FACT: Final = re.compile(rf"\d|\b{in_any('beside.fact')}\b", re.IGNORECASE)
FACT_ODDS: Final = -3.5
_LEFT_WORDS: Final = 3
_BESIDE_FACTS: Final = 0.0
_BETWEEN_PARTS: Final = re.compile(rf"[.!?;,:\n]+|\b{in_any('beside.between')}\b", re.IGNORECASE)


def heard_beside(text: str, odds: float) -> float | None:
    """How a message that is no danger as a whole sounds of one in some of it.

    Args:
        text: as typed.
        odds: of the whole.

    Returns:
        The log odds of that part; None where no part sounds of danger.
    """
    parts = _parts(text)
    if len(parts) < 2:
        return None
    if odds >= _CALLED and any(map(cry_of, parts)):
        return math.inf
    told = {part: judged(part).odds for part in parts}
    heard = [odds for part, odds in told.items() if part.count(" ") >= _PART_SPACES]
    heard = [*(odds for odds in heard if odds >= _PART), *_left(told)]
    if not heard and (left := _beside(told.items())):
        heard = [odds for odds in [judged(left).odds] if odds >= _BESIDE_FACTS]
    return max(heard, default=None)


def beside_facts(text: str) -> str:
    """What stands in a message beside the parts that may tell facts; "" where nothing does.

    Args:
        text: as typed.
    """
    return _beside([(part, FACT_ODDS) for part in _parts(text)])


def _parts(text: str) -> list[str]:
    return [part.strip() for part in _BETWEEN_PARTS.split(text) if part.strip()]


def _left(told: dict[str, float]) -> list[float]:
    """What is left of a list of plain things, where it sounds of danger by itself."""
    left = [part for part, odds in told.items() if odds > _PLAIN]
    plain = len(told) - len(left)
    enough = [odds for parts, odds in _LEFT if plain >= parts]
    odds = judged(", ".join(left)).odds if left and enough else -math.inf
    return [odds] if enough and odds >= min(enough) else []


def _beside(told: Collection[tuple[str, float]]) -> str:
    """What stands beside the parts that tell facts, by the odds of each; "" where nothing does."""
    left = [part for part, odds in told if odds > FACT_ODDS or not _FACT.search(part)]
    enough = sum(len(part.split()) for part in left) >= _LEFT_WORDS
    return ", ".join(left) if enough and len(left) < len(told) else ""
