"""Sensor format and pixels as typed."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.draft import Draft

_FORMATS: Final = (
    (
        "phone",
        re.compile(
            r"\b(?:smart)?phone\b(?! (?:battery|number|signal|call|reception|line|is dead|inside"
            r"|(?:is )?(?:in |on )?flight))"
            r"|\b(?:cell|mobile)(?: ?phone)? (?:camera|only)\b"
            r"|\b(?:the|my|on|a) (?:mobile|cell)(?=$|[,;.!)]| (?:with|and|today|here|for)\b)"
        ),
    ),
    ("44x33", re.compile(r"\bformatmedium\b")),
    ("full frame", re.compile(r"\bformatfull\b")),
    ("aps-c 1.6", re.compile(r"\bformatsmallcrop\b")),
    (
        "aps-c",
        re.compile(
            r"\bformatcrop\b|\bcrop(?:ped)?[ -]?(?:sensor|body|camera|frame|dslr|mirrorless)\b"
            r"|\b(?:on|a|my|is|it's|its|i'm|im|use|have|shoot|shooting) crop\b"
            r"(?! (?:it|the|later|in|of|off|out))|^crop(?=$|[,;.]| \d)"
        ),
    ),
    ("four thirds", re.compile(r"\bformatmft\b")),
    ("1-inch", re.compile(r"\bformatinch\b")),
)
_TAKES_WITH_PHONE: Final = re.compile(
    r"\b(?:on|from|by|call\w*|charg\w+) (?:my |the )?phone\b(?= at)"
)


def read_camera(draft: Draft) -> None:
    """Sensor format and megapixels."""
    for name, pattern in _FORMATS:
        if pattern.search(draft.text):
            draft.note("camera_format", name)
            break
    for quantity in draft.free("mp"):
        if quantity.is_range:
            draft.refuse(quantity)
        else:
            draft.put("megapixels", quantity.value, quantity)
    for quantity in draft.free("x"):
        draft.claim(quantity)
