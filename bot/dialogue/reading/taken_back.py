"""Bare numbers that the next words put right: `12, no, 15 m` is `15 m`."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.reading.putting_right import BACK
from bot.dialogue.reading.unit_words import LENGTH

#: "12, no, 15 m high", "5, wait, 6": a bare number right before its correction.
_TAKEN_BACK: Final = re.compile(
    rf"(?<![\w./,+-])(?:not )?\d{{1,4}}(?:\.\d)?(?: ?{LENGTH})?[,;. -]+(?:\b{BACK}\b[,;. -]*)+"
    rf"(?=\d+(?:\.\d+)? ?{LENGTH}\b)"
    rf"|^\d{{1,4}}(?:\.\d)?[,;. -]+(?:\b{BACK}\b[,;. -]*)+(?=\d+(?:\.\d+)?\W*$)"
)


#: "15 m away, I mean high".
_WORD_TAKEN_BACK: Final = re.compile(
    r"(?<=\d)( ?\w{0,6}) (?:away|high|tall|wide|deep|back|off|up),? (?:no,? |sorry,? |oops,? )*"
    r"(?:i mean|i meant|or rather|rather) (?=(?:high|tall|wide|deep|away)\b)"
)

#: "20 m away, oh wait no, more like 25 m": what the first was stays with the second.
_ROLE: Final = r"away|high|tall|wide|deep|back|off"
_LENGTH_TAKEN_BACK: Final = re.compile(
    rf"(?<![\w./,+-])\d{{1,4}}(?:\.\d)? ?{LENGTH} (?P<role>{_ROLE})[,;. -]+"
    rf"(?:(?:oh|ah|hm+|well|{BACK})\b[,;. -]*)*\b{BACK}\b[,;. -]*"
    rf"(?P<right>\d+(?:\.\d+)? ?{LENGTH})\b(?! (?:{_ROLE})\b)"
)


#: "40 yards. No, feet!": the number stays.
_UNIT_TAKEN_BACK: Final = re.compile(
    rf"(?<![\w./,+-])(?P<number>\d{{1,4}}(?:\.\d+)?) ?{LENGTH}(?P<role> (?:{_ROLE}))?[,;.!: -]+"
    rf"(?:(?:oh|ah|hm+|well|{BACK})\b[,;.!: -]*)*\b{BACK}\b[,;.!: -]*(?:in )?"
    rf"(?P<unit>{LENGTH})\b(?! ?\d)"
)
#: "40 feet! 40 feet to the fall".
_SAID_AGAIN: Final = re.compile(
    rf"(?<![\w./,+-])(?P<length>\d{{1,4}}(?:\.\d+)? ?{LENGTH})[,;.!: -]+(?=(?P=length)\b)"
)
#: "A tad under 2 m, well 1.9, is the rock".
_REFINED: Final = re.compile(
    r"(?:\b(?:an?|just|slightly|little|bit|tad|hair|touch) )*\b(?:under|over|short of|more than"
    rf"|less than|above|below) (?:\d{{1,4}}(?:\.\d+)?|a) ?(?P<unit>{LENGTH}),? "
    r"(?:(?:well|ok|so|say|or|make it|call it|exactly|more like)[, ]+)+"
    rf"(?P<better>\d{{1,4}}(?:\.\d+)?)\b(?! ?{LENGTH}\b),?"
)


def without_taken_back(text: str) -> str:
    """The message without bare numbers that are put right at once: `12, no, 15 m` is `15 m`.

    Args:
        text: a message in lower case, its numbers in digits.
    """
    text = _UNIT_TAKEN_BACK.sub(_in_the_right_unit, _REFINED.sub(r"\g<better> \g<unit>", text))
    text = _SAID_AGAIN.sub("", text)
    text = _LENGTH_TAKEN_BACK.sub(r"\g<right> \g<role>", text)
    return _TAKEN_BACK.sub("", _WORD_TAKEN_BACK.sub(r"\1 ", text))


def _in_the_right_unit(match: re.Match[str]) -> str:
    return f"{match['number']} {match['unit']}{match['role'] or ''}"
