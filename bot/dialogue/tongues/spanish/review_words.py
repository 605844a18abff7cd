"""Spanish words of what is wanted of a review at home: an intent, a choice, next time."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.tongues.pieces import NOTHING

WORDS: Final[Mapping[str, str]] = {
    "review_words.intent": (
        r"lo que (?:yo )?(?:quería|quiero|queria) (?:mostrar|enseñar|contar)(?: es| era|,)*"
        r"|(?:quería|queria|quise) (?:mostrar|enseñar|contar)"
        r"|(?:la|mi) (?:idea|intención) (?:era|es)(?: mostrar)?"
    ),
    "review_words.keep": (
        r"(?:cuál|cual|cuáles|cuales|qué foto)(?: \w+){0,4}? (?:quedarías|quedarias|quedo"
        r"|conserv\w+|guard\w+|eleg\w+|eliges|escog\w+|mejor)|con cu[aá]l(?:es)? (?:te|me|nos) \w+"
        r"|ayúdame a elegir"
    ),
    # "How do I pick": by which rule, before the choice itself.
    "review_words.how": r"cómo (?:elijo|elegir|escojo|escoger|decido|decidir|selecciono)",
    "review_words.equal": (
        r"cómo (?:los |las )?compar\w+|comparar bien|mismo brillo|misma luminosidad"
        r"|igual de (?:clar|brillant|luminos)\w+"
    ),
    "review_words.dropped": r"olvid\w+|borr\w+|quit\w+|elimin\w+",
    "review_words.taken": (
        r"(?:hice|saqué|saque|tomé|tome|tengo|traje)(?: \w+){0,2}? (?:fotos|tomas|imágenes"
        r"|imagenes)"
    ),
    "review_words.next_time": (
        r"la próxima(?: vez)?|la proxima(?: vez)?|hacer (?:distinto|diferente|mejor)"
    ),
    "review_words.log": r"bitácora|nota|cuaderno|libreta|diario|línea (?:para|sobre) \w+",
    # "Copied the card to the laptop and a backup drive".
    "review_words.copied": r"(?:copié|copiado|copiada|guardé|copia de seguridad)",
    "review_words.not_yet": r"no|nunca|sin|debo|tengo que",
    # "The focus was on 4 m".
    "review_words.focus": r"enfo\w+|foco",
    "review_words.was": r"estaba",
    "review_words.on": r"a|en",
    # What a name of water ends with, or begins with.
    "review_words.water_behind": NOTHING,
    "review_words.water_before": r"(?:Salto|Cascada|Chorro|Cola)(?: d[eo]l?| las?| los)*",
    # What opens a sentence is no part of a name.
    "review_words.opens": r"La|El|En",
    "review_words.ahead": r"la semana que viene",
    # Frames that are taken, of which some are kept.
    "review_words.of_taken": (r"qued\w+|conserv\w+|guard\w+|borr\w+|fotos?|tomas|hice|saqu[eé]"),
}
