"""English words by which somebody asks whether a camera that moved was to blame."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "shake_asked.asks": (
        r"(?:was|is|wasnt|isnt) (?:it|that|this)|(?:could|can|might) (?:it|that) (?:be|have been)"
        r"|did (?:the|my) \w+ (?:do|cause)"
    ),
    # What moves a camera.
    "shake_asked.moves": (
        r"(?:the |my |a |that )?(?:wobble|wobbling|wobbly|shake|shaking|shaky|movement|vibration"
        r"|tripod|centre column|center column|middle pole|gravel|column|legs)"
    ),
    # A frame that came out better since.
    "shake_asked.sharper": r"sharper|sharp now|better now|clear now",
}
