"""Water that somebody wants frozen is no cold: nothing but small words may stand beside it."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded
from bot.dialogue.reading.others_wish import wish_of_another
from bot.dialogue.tongues import in_any

#: The water or its picture, how it is to look, and small words: none of them a place to be in.
_ONLY: Final = re.compile(
    r"(?:(?:it|the|this|that|his|her|their|a|water|waterfall|fall|stream|drops?|droplets?|splash(?:es)?"
    r"|motion|look|picture|photo|frame|to look|all|really|completely|totally|like|as|in mid ?air"
    r"|little|tiny|small|single|every|each|and|or|glass|crystals?|pearls?|beads?|sharp|still"
    r"|frozen|freezed|crisp|silky|silk|smooth|soft|milky|misty|textured?|more|less|very|super|too"
    r"|please|instead|though|not|so) )*"
)
_WATER: Final = re.compile(r"\b(?:water|fall|it|drop\w*|splash\w*|picture|photo|frame|motion)\b")
_LOOK: Final = re.compile(
    r"\b(?:frozen|freezed|crisp|silky|silk|smooth|soft|milky|misty|textured?|sharp|still)\b"
)
#: The same in the other languages, as a whole message.
_ABROAD: Final = re.compile(in_any("wishers.whole"))


def only_wishes_look(text: str) -> bool:
    """Whether a message says how somebody else wants the water, and nothing else.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = " ".join(folded(text).replace(",", " ").split())
    if _ABROAD.fullmatch(said) is not None:
        return True
    another = wish_of_another(text)
    if another is None or another.rest:
        return False
    wish = folded(another.wish).replace(",", " ")
    told = _WATER.search(wish) and _LOOK.search(wish)
    return bool(told) and _ONLY.fullmatch(" ".join(wish.split()) + " ") is not None
