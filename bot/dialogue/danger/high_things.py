"""Things as high as a knee or a waist: nobody stands so deep in water."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.tongues import in_any

_HIGH: Final = re.compile(
    rf"(\b{in_any('high_things.thing')}\b(?:[ ,]+[\w']+){{0,4}}?[ ,]+)"
    rf"{in_any('high_things.height')}\b",
    re.IGNORECASE,
)


def without_high_things(text: str) -> str:
    """A message in which the height of a thing is only small, whatever else it tells.

    Args:
        text: as typed, in any of Linn's languages: "a tripod about knee high".
    """
    return _HIGH.sub(r"\1small", text)
