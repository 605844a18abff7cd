"""English words that all is well, as the gloss leaves them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "all_well.lead": (
        r"no|nope|nah|well|oh|but|i think|to me|all of|everything|all|that|this|it|they|there|is"
        r"|are|s|re|its|thats|looks?|seems?|quite|just|really|perfectly|totally|still|now"
    ),
    "all_well.fine": r"fine|ok|okay|good|alright|all right|perfect",
    "all_well.behind": (
        r"now|here|there|as it is|like that|like this|that way|to me|for me|by me|with me|i think"
        r"|thanks|thank you|so|from"
    ),
    "all_well.well": NOTHING,
    "all_well.let_be": (
        r"leave (?:it|that)(?: in| there)?|let it be|(?:i )?(?:don t|do not) mind(?: it| that)?"
        r"|(?:it |that )?(?:doesn t|does not) (?:bother me|disturb|matter)"
        r"|(?:it )?belongs(?: there)?|part of (?:it|the picture|the place)"
    ),
}
