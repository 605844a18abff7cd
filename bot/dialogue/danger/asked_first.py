"""What is neither alarm nor plain talk: somebody out of hearing, loose rock; it is asked about."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.folding import folded

_SOMEBODY: Final = (
    r"(?:him|her|them|if (?:he|she|they)|whether (?:he|she|they)|(?:my|our|the) (?:\w+ )?"
    r"(?:friends?|wife|husband|son|daughter|brother|sister|partner|buddy|mate|kids?|child|children|group|others"
    r"|mum|mom|dad|mother|father|girlfriend|boyfriend))"
)
_UNHEARD: Final = re.compile(
    rf"\b(?:cant|cannot|can not|can hardly|can barely|dont|no longer) hear {_SOMEBODY}\b"
    rf"|\bno (?:contact|signal|word) (?:with|to|from|of) {_SOMEBODY}\b"
    r"|\b(?:friend|wife|husband|son|daughter|brother|sister|partner|buddy|mate)\b.* upstream\b.*"
    r"\bno contact\b"
    r"|\bhor\w* (?:(?:ich|wir) )?(?:ihn|sie|mein\w* \w+|nicht ob)(?: \w+)? ?nicht\b|\bhor\w* nicht"
    r" (?:, )?(?:ob|wenn|wann) (?:er|sie)\b|\bkein\w* kontakt (?:zu|mit)\b"
    r"|\bno (?:oigo|oimos) (?:si|a mi|a nuestr\w+|cuando)\b|\bno (?:lo|la|los|las) (?:oigo|oimos)\b"
    r"|\bsin contacto con\b"
)
_LOOSE: Final = re.compile(
    r"\b(?:loose|falling|fresh fallen) (?:rocks?|boulders?)\b|\b(?:rocks?|stones?|boulders?)"
    r" (?:fell|came|come|fall|tumbled)(?: down| off)\b"
    r"|\blose[rns]? (?:fels\w*|gestein|felsen)\b"
    r"|\bsteine? (?:kam|kamen|fiel|fielen) (?:runter|herunter|herab)\b"
    r"|\brocas? sueltas?\b|\bcay\w+ (?:piedras|rocas|una (?:piedra|roca))\b"
)
#: There loose rock is something to stand a tripod on, to frame, or what a sign tells of.
_OF_PICTURE: Final = re.compile(
    r"\b(?:tripod|stativ|tripode|foreground|frame|picture|composition|vordergrund|bild|primer plano"
    r"|foto|encuadre|sign|schild|cartel|focus|fokus|enfo\w*)\b"
)
#: Loose rock that is behind who tells of it.
_PASSED: Final = re.compile(
    r"\b(?:on (?:the|our|my) way (?:in|up|down|here|over)|auf dem (?:hinweg|weg (?:hierher|her|rauf"
    r"|runter|rein))|(?:en|por) el camino (?:de ida|hasta aqui|hacia aqui))\b"
)
#: A fall that is louder than a voice, and nothing else.
_NOISE: Final = re.compile(
    rf"(?:ok )?(?:i|we) (?:cant|cannot|can not|can hardly|can barely) hear {_SOMEBODY}"
    r" (?:over|through|because of|for) the (?:\w+ )?(?:water|noise|roar|falls?|waterfall|river)"
    r"(?: any ?more)?"
)


def wants_question(text: str) -> bool:
    """Whether a message that is no danger by itself leaves a question that has to be put.

    Args:
        text: as typed, in any of Linn's languages.
    """
    said = folded(text)
    if _UNHEARD.search(said):
        return True
    told = "?" not in text and not (_OF_PICTURE.search(said) or _PASSED.search(said))
    return told and _LOOSE.search(said) is not None


def only_noise(text: str) -> bool:
    """Whether a message says that somebody is not heard over the water, and nothing else.

    Args:
        text: as typed.
    """
    return _NOISE.fullmatch(folded(text)) is not None
