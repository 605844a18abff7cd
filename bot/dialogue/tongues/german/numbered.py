"""German words around the number of an option: "Antwort 3", "2 wie gesagt"."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # What names an option, wherever it stands in a message.
    "numbered.option": r"option|antwort|möglichkeit|auswahl",
    # What may stand before its number at the beginning alone.
    "numbered.before": r"nummer|nr|die|also|immer noch|eindeutig|klar|wieder|ist|gut",
    "numbered.one": r"eins",
    "numbered.two": r"zwei|zwo",
    "numbered.three": r"drei",
    "numbered.four": r"vier",
    "numbered.five": r"fünf",
    # What adds something to the option instead of naming another.
    "numbered.also": r"und|auch|außerdem|dazu",
    # What points back to an earlier message, and tells nothing.
    "numbered.as_said": (
        r"wie (?:schon |bereits )?(?:gesagt|geschrieben|oben|vorhin|vorher|immer)"
        r"|(?:das )?(?:hab|habe|hatte) ich (?:doch |ja )?(?:schon |bereits )?(?:gesagt|geschrieben)"
        r"|sagte ich (?:doch |ja )?(?:schon|bereits)?"
    ),
    # What may follow it without a sign between: none of it is counted or measured.
    "numbered.goes_on": (
        r"<numbered.as_said>|ich|wir|sie|das|ja|jo|jep|nein"
        r"|ne|nee|nö|aber|weil|denn|immer noch|wieder|bitte|eindeutig|wohl|glaub|glaube|hab|habe"
        r"|schon|also"
    ),
    # Who is unsure chooses all the same.
    "numbered.unsure": (
        r"(?:ich )?wei(?:ß|ss) (?:ich )?(?:es )?nich(?:t)?|keine ahnung|nicht sicher|öhm|ähm?|hm+"
        r"|vielleicht|wohl|wahrscheinlich|glaub(?:e)?(?: ich)?|(?:ich )?glaub(?:e)?"
        r"|denk(?:e)?(?: ich)?"
    ),
}
