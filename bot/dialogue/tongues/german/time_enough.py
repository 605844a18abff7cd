"""German words by which somebody asks whether another time would do."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # In front of the time, as the gloss leaves them.
    "time_enough.in_front": (
        r"reich(?:t|en)|langt|gen(?:ü|u)gt|tut'?s|tun'?s|ginge?n?|geht|gehen|goes(?: too| also)?"
        r"|(?:kann|könnt|koennt|konnt|soll|sollt|darf|can)e? (?:ich|i|ma|man)"
    ),
    # Behind it.
    "time_enough.behind": r"(?:nicht|nich|auch|schon)? ?(?:genug|reichen|gehen|ok(?:ay)?)",
}
