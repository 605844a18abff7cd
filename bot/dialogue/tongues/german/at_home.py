"""German words of who is home again, or wants to go through frames."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "at_home.home": (
        r"(?:bin|sind|sitze|wieder|jetzt|endlich|gut) (?:\w+ ){0,2}?(?:zu ?hause|daheim|im hotel"
        r"|auf der hütte|am rechner|am computer)|^(?:zu ?hause|daheim)\b"
    ),
    "at_home.review": (
        r"(?:die |meine |unsere )?(?:bilder|fotos|aufnahmen) (?:durchgehen|besprechen|ansehen"
        r"|anschauen)|^bildbesprechung$"
    ),
    "at_home.brings": r"hier (?:ist|sind|kommt|kommen)|(?:schick|sende|zeig)\w*",
    # "I left it at home", "we are going home": said on the way, or of something else.
    "at_home.not_yet": (
        r"vergessen|liegt|lassen|wenn|sobald|bevor|auf dem weg|fahre\w*|gehe\w*|später"
    ),
}
