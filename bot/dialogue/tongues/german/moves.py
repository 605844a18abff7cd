"""German words: what people tell while an emergency is held, and what makes it no move."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "moves.water": r"wasser|bach|fluss|fall",
    "moves.louder": r"lauter",
    "moves.roar": r"rauscht starker",
    "moves.who": r"sie|er|freund\w*",
    "moves.went_or_said": r"ging|gegangen|wollte|sagt|sagte|gesehen|vielleicht|wohl",
    "moves.place": r"auto|wagen|parkplatz|hutte|klo|toilette|brucke|weg",
    "moves.found": r"es gibt|da ist|sehe|sehen|gefunden|oben|fuhrt|geht",
    "moves.way": r"forstweg|feldweg|strasse|weg|pfad|steg|brucke",
    "moves.going": (
        r"(?:geh\w*|lauf\w*|steig\w*|klett\w*|sind unterwegs)\b.*"
        r"\b(?:hoch|rauf|raus|weg|hohe\w*|hutte|auto|oben|zuruck)"
    ),
    "moves.turned_round": r"nicht|kein\w*|wenn|soll\w*|kann|durch|furt",
    "moves.out_of": r"(?:raus|heraus|weg) (?:aus|von|vom)|aus|oberhalb",
    "moves.the": r"der|dem",
    "moves.to_danger": (
        r"bach\w*|fluss\w*|wasser|schlucht|klamm|ufer|kante|grat|gipfel|baum|wand|gesturzt"
        r"|gefallen|verletzt|hinkt"
    ),
    "moves.for_gear": r"stativ|kamera|rucksack|tasche|akku|ausrustung|bild",
    "moves.down": r"runter|unten|entlang",
    "moves.not": r"kein\w*|nicht",
}
