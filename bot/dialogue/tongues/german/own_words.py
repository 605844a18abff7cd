"""German words: how the meaning of one of Linn's own words is asked, and those words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "own_words.before": (
        r"was (?:heisst|bedeutet|bedeuten|meinst du mit|ist|sind|sollen?|is)(?: denn| jetzt| bitte"
        r"| nochmal)* |wofur stehen |wofur steht |erklar(?:e|st du)? (?:mir )?"
        r"|(?:keine ahnung|weiss nicht|versteh(?:e)? nicht|ka) was "
        r"|(?:versteh\w*|kapier\w*|begreif\w*|check\w*)(?=[^.,]* (?:nicht|net|nich)\b)"
        r"(?: (?:ich|das|mit|jetzt|leider))* "
    ),
    "own_words.filler": (
        r"(?:der|die|das|den|dem|ein|eine|einen|diese[rs]?|dieses|mit|bei|in|im|denn|da|heisst"
        r"|bedeutet)"
    ),
    "own_words.behind": (
        r"(?:was )?(?:heisst|bedeutet|bedeuten)(?: das| denn)*|(?:sagt|soll|ist|is) (?:mir )?was"
        r"|was (?:ist|is|soll|heisst|bedeutet|bedeuten)(?: denn)? (?:das|des|dies)(?: heissen)?"
        r"|(?:sagt mir|(?:versteh|kapier|begreif|check)e? ich) (?:nichts|nicht|net|nich)"
    ),
    "own_words.tail": (
        r"bedeutet|bedeuten|heisst|ist|sind|bitte|genau|denn|nochmal|eigentlich|jetzt|da|hier|nochmals"
        r"|nicht|net|nich"
    ),
    "own_words.goes_on": r"und|aber|ich|weil|also|mein\w*",
    "own_words.share": (
        r"wasserspur(?: \d+(?:[.,]\d+)?)?(?: (?:prozent )?des bildes)?"
        r"|\d+(?:[.,]\d+)? (?:prozent )?(?:, )?(?:strukturiert|seidig|neblig|des bildes)"
        r"|\d+(?:[.,]\d+)? prozent|(?:die )?prozent(?:e|zahl)?"
    ),
    "own_words.look": r"strukturiert|seidig|neblig|knackig",
    "own_words.meter": (
        r"(?:passt )?(?:etwa )?laut belichtungsmesser|uber dem (?:messer|belichtungsmesser)"
        r"|unter dem (?:messer|belichtungsmesser)"
    ),
    "own_words.lip": r"abbruchkante|kante",
    "own_words.letters": r"(?:flache [a-f]|buchstaben?)(?: im bild| auf dem bild)?",
    "own_words.sparkle": r"glitzern(?: gut so)?",
    "own_words.tilt": r"\d+(?:[.,]\d+)? gekippt|gekippt|kamera waagerecht",
    "own_words.spare": r"\d+(?:[.,]\d+)? (?:prozent )?luft|luft",
    "own_words.focal": r"(?:\d+ ?mm )?an vollformat|aquivalent|\d+ ?mm",
    "own_words.nearest": r"nachste(?:s|n)?(?: scharfe)?",
    "own_words.turn_back": r"umkehrzeit|umkehren bis",
    "own_words.last_frames": r"licht (?:dein\w*|der|mein\w*) letzten bilder",
    "own_words.portrait": r"hochformat|querformat",
    "own_words.leaf_frame": r"blatterbild",
    "own_words.ladder": r"reihe",
    "own_words.overcast": r"dichte wolken|licht durch dichte wolken|helle wolken",
}
