"""German words: somebody out of hearing, loose rock, and when neither is an alarm."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "asked_first.unheard": (
        r"hor\w* (?:(?:ich|wir) )?(?:ihn|sie|mein\w* \w+|nicht ob)(?: \w+)? ?nicht|hor\w* nicht"
        r" (?:, )?(?:ob|wenn|wann) (?:er|sie)|kein\w* kontakt (?:zu|mit)"
    ),
    # Somebody who is held where they are, or hurt, in a few words.
    "asked_first.stuck": (
        r"(?:ich|wir) (?:bin|sind) (?:hier |da )?(?:verletzt|gesturzt|abgesturzt|eingeschlossen"
        r"|eingeklemmt|gefangen)|(?:ich|wir) (?:(?:sitze?n?|hocke?n?) (?:hier |da )?fest"
        r"|(?:stecke?n?|hange?n?) (?:hier |da )?(?:fest|in der|im|am|an der))(?: in der| im| am"
        r"| an der)? (?:\w+ )?(?:schlucht|klamm|wand|felsen|fels|hang|wasserfall|fall|tobel|graben)"
    ),
    "asked_first.loose": (
        r"lose[rns]? (?:fels\w*|gestein|felsen)"
        r"|steine? (?:kam|kamen|fiel|fielen) (?:runter|herunter|herab)"
    ),
    "asked_first.of_picture": r"stativ|vordergrund|bild|schild|fokus",
    "asked_first.passed": r"auf dem (?:hinweg|weg (?:hierher|her|rauf|runter|rein))",
    "asked_first.noise": NOTHING,  # not written yet
}
