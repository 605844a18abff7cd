"""Water that somebody wants frozen is no cold: nothing but small words may stand beside it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.danger.folding import folded
from bot.dialogue.others_wish import wish_of_another

#: What is wanted, and how: words that alarm nowhere.
_ONLY: Final = re.compile(
    r"(?:(?:it|the|this|that|his|her|their|a|water|waterfall|fall|stream|drops?|droplets?|splash(?:es)?"
    r"|motion|look|picture|photo|frame|to|be|all|really|completely|totally|like|with|as|in|mid"
    r"|air|little|tiny|small|single|every|each|and|or|glass|crystals?|pearls?|beads?|sharp|still"
    r"|frozen|freezed|crisp|silky|silk|smooth|soft|milky|misty|textured?|more|less|very|super|too"
    r"|please|instead|though|not|so) )*"
)
_LOOK: Final = re.compile(r"\b(?:water|fall|it|drop\w*|splash\w*|picture|photo|frame|motion)\b")


def only_wishes_look(text: str) -> bool:
    """Whether a message says how somebody else wants the water, and nothing else.

    Args:
        text: as typed, in English.
    """
    told = wish_of_another(text)
    if told is None or told.rest:
        return False
    wish = folded(told.wish).replace(",", " ")
    return bool(_LOOK.search(wish)) and _ONLY.fullmatch(" ".join(wish.split()) + " ") is not None
