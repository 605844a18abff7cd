"""German words of what is wanted of a review at home: an intent, a choice, next time."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "review_words.intent": (
        r"(?:was|das) ich (?:eigentlich )?(?:zeigen|festhalten) (?:wollte|möchte|will)(?:,| ist"
        r"| war)*|ich wollte (?:eigentlich |nur )?(?:zeigen|festhalten)|(?:es ging|es geht"
        r"|mir ging es|mir geht es)(?: mir)?(?: eigentlich| nur)? (?:um|darum)|(?:die"
        r"|meine) (?:idee|absicht) (?:war|ist)"
    ),
    "review_words.keep": (
        r"(?:welche[snr]?|was)(?: \w+){0,5}? (?:behalten|nehmen|behältst|nimmst|auswählen"
        r"|aussuchen|beste\w*)|hilf mir (?:aus\w+|wählen)"
    ),
    # "How do I pick": by which rule, before the choice itself.
    "review_words.how": (
        r"wie (?:soll |kann )?(?:wähle?|entscheide?|suche?) (?:ich|wir|man)|wie (?:soll"
        r"|kann) (?:ich"
        r"|man) (?:\w+ )?(?:wählen|auswählen|entscheiden)"
    ),
    "review_words.equal": r"(?:fair|richtig) vergleich\w*|wie vergleiche?|gleich hell",
    "review_words.dropped": r"vergiss|lösch\w*|gelöscht|streich\w*|weglassen",
    "review_words.taken": (
        r"(?:bilder|fotos|aufnahmen)(?: \w+){0,4}? (?:gemacht|mitgebracht|geschossen|von heute"
        r"|heute)|(?:habe|hab|hatte)(?: \w+){0,3}? (?:bilder|fotos|aufnahmen)"
    ),
    "review_words.next_time": (
        r"nächstes mal|nächster (?:ausflug|besuch)|beim nächsten mal|anders machen|besser machen"
    ),
    "review_words.log": (
        r"notiz(?:zeile|buch)?|tagebuch|logbuch|(?:eine )?zeile (?:für|über) (?:\w+ )?(?:notiz\w*"
        r"|heute|den tag)"
    ),
    # "Copied the card to the laptop and a backup drive".
    "review_words.copied": (
        r"(?:kopiert|gesichert)|karte (?:ist )?(?:kopiert|gesichert)|(?:sicherung|backup) gemacht"
    ),
    "review_words.not_yet": r"nicht|nie|muss|soll\w*|noch",
    # "The focus was on 4 m".
    "review_words.focus": r"fokus\w*",
    "review_words.was": r"war|lag",
    "review_words.on": r"auf|bei",
    # What a name of water ends with, or begins with.
    "review_words.water_behind": r"\w*(?:fall|fälle|bach|klamm|schlucht)",
    "review_words.water_before": NOTHING,
    # What opens a sentence is no part of a name.
    "review_words.opens": r"Das|Der|Die|Am|Beim",
    "review_words.ahead": r"nächste\w* (?:woche|wochenende)",
    # Frames that are taken, of which some are kept.
    "review_words.of_taken": (
        r"behalt\w*|behält\w*|lösch\w*|wegwerf\w*|bilder\w*|fotos|aufnahmen|gemacht"
    ),
}
