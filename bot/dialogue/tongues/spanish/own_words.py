"""Spanish words: how the meaning of one of Linn's own words is asked, and those words."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WORDS: Final[Mapping[str, str]] = {
    "own_words.before": (
        r"que (?:es|son|significan?|quieres? decir(?: con)?|quiere decir) "
        r"|explica(?:me)? (?:que es )?|a que te refieres con "
        r"|no (?:se|entiendo|entendi|capto|le entiendo a|sigo|pillo|comprendo)"
        r" (?:bien )?(?:que (?:es|significa|quiere decir) )?"
        r"|ni idea (?:de )?que (?:es|significa) "
    ),
    "own_words.filler": r"(?:el|la|los|las|lo|un|una|ese|esa|eso|esto|del|de|con|en|que|es|tu)",
    "own_words.behind": (
        r"(?:que )?(?:significan?|quieren? decir)(?: eso)?|(?:que )?(?:es|son) (?:eso|que)|que es"
    ),
    "own_words.tail": r"significan?|es|son|exactamente|por favor|aqui|quiere decir|entonces|eso",
    "own_words.goes_on": r"y|pero|yo|porque|mi|es que",
    "own_words.share": (
        r"(?:el agua )?cruza(?: el)?(?: \d+(?:[.,]\d+)?)?(?: (?:por ciento )?del encuadre)?"
        r"|\d+(?:[.,]\d+)? (?:por ciento )?del encuadre|(?:el )?(?:porcentaje|por ciento)"
        r"|\d+(?:[.,]\d+)? por ciento"
    ),
    "own_words.look": r"con textura|sedosa|nitida|brumosa",
    "own_words.meter": r"(?:el )?fotometro(?: queda)?(?: mas o menos)? en su punto|en su punto",
    "own_words.lip": r"labio|borde de caida",
    "own_words.letters": r"(?:zona [a-f]|letras?)(?: (?:en|de) la (?:foto|imagen))?",
    "own_words.sparkle": r"destellos?(?: esta bien)?",
    "own_words.tilt": r"inclinada(?: \d+(?:[.,]\d+)?)?|camara nivelada",
    "own_words.spare": r"\d+(?:[.,]\d+)? (?:por ciento )?de margen|margen",
    "own_words.focal": r"(?:\d+ ?mm )?en full frame|equivalente|\d+ ?mm",
    "own_words.nearest": r"(?:lo )?mas cercano",
    "own_words.turn_back": r"hora de volver",
    "own_words.last_frames": r"luz de (?:tus|mis) ultimas fotos",
    "own_words.portrait": r"vertical|horizontal",
    "own_words.leaf_frame": r"foto de hojas",
    "own_words.ladder": r"serie",
    "own_words.overcast": r"cielo (?:muy )?cubierto",
}
