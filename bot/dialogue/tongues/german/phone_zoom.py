"""German words: the camera of a phone that is used, by its button."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "phone_zoom.used": (r"mit|auf|bei|in|im|nehme?|nimm|benutze?|nutze?|verwende|per"),
    "phone_zoom.the": r"dem|der|das|den|meinem|die",
    "phone_zoom.not": r"nicht|kein\w*|ohne|statt",
}
