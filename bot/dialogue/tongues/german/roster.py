"""German words of who leads and asks how far the others are."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

_ALL: Final = r"(?:alle|sie(?: alle)?|die (?:anderen|leute|schüler|teilnehmer|gruppe)|jeder)"

WORDS: Final[Mapping[str, str]] = {
    "roster.friend": r"mein Freund",
    "roster.before": r"(?:ok|also|und|so|sag mir|zeig mir|bitte)[ ,]+",
    "roster.after": r" (?:gerade|jetzt|bitte|im moment|bisher)",
    "roster.asked": (
        rf"wer (?:hängt|steckt)(?: noch)?(?: gerade)?(?: fest)?|wer kommt nicht weiter"
        rf"|wer wartet(?: noch)?|wer ist (?:noch nicht )?(?:wo|fertig|so weit)"
        rf"|wer braucht (?:hilfe|mich)|wer hat noch (?:kein(?:e|en)? (?:bild|foto|aufnahme)"
        rf"(?: \w+)?|nicht (?:angefangen|begonnen))"
        rf"|wo (?:sind|stehen|ist|steht) {_ALL}|wie weit (?:sind|ist) {_ALL}"
        rf"|wie (?:geht es|läuft es bei) {_ALL}|übersicht|stand der gruppe"
    ),
}
