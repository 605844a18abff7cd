"""English words: a frame that is sharp all over."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "all_sharp.all": (
        r"(?:all|everything|everythings|it|its|both|they|theyre|each"
        r"|(?:the )?(?:near(?:est)? )?(?:rocks?|boulder)(?: and)?"
        r"|(?:the )?(?:far )?corners?|all of it|the lot)(?: (?:is|are|looks?|seems?|all|nice"
        r"|nicely|pretty"
        r"|really|tack|pin|very|perfectly|good and|still|and|both|the|far|near|rocks?|corners?"
        r"|too))*"
        r" (?:sharp|crisp|in focus)"
    ),
    "all_sharp.everywhere": (
        r"sharp (?:everywhere|all over|throughout|all round|corner to corner|front to back"
        r"|from front to back|as a tack)"
    ),
    "all_sharp.beside": (
        r"at|percent|when|i|zoom\w*|in|on|the|screen|yes|yep|yeah|ok|okay|checked|and|no|drops?"
        r"|either|glass"
        r"|on|lens|now|here|too|again|good|great|fine|so|well|everywhere|all|over|looked|look"
        r"|looks|clean"
        r"|seems?|far|corners?|rocks?|near|is|are|also|both|perfect|nice|super"
    ),
    "all_sharp.not": (r"not|isnt|arent|except|but|soft|blurr?\w*|almost|nearly|if|apart"),
}
