"""Slips of the thumb and of dictation in the words of the trade, put right."""

from __future__ import annotations

import re
from typing import Final

#: Words that decide what a number is; a token one letter off is one of them.
_WORDS: Final = (
    *("aperture", "shutter", "histogram", "exposure", "sensitivity", "waterfall", "landscape"),
    *("portrait", "foreground", "background", "distance", "megapixels", "overcast", "polariser"),
    *("polarizer", "kilometres", "kilometers", "nearest", "closest", "handheld"),
)
#: Words of their own that are one letter off.
_OTHERS: Final = frozenset(
    {"closet", "dearest", "shatter", "stutter", "neatest", "closes", "handhold"}
)
#: What dictation and thumbs make of short words, by what stands behind.
_BEFORE_NUMBERS: Final = (
    (re.compile(r"\bios(?= ?\d| (?:one|two|four|six|eight|sixty|fifty|hundred|a hundred))"), "iso"),
    (
        re.compile(
            r"\b(?:i so|eye so|is o|i\.s\.o\.?)(?= (?:\d|one|two|four|six|eight|a hundred))"
        ),
        "iso",
    ),
    (re.compile(r"\b(?:f|eff) (?:fore|four)\b(?! \d)"), "f 4"),
    (re.compile(r"\bf ate\b"), "f 8"),
    (re.compile(r"\b(?:eff|ef)(?= ?(?:\d|eleven|eight|sixteen|twenty|four|five))"), "f"),
)
#: Letters that thumbs and eyes take for digits behind "iso": "1oo", "l00".
_ISO_LETTERS: Final = re.compile(r"(?<=\biso )(?=[lo]*\d)[\dlo]{2,5}\b")
#: Number words as they are often spelt.
_SPELT: Final = (
    (re.compile(r"\bfourty\b"), "forty"),
    (re.compile(r"\bninty\b"), "ninety"),
    (re.compile(r"\btwelf\b"), "twelve"),
    (re.compile(r"\bforteen\b"), "fourteen"),
    (re.compile(r"\b(?:meters?s|metres?s|meteres|meeters?|metrs)\b"), "metres"),
)
_TOKEN: Final = re.compile(r"[a-z]{6,13}")


_DIGITS: Final = str.maketrans("lo", "10")


def _cut(word: str) -> set[str]:
    """The word and what is left of it without one of its letters."""
    return {word} | {word[:at] + word[at + 1 :] for at in range(len(word))}


_CUTS: Final = {cut: word for word in _WORDS for cut in _cut(word)}


def _mended(match: re.Match[str]) -> str:
    token = match.group()
    if token in _WORDS or token in _OTHERS or token.removesuffix("s") in _WORDS:
        return token
    for cut in sorted(_cut(token)):
        word = _CUTS.get(cut)
        if word is not None and word[0] == token[0]:
            return word
    return token


def mend_slips(text: str) -> str:
    """The message with slips in the trade's words put right: `apperture`, `histogramm`, `ios 200`.

    Args:
        text: a message in lower case.
    """
    for pattern, word in (*_SPELT, *_BEFORE_NUMBERS):
        text = pattern.sub(word, text)
    text = _ISO_LETTERS.sub(lambda match: match.group().translate(_DIGITS), text)
    return _TOKEN.sub(_mended, text)
