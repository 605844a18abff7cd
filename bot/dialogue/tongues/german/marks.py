"""German words by which the language of a message is known; own lists."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    # Small words and greetings that mark the language: none is a word of another one here.
    "marks.small": """
        ich bin ist nicht und der das ein eine einen mit wie wir mir für von habe haben
        auch oder kein keine aber noch zum zur welche bitte soll kann hallo guten moin
        servus servas griaß grüezi grüessech grüß gott du bist dir dich mich mein meine danke
        dankeschön wer warum wieso wann wohin jetzt alles nichts etwas sehr sind wird
        wurde geht gehts geht's morgen höre schlecht""",
    # Words of the trade, and of dialects, that no other language here has.
    "marks.trade": """
        hoch weg entfernt fels felsen stein steine stoa vollformat stativ wasserfall
        bach polfilter graufilter objektiv kamera blende belichtung verschlusszeit
        bewölkt wolken laub blätter himmel bei beim vom vorn vorne steh stehe nach meter
        ungefähr etwa zirka weich schwarz weiß ned nöd nix wos wia hob bissl bisserl
        aiso soi isch uf gsi mitm wossa muass olles kemma aufi obi owa eini""",
    # Greetings are enough alone.
    "marks.greetings": "hallo moin servus servas griaß grüezi grüessech danke dankeschön",
}
