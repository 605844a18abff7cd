"""Two numbers that a "to" or a stroke puts together, written apart where they are two."""

from __future__ import annotations

import re
from typing import Final

#: "18-300, 3.5 to 6.3": the widest apertures at both ends of a zoom.
_WIDEST: Final = re.compile(
    r"(?<![\d.])(\d{1,3} ?(?:-|to) ?\d{2,3}(?: ?mm)?),? (?:f ?/? ?)?"
    r"([1-5](?:\.\d)?) to ([2-7]\.\d)\b"
)
#: "18-55/3.5-5.6".
_WIDEST_STROKE: Final = re.compile(
    r"(?<![\d.])(\d{1,3}-\d{2,3}(?: ?mm)?) ?/ ?([1-5](?:\.\d)?)-([2-7]\.\d)\b"
)
#: "From 1/2 to 1/3 of a second": two times, no range.
_FROM_TIME: Final = re.compile(
    r"(\bfrom 1/\d{1,4}) (?=to 1/\d{1,4} ?(?:of a )?s(?:ec\w*)?\b)"
    r"|(\b(?:gone|went|going|changed|moved|switched|slowed) (?:it )?from 1/\d{1,4}) (?=to \d)"
)
#: "24mm/f11/1s/iso100": strokes between settings.
_STROKES: Final = re.compile(
    r"(?<=mm)/(?=f ?/?\d|1/|\d)|(?<=\ds)/(?=f|iso|\d)|(?<=\dsec)/(?=f|iso|\d)|/(?=iso ?\d)"
)
_F_STROKE: Final = re.compile(r"\b(f ?/?\d+(?:\.\d)?)/(?=\d+(?:\.\d)? ?(?:s|sec|seconds?|mm)\b)")


def parted(text: str) -> str:
    """The message with settings and times apart that were put together.

    Args:
        text: a message in lower case, its numbers in digits.
    """
    text = _F_STROKE.sub(r"\1 ", _STROKES.sub(" ", text))
    text = _WIDEST_STROKE.sub(r"\1 f/\2-\3", text)
    return _FROM_TIME.sub(r"\1\2 s ", _WIDEST.sub(r"\1 f/\2-\3", text))
