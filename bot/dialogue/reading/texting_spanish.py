"""Spanish as it is typed with one thumb, in full: `q llevo`, `xfa`, `pa q salga`, `x la izq`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.rewriting import Rewriting

_WORDS: Final = {
    "q": "que", "k": "que", "ke": "que", "xq": "porque", "xk": "porque", "pq": "porque",
    "pk": "porque", "porq": "porque", "pork": "porque", "esq": "es que", "xfa": "por favor",
    "xfavor": "por favor", "plis": "por favor", "pls": "por favor", "tmb": "también",
    "tmbn": "también", "tb": "también", "pa": "para", "pal": "para el", "d": "de",
    "kiero": "quiero", "kiere": "quiere", "aki": "aquí", "ahi": "ahí", "toy": "estoy",
    "maniana": "mañana", "mñn": "mañana", "nomas": "solo", "nomás": "solo", "ahorita": "ahora",
    "orita": "ahora", "tripie": "trípode", "tripié": "trípode", "mts": "m", "izq": "izquierda",
    "dsp": "después", "dps": "después", "ps": "pues", "pos": "pues", "sip": "sí", "sep": "sí",
    "nop": "no", "nel": "no", "bn": "bien", "muxo": "mucho",
    "sedosita": "sedosa", "sedosito": "sedoso", "dnd": "donde",
}  # fmt: skip
_IN_FULL: Final = Rewriting(
    (
        # "x" between words is "por"; beside a number it is a sign.
        (
            re.compile(
                r"(?:(?<=[a-záéíóúñ] )|^)x (?=(?:la|el|los|las|lo|aqu[ií]|ah[ií]|all[aá]|favor|eso"
                r"|esto|donde|ejemplo|si|qu[eé]|un|una|mi|arriba|abajo|encima)\b)"
            ),
            "por ",
        ),
        (re.compile(r",? \b(?:ja(?:ja)+|jaj|jeje+|xd|lol)\b"), ""),
    )
)
_WORD: Final = re.compile(r"(?<![\w/.,-])[a-záéíóúñ]+(?![\w/])")


def in_full(text: str) -> str:
    """The message with its shortened words in full; one that has none stays as it was typed.

    Args:
        text: as typed, in Spanish.
    """
    said = text.lower()
    full = _IN_FULL.of(_WORD.sub(lambda match: _WORDS.get(match.group(), match.group()), said))
    return text if full == said else full
