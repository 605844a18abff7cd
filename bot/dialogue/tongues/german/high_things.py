"""German words: things as high as a part of the body."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "high_things.thing": (
        r"stativ|beine|klemme|stange|stein|felsen|fels|brocken|stamm|farn\w*|gras|busch|mauer|zaun|geländer|baum"
    ),
    "high_things.height": (
        r"(?:knöchel|waden|knie|schenkel|hüft|brust)[ -]?(?:hoch|hohes?|hohen?|höhe)"
    ),
}
