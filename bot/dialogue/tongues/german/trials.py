"""German words by which somebody only tries a change."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # How a message begins that only tries something.
    "trials.begins": (
        r"(?:(?:und|aber|ok(?:ay)?|also|dann|hm+)\W+)*(?:was\W+(?:(?:w[aä]e?re?|ist|passiert"
        r"|geschieht|macht es)\W+)?(?:wenn|bei|falls)|wie (?:w[aä]e?re?|s[aä]e?he?) (?:es|das)"
        r"(?: aus)?|(?:mal )?angenommen|nehmen wir an|rechne?\W+(?:das|es|den anteil|nochmal)"
        r"|noch ?mal mit)"
    ),
    # By which somebody asks whether a value would do, and by which they ask for something else.
    "trials.may": (
        r"reicht|gen[uü]gt|komm\w* (?:ich|man|wir)|geht (?:auch|das|nicht)?|kann ich"
        r"|k[oö]nnte ich|darf ich|sieht [^?]* aus|tut'?s|stattdessen"
    ),
    "trials.asks_for": (
        r"warum|wieso|welche\w*|wie (?:viele?|weit|lange)|wo|wann|liegt (?:das|es)"
        r"|kann (?:das|es|the) (?:\w+ )*sein"
    ),
    # Whoever asks of a place to go to.
    "trials.goes": (
        r"kletter\w*|sicher\w*|steh\w*|hinein\w*|rein\w*|wat\w*|spring\w*|hoch\w*"
        r"|runter\w*|hinunter|hinauf|rauf|lauf\w*|schwimm\w*|näher\w*|hinter"
    ),
    "trials.what_time": (
        r"welche (?:zeit|belichtungszeit)(?: (?:dann|ist das|gibt das|brauch ich))?"
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
