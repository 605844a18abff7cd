"""Messages in other languages, glossed: the trade's words in English, so that one reader is enough.

A language is a file here: a wording, a tab, and what it is for the reader.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from typing import Final, NamedTuple

from bot.dialogue.reading.normal import LONGEST_TEXT

#: Languages with a file, by their codes (ISO 639-1).
GLOSSED: Final = frozenset({"de", "es"})
_WORD: Final = re.compile(r"[^\W\d_]+")


class Gloss(NamedTuple):
    """Wordings of a language in their order, then its single words, each with its English."""

    phrases: tuple[tuple[re.Pattern[str], str], ...]
    words: Mapping[str, str]


def glossed(text: str, language: str) -> str:
    """The message with the words of the trade in English; others stay as they are.

    It is for the readers of facts and complaints, never for a person: word follows word, and
    what is no word of the trade may be left in the other language.

    Args:
        text: as typed.
        language: in which the person writes; English, and any that has no file, changes nothing.
    """
    if language not in GLOSSED:
        return text
    gloss = _gloss(language)
    said = unicodedata.normalize("NFC", text[:LONGEST_TEXT]).casefold()
    for pattern, english in gloss.phrases:
        said = pattern.sub(english, said)
    return _WORD.sub(lambda match: gloss.words.get(match.group(), match.group()), said)


@cache
def _gloss(language: str) -> Gloss:
    """What the file of a language tells."""
    text = files(__package__).joinpath(f"{language}.tsv").read_text("utf-8")
    lines = [line.split("\t") for line in text.splitlines() if line and not line.startswith("#")]
    words = {said: english for said, english in lines if _WORD.fullmatch(said)}
    phrases = tuple(
        (re.compile(rf"(?<!\w)(?:{said})(?!\w)"), english)
        for said, english in lines
        if said not in words
    )
    return Gloss(phrases, words)
