"""German words of who teaches: a group of mixed cameras, formats, one other person."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_DER: Final = r"(?:alle|die (?:\w+ )?<group.people>)"

_THINGS: Final = """
    und das es dies kamera objektiv was wer ausrüstung licht bild alles nichts
"""

WORDS: Final[Mapping[str, str]] = {
    "group.count": r"zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|zwölf",
    "group.people": r"schüler\w*|teilnehmer\w*|gruppe|leute|kurs|alle|anfänger\w*",
    "group.cameras": r"kameras?|formate?n?|sensoren",
    "group.mixed": r"verschiedene?n?|gemischte?n?|andere?n?|unterschiedliche?n?",
    "group.we": r"wir sind (?:zu )?<group.count>",
    "group.asked": (
        rf"was (?:sage?|soll|gebe?|kann) ich (?:\w+ ){{0,2}}(?:allen|(?:den|meinen) (?:\w+"
        rf" )?<group.people>"
        r"|der gruppe)"
        rf"|(?:werte|einstellungen|zahlen|eine zeile) für {_DER}"
    ),
    "group.phone": r"handys?",
    "group.full_frame": r"vollformat\w*",
    "group.and": r"und",
    # What is asked for other formats: "and on APS-C?".
    "group.for_it": (
        r"^(?:und |ok )*(?:für|auf|bei|mit)|(?:übersetz\w*|umrechnen|was heißt das|werte"
        r"|einstellungen) (?:\w+ ){0,2}?(?:für|auf|bei|an)"
    ),
    "group.mine": r"ich|mein\w*|mir",
    "group.own": r"ich (?:habe?|nutze)",
    "group.of_us": r"von uns",
    "group.counted": r"handys",
    # Somebody, what they do with a camera, and which number they have.
    "group.who": (
        r"(?:der|die|ein|eine|mein|meine) (?:\w+ )?(?:schüler(?:in)?|teilnehmer(?:in)?"
        r"|freund(?:in)?)(?: \d{1,2})?|er|sie"
    ),
    "group.has": r"hat|nutzt|benutzt|nimmt|fotografiert|knipst",
    "group.numbered": r"schüler(?:in)?|teilnehmer(?:in)?",
    "group.only": r"nur",
    "group.then": r"und",
    # What has a camera, or is one, and is nobody.
    "group.things": _THINGS,
    "group.phone_person": (
        r"(?:die|der|den|dem|meine?[nr]?|eine?) handy-?(?:schüler|nutzer|teilnehmer|leute"
        r"|knipser)\w*"
    ),
}
