"""English words of who can hardly type: gloves, cold or wet fingers, one free hand."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_STIFF: Final = r"(?:cold|wet|numb|frozen|freezing|stiff|icy|muddy|clumsy|dirty|slippery)"
_HANDS: Final = r"(?:hands?|fingers?|thumbs?)"
_CANT: Final = (
    r"(?:can'?t|cannot|can not|hardly|barely|don'?t want to|hard to|difficult to|no way to)"
)

WORDS: Final[Mapping[str, str]] = {
    "hands.told": (
        rf"{_STIFF} (?:and \w+ )?{_HANDS}|{_HANDS} (?:are |is |so |too |very |really |all"
        rf" )*{_STIFF}"
        r"|(?:wear\w*|got|have|having|in|with|through|my) (?:my |the |on )?(?:\w+ )?(?:gloves"
        r"|mittens)|(?:gloves|mittens) (?:are )?on|^(?:\w+ )?(?:gloves|mittens)$"
        rf"|(?:i )?{_CANT} (?:really |easily )?type(?: (?:much|well|long|a lot))?|typing is (?:\w+"
        rf" )?"
        r"(?:hard|slow|difficult|a pain|impossible)|(?:only )?(?:one|1) (?:free )?hand(?: free"
        r"| only)?$|(?:only|just) (?:one|1) (?:free )?hand|keep it short|short(?:er)? (?:answers?"
        r"|messages?|replies) please"
    ),
    # Who asks for gloves.
    "hands.advice": r"should|need|bring|pack|forgot|recommend",
}
