"""German words of goodbyes, pauses, praise, assent and thanks."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "asides.bye": (
        r"tsch(?:ü|ue)ss?i?|(?<=[ ,])servus(?=\W*$)|auf wiedersehen|gute? ?nacht\b|feierabend"
        r"|bis (?:morgen|bald|dann)|sch(?:ö|oe)nen (?:tag|abend)|(?:geh|fahr|mach)\w* (?:jetzt "
        r"|nun |dann )*(?:heim|nach hause|schluss)|zur(?:ü|ue)ck zum (?:auto|parkplatz|wagen|bus)"
        r"|das war'?s(?: f(?:ü|ue)r heute)?"
    ),
    "asides.wait": (
        r"ich warte|wir warten|moment mal|einen moment|warte kurz|bin gleich (?:wieder )?da"
        r"|mach\w* (?:mal |jetzt |erst )?(?:eine |kurz )?(?:pause|brotzeit)"
    ),
    "asides.no_wait": NOTHING,  # not written yet
    "asides.praise": (
        r"(?:viel |schon |jetzt )*besser|sieht (?:\w+ ){0,3}(?:gut|toll|super|klasse|schön|prima)"
        r" aus|perfekt|wunderbar|wunderschön|herrlich|klasse|prima|gefällt mir|(?:hat )?geklappt"
        r"|klappt|freu\w* mich|bin (?:\w+ ){0,2}(?:happy|zufrieden|begeistert|glücklich)|traumhaft"
        r"|wow|mega|(?:strähnen|fäden|zeichnung|struktur) (?:sieht man|sind da|ist da"
        r"|(?:\w+ )?sichtbar)|man sieht (?:\w+ ){0,2}(?:strähnen|fäden)"
    ),
    "asides.not_good": r"nicht|kein\w*|aber|zu",
    "asides.ok": (
        r"die reihe ist (?:fertig|gemacht)|reihe gemacht|hab ich|hab'?s|gemacht|aufgenommen"
        r"|in ordnung|alles klar|verstanden|mach ich|gut"
    ),
    "asides.stays": NOTHING,  # not written yet
    "asides.thanks": r"danke",
    "asides.took_off": (
        r"(?:habe? )?(?:ihn|es|den filter) (?:jetzt |nun )?(?:abgenommen|abgeschraubt)"
        r"|ist (?:jetzt )?ab"
    ),
}
