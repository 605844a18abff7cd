"""Words that tell nothing wherever they stand: hesitation, hedges before a number, emphasis."""

from __future__ import annotations

import re
from typing import Final

#: Of each of them it was tried that no message of the corpora reads otherwise without it.
_EMPHASIS: Final = (
    r"actually|basically|essentially|honestly|literally|definitely|certainly|obviously|clearly"
    r"|pretty much|more or less|kind of|sort of|kinda|sorta|(?<!and )then|anyway|though|tho|however"
    r"|very|quite|rather|fairly|pretty|unfortunately|luckily|sadly|hopefully|finally|even|simply"
    r"|exactly|precisely|really(?! dark)"
)
_HESITATION: Final = r"h+m+|u+[hm]+|er+m+|ä+h+m*|puh|uff?|ehm?|mmm+"
#: "For about 6 feet" is "for 6 feet"; how dark by about two stops stays an example of a reader.
_HEDGE: Final = (
    r"about|roughly|approximately|approx\.?|circa|ca\.?|maybe|perhaps|(?<=[,.] )say|probably"
    r"|i'd say|i guess|i think|i reckon"
)
_NOISE: Final = re.compile(
    rf"(?<![\w'-])(?:(?:{_EMPHASIS})(?![\w'-]),? ?|(?<!by )(?<!\d )(?:{_HEDGE}) (?=\d+(?![\d/])))"
    rf"|(?<=[ ,.?!])(?:{_HESITATION})\b[,.]* ?"
)


def without_noise(text: str) -> str:
    """The message without words that tell nothing, where anything is left.

    Args:
        text: a message as `normalise` leaves it.
    """
    left = _NOISE.sub("", text)
    return left if left.strip() else text
