"""English words: the camera of a phone that is used, by its button."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_zoom.used": (
        r"(?:shoot(?:ing)?|shot|took|take|taking|zoomed|set)(?: (?:it|this|all))?"
        r" (?:on|at|in|with|to)"
        r"|using|use|used|on|with|at|(?:went|switched|going) (?:to|with|for)"
    ),
    "phone_zoom.the": r"the|my|main|normal|standard",
    "phone_zoom.not": r"not|dont|no|without|never|instead",
}
