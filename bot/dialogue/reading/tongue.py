"""Which language a message is written in, by its small words, where that is clear."""

from __future__ import annotations

import re
from typing import Final


def _words(text: str) -> frozenset[str]:
    return frozenset(re.findall(r"[^\W\d_]+(?:'[^\W\d_]+)?", text.casefold().replace("’", "'")))


#: Small words and greetings that mark a language: none is a word of another one here (own rule).
_MARKS: Final = {
    "en": _words("the and with what how my is are from have i'm it's please which should does"),
    "de": _words(
        "ich bin ist nicht und der das ein eine einen mit wie wir mir für von habe haben auch oder "
        "kein keine aber noch zum zur welche bitte soll kann hallo guten moin servus grüezi "
        "grüessech grüß gott du bist dir dich mich mein meine danke dankeschön wer warum wieso "
        "wann wohin jetzt alles nichts etwas sehr sind wird wurde geht gehts geht's morgen "
        "höre schlecht"
    ),
    "es": _words(
        "el los las un una es estoy está con por para que qué del y cómo hay tengo muy pero al "
        "cuál quiero puedo desde favor hola buenos buenas soy eres somos gracias muchas muchos "
        "días veo oigo uso lector pantalla tal todo toda nada quién cuándo dónde "
        "sordo sorda daltónico daltónica"
    ),
}
#: Words of the trade, and of dialects, that no other language here has: bare facts are often all
#: that somebody writes first, "12 m hoch, 15 m weg" (own rule).
_TRADE: Final = {
    "en": frozenset(),
    "de": _words(
        "hoch weg entfernt fels felsen stein steine stoa vollformat stativ wasserfall bach "
        "polfilter graufilter objektiv kamera blende belichtung verschlusszeit bewölkt wolken laub "
        "blätter himmel bei beim vom vorn vorne steh stehe nach meter ungefähr etwa zirka "
        "weich schwarz weiß "
        "ned nöd nix wos wia hob bissl bisserl aiso soi isch uf gsi"
    ),
    "es": _words(
        "alto alta metros roca piedra trípode tripode cascada salto arroyo móvil movil celular "
        "cámara camara objetivo polarizador nublado sombra velocidad diafragma exposición "
        "exposicion fondo pasos blando blanda hojas cielo agua lejos distancia unos más "
        "mas tiene mide q"
    ),
}
#: Greetings are enough alone.
_GREETINGS: Final = frozenset(
    {"hallo", "moin", "servus", "grüezi", "grüessech", "hola", "buenas"}
    | {"danke", "dankeschön", "gracias"}
)
#: So many different marks make it clear, as long as no other language has any (own rule).
_CLEAR: Final = 2
#: So many times the marks of another language outweigh them: "me das una mano" (own rule).
_OUTWEIGHS: Final = 3


def language_of(text: str) -> str | None:
    """The language that a message is clearly written in, by its code; None where it is not clear.

    Args:
        text: the message as typed.
    """
    words = _words(text)
    marked = {language: words & (marks | _TRADE[language]) for language, marks in _MARKS.items()}
    language, *others = sorted(marked, key=lambda one: len(marked[one]), reverse=True)
    found, beside = marked[language], len(marked[others[0]])
    if beside and len(found) < _OUTWEIGHS * beside:
        return None
    return language if len(found) >= _CLEAR or found & _GREETINGS else None
