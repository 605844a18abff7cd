"""A message in one spelling for languages with accents: plain letters, sentences parted."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache
from typing import Final

#: Longer messages are cut (own rule: four times what is read for facts).
LONGEST_TEXT: Final = 8000

_STOP: Final = re.compile(r"[.!?¿¡;:\r\n()…]+(?!\d)")
_COMMA: Final = re.compile(r",(?!\d)")
_OTHER: Final = re.compile(r"[^\w,.\n ]+")
_APOSTROPHE: Final = re.compile("['’‘`´ʼ]")
_DRAWN_OUT: Final = re.compile(r"([a-z])\1{2,}")


def without_accents(text: str) -> str:
    """A text with its letters plain: "é" is "e", "ä" is "a"."""
    apart = unicodedata.normalize("NFKD", text)
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


#: One message is folded for each thing that it is looked through for.
@lru_cache(maxsize=32)
def folded(text: str) -> str:
    """A message without accents, cases and drawn-out letters.

    Args:
        text: any text; cut at 8000 characters.

    Returns:
        Lower-case words parted by one blank, commas as words of their own, sentences parted by
        " . "; "ß" is "ss", an accent is dropped ("ä" is "a"), "hilfeee" is "hilfe".
    """
    plain = without_accents(text[:LONGEST_TEXT]).casefold()
    plain = _COMMA.sub(" , ", _OTHER.sub(" ", _STOP.sub("\n", _APOSTROPHE.sub("", plain))))
    plain = _DRAWN_OUT.sub(r"\1", plain)
    return " . ".join(" ".join(piece.split()) for piece in plain.split("\n") if piece.split())
