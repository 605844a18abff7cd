"""English words of whose a frame is."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.english.people import KIN

_FRAME: Final = (
    r"(?:frame|shot|picture|photo|photograph|pic|image|one|version|attempt|try|exposure)s?"
)

WORDS: Final[Mapping[str, str]] = {
    "frame_owner.theirs": (
        rf"(?:from|by|of) (?:my |a |the |our |one of (?:my|the) )?(?:\w+ )?(?:{KIN})s?(?:'s)?"
        r"(?! and me)"
        rf"|(?:{KIN})(?:'s|s'|s)? (?:\w+ )?{_FRAME}|(?:{KIN}) (?:took|shot|made) (?:it|this|that"
        rf"|one)|(?:someone|somebody|anyone) else(?:'s)?(?: {_FRAME})?|(?:his|her|their|hers"
        rf"|theirs) {_FRAME}"
        r"|(?:he|she|they) (?:took|shot|made) (?:it|this|that|one)"
        rf"|(?!(?:it|that|here|today|yesterday|let|this|what|there|where|who|how|he|she|morning"
        rf"|evening|minute|year|week)'s)[a-z]{{2,}}'s {_FRAME}"
        rf"|(?:not|isn'?t|wasn'?t|none of) (?:mine|my (?:own )?{_FRAME}|from me|taken by me)"
        r"|(?:from|off|on|in) (?:the |a |some )?(?:internet|web|net|guide ?book|book|magazine|forum"
        r"|postcard|calendar|brochure)"
    ),
    "frame_owner.of_a_frame": rf"{_FRAME}|mine|took|internet|web|book",
    # Kit that is lent is used all the same.
    "frame_owner.lent": r"borrow\w*|lent|lens|camera|tripod|filter|phone|nd|polari\w*",
    "frame_owner.lent_from": r"from|of|by",
    # The frame before, not one to come.
    "frame_owner.the_last": r"that|this|it|the last|not mine|wasn'?t",
}
