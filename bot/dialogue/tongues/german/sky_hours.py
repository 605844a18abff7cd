"""German words of a forecast by its hours: what sky, from when, until when; rain and cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Sun that comes and goes; these stand in front of the plain words.
    "sky_hours.partly": (
        r"(?:teils|teilweise|leicht|halb|locker|wechselnd|überwiegend) (?:bewölkt\w*|wolkig"
        r"|sonnig|heiter)"
        r"|sonne (?:und|mit) (?:\w+ )?wolken|wolken und sonne|wechselhaft\w*|sonnige abschnitte"
        r"|heiter bis wolkig|aufgelockert\w*"
    ),
    "sky_hours.sun": (
        r"sonnig\w*|(?:volle |pralle )?sonne|sonnenschein|klar(?:er himmel)?|heiter|wolkenlos"
    ),
    "sky_hours.overcast": (
        r"(?:ganz |voll |komplett |dicht |stark )?(?:bedeckt\w*|grau|trüb\w*|zugezogen)"
        r"|(?:ganz|voll|komplett|dicht|stark) bewölkt|dichte wolken|zieht(?: es)? (?:ganz )?zu"
    ),
    "sky_hours.cloud": r"(?:helle |hohe |dünne )?(?:wolken|bewölkung)|bewölkt\w*|wolkig\w*",
    "sky_hours.rain": (
        r"(?:(?:etwas|leichter?|starker|ein bisschen|wenig) )*"
        r"(?:regen\w*|regnet|regnerisch|niesel\w*|nieselt|schauer\w*)|nass(?:es wetter)?"
    ),
    "sky_hours.storm": r"(?:möglich\w* |starke |wärme)?(?:gewitter\w*|unwetter|blitz\w*|donner\w*)",
    "sky_hours.and": r"und|mit|aber",
    "sky_hours.then": r"dann|danach|aber|später",
    # Denied right before it.
    "sky_hours.no": r"kein\w*|nicht|ohne|nie",
    "sky_hours.until": r"bis(?: (?:gegen|etwa|ca|um))?|vor",
    "sky_hours.since": r"ab(?: etwa| ca)?|nach|gegen|um|von|seit",
    # Hours by their names.
    "sky_hours.noon": r"(?:zu[mr]? )?mittags?(?:szeit)?",
    "sky_hours.morning": (
        r"(?:am |den )?(?:ganzen )?(?:vormittags?|morgens?)|früh|anfangs|zuerst|erst"
    ),
    "sky_hours.afternoon": r"(?:am |den )?(?:ganzen )?nachmittags?",
    "sky_hours.evening": r"(?:am |gegen )?abends?|am späten nachmittag",
    "sky_hours.oclock": r"uhr",
    # What a start, a sunset or a bus has is no hour of the sky.
    "sky_hours.other": (
        r"los\w*|starte\w*|aufbrechen|abfahr\w*|gehen?|sonnenuntergang\w*|unter\w*|zurück"
        r"|umkehr\w*|bus|tor"
        r"|ankommen|ankunft"
    ),
    # Cold that is forecast, or packed for.
    "sky_hours.cold": r"kalt\w*|kühl\w*|frisch|frost\w*|eiskalt|minusgrade|um (?:den )?null",
}
