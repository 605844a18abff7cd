"""German words: light that has changed, and not the picture of it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "light_changed.place": (
        r"es|s|alles|(?:das |der )?(?:licht|himmel|schlucht|ganze)|hier|da|inzwischen|jetzt"
    ),
    "light_changed.becomes": (
        r"(?:ist|is|wird|wurde|hat|sich|schon|jetzt|viel|deutlich|etwas|bisschen|bissl|ein|eine|um"
        r"|etwa|rund|inzwischen|grad|gerade|immer|wieder|ganz|so|hier|drin|draussen|es|blenden?"
        r"|stufen?|\d[\d/.,]*|zwei|drei|vier|halbe?|drittel|und)"
    ),
    "light_changed.darker": (r"dunkler|dusterer|truber|finsterer|duster|schummriger"),
    "light_changed.brighter": (r"heller|lichter"),
    "light_changed.less": (
        r"(?:das )?licht (?:hat |ist |wird )*(?:\w+ ){0,4}?(?:nachgelassen|weniger|schwacher"
        r"|gefallen|weg)"
        r"|licht lasst nach|weniger licht (?:jetzt|als)"
    ),
    "light_changed.more": (
        r"(?:das )?licht (?:hat |ist |wird )*(?:\w+ ){0,4}?(?:mehr|starker|zugenommen)"
        r"|mehr licht (?:jetzt|als)"
    ),
    "light_changed.since": (
        r"jetzt|inzwischen|geworden|wird|wurde|grad|gerade|als vorhin|als vorher|wolken?|draussen"
        r"|hier"
        r"|alles|licht|himmel|mittlerweile"
    ),
    "light_changed.picture": (
        r"bild\w*|foto\w*|aufnahme\w*|display|schirm|histogramm|rand|ecken?|links|rechts|seiten?"
        r"|oben|unten|fels\w*|steine?|wasser|zu|nachste\w*|mach\w*|soll\w*|konnte|wenn|will"
    ),
    # Through these it is darker, whatever the light.
    "light_changed.filter": r"filter\w*|graufilter|polfilter|nd|pol|objektiv",
}
