"""German words for a visit: the day, the place, who goes, the car."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import FEW_WORDS, NOTHING

WORDS: Final[Mapping[str, str]] = {
    "visit_words.monday": r"montag",
    "visit_words.tuesday": r"dienstag",
    "visit_words.wednesday": r"mittwoch",
    "visit_words.thursday": r"donnerstag",
    "visit_words.friday": r"freitag",
    "visit_words.saturday": r"samstag|sonnabend",
    "visit_words.sunday": r"sonntag",
    "visit_words.tomorrow": r"(?<!heute )(?<!guten )(?<!am )(?<!jeden )morgen",
    "visit_words.after_tomorrow": r"übermorgen|uebermorgen",
    "visit_words.coming": r"am|nächste[sn]?|kommende[sn]?|dieses",
    "visit_words.week": r"wochenende|woche|monat",
    # What is said of a visit to come, and not only of a day.
    "visit_words.visit": (
        r"(?:wir|ich) (?:\w+ )?(?:gehen?|wollen?|will|fahren?|planen?|wandern?|möchten?|gehe"
        r"|starten?)|geh(?:en|e|t|'s) (?:wir|ich|es)|plan(?:en|e|t|ung)?|vorhersage|ausflug|tour"
        r"|fahren wir|(?:will|möchte|wollen|möchten|geht|fahre|wandere) (?:ich|wir"
        r"|es) (?:\w+ ){0,3}?"
        r"(?:zu[mr]?|nach|an den|in die|auf)"
    ),
    # A wish for such a day, whatever it is for; who does it already does not wish it.
    "visit_words.wished": r"will|wollen|möchten?|kann|können|darf|dürfen|klettern wir",
    "visit_words.doing": NOTHING,
    "visit_words.past": r"gestern",
    # What stands before the name of a place to go to, in it, and behind it.
    "visit_words.to_place": (
        r"(?:zu[mr]|nach|an den|an die|in die|zu den|in den|auf den|Ausflug zum|besuchen)"
        r" (?:den |die |das )?"
    ),
    "visit_words.plan_of_place": NOTHING,
    "visit_words.in_a_name": r"am|im|bei",
    "visit_words.kind_of_place": r"klamm|tobel",
    "visit_words.no_place": (
        r"Wasserf[aä]lle?|F[aä]lle?|Bach|Schlucht|Auto|Parkplatz|Wagen|Haus|Hause|Stativ|Kamera"
        r"|Sonnenuntergang|Zeit|Fotografieren|Wandern|Planen|Rucksack|Bett|Schluss|Beispiel|Abend"
        r"|Morgen|Mittag"
    ),
    "visit_words.no_place_of_time": r"morgen",
    # Who goes.
    "visit_words.party": (
        r"(?:ich|Ich) und mein(?:e|en)? [\w-]+|[Mm]ein(?:e)? [\w-]+ und ich"
        rf"|mit (?:meine[mnr]|unsere[mnr]) {FEW_WORDS}?(?= ?(?:[,.;!?]|$|und (?:er|sie)|am\b"
        rf"|zum\b))"
    ),
    # Who stays at home, or is written to.
    "visit_words.waits": r"daheim|zu ?hause|schreiben?|bleibt",
    # Things that somebody carries.
    "visit_words.no_party": r"kamera|objektiv|stativ|handy|auto",
    "visit_words.car": r"auto|\w*wagen|kombi|bulli|bus(?:le)?|wohnmobil",
    "visit_words.mine": r"mein|unser|das|der",
    # "The car is parked at …".
    "visit_words.is": r" ist| wird",
    "visit_words.stands": r"steht|parkt|geparkt|abgestellt",
    "visit_words.at": r"am|beim|bei|auf|an|im|hinter",
    "visit_words.hour": r"um",
    # Told behind the car.
    "visit_words.colour": NOTHING,
    "visit_words.lot": r"\w*parkplatz",
    "visit_words.we_park": (
        r"(?:wir|ich)(?: werden)? (?:\w+ )?(?:parke?n?|stellen)\b"
        r"(?: (?:das|unser|mein) <visit_words.car>)?"
    ),
    # A clause with a verb of its own, and a measure: they tell nothing of the car.
    "visit_words.clause": r"wir|ich|und|wann|was|wie",
    "visit_words.measure": r"uhr",
    # Kit and clothes in a car say nothing of where it stands.
    "visit_words.in_car": (
        r"im (?:auto|wagen|kofferraum)"
        r"|(?:zurück|weg|minuten|min)\b.*\b(?:zum|to) (?:the )?(?:auto|car)"
    ),
    # Words that say nothing of how a car looks.
    "visit_words.any_car": r"(?:(?:mein|das) )?(?:auto|wagen)",
}
