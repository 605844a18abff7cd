"""German words by which somebody only tries a change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a message begins that only tries something.
    "trials.begins": (
        r"(?:(?:und|aber|ok(?:ay)?|also|dann|hm+)\W+)*(?:was\W+(?:(?:w[aä]e?re?|ist|passiert"
        r"|geschieht|macht es)\W+)?(?:wenn|bei|falls)|wie (?:w[aä]e?re?|s[aä]e?he?) (?:es|das)"
        r"(?: aus)?|(?:mal )?angenommen|nehmen wir an)"
    ),
    # How one goes on that builds on what was tried just before.
    "trials.goes_on": (
        r"(?:und|oder|dann|plus)\W+(?:dann )?(?:bei|mit|ohne|aus|von|auf|in|noch|dazu"
        r"|wenn)"
    ),
    # Steps away from the water, and towards it.
    "trials.unit": r"m|metern?|fu(?:ß|ss)",
    "trials.back": r"(?:weiter )?(?:zur[uü]e?ck\w*|nach hinten|weiter weg|weiter hinten|hinter\w*)",
    "trials.closer": r"(?:weiter )?(?:n[aä]e?her\w*|nach vorne?|weiter vorne?|ran\w*|heran\w*)",
    # Without the filter that was tried, or is on.
    "trials.without": r"ohne (?:ihn|den|das|die|es|filter)(?= ?(?:$|[?.!,]))",
}
