"""Messages in other languages, glossed: the trade's words in English, so that one reader is enough.

A language is two files here: the trade's wordings, and words of everyday speech; a wording, a tab,
and what it is for the reader.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping
from functools import cache, lru_cache
from importlib.resources import files
from itertools import product
from typing import Final, NamedTuple

from bot.dialogue.reading.foreign.clocks import with_clocks
from bot.dialogue.reading.foreign.dialects import in_plain_german, in_standard
from bot.dialogue.reading.foreign.number_words import in_english
from bot.dialogue.reading.foreign.numerals import SMALL
from bot.dialogue.reading.foreign.slips import mended
from bot.dialogue.reading.normal import LONGEST_TEXT
from bot.dialogue.reading.rewriting import Rewriting

#: Languages with a file, by their codes (ISO 639-1).
GLOSSED: Final = frozenset({"de", "es"})
_WORD: Final = re.compile(r"[^\W\d_]+")
_PART: Final = re.compile(r"<(\w+)>")
_GAPS: Final = re.compile(" {2,}")
#: A number in a wording: alone as <num> or <word>, as a group <n>.
_SAID: Final = rf"\b(?:{'|'.join(SMALL)})\b"
_NUMBER: Final = rf"(?>[1-4] [12]/3|\d+(?:\.\d+)?(?:/\d+)?|{_SAID})"
_NUMBERS: Final = {"num": _NUMBER, "n": f"({_NUMBER})", "word": _SAID}
#: Umlauts are typed as they are, with two letters, or not at all.
_UMLAUTS: Final = {"ä": ("ä", "ae", "a"), "ö": ("ö", "oe", "o"), "ü": ("ü", "ue", "u")}


class Gloss(NamedTuple):
    """Wordings of a language in their order, then its single words, each with its English."""

    phrases: Rewriting
    words: Mapping[str, str]


#: One message is glossed several times while it is answered.
@lru_cache(maxsize=16)
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
    said = " ".join(unicodedata.normalize("NFC", text[:LONGEST_TEXT]).casefold().split())
    said = mended(_without_accents(said) if language == "es" else _plainly(said), language)
    said = with_clocks(in_english(said, language), language)
    said = gloss.phrases.of(said)
    return _WORD.sub(lambda match: gloss.words.get(match.group(), match.group()), said)


def _plainly(text: str) -> str:
    """German as its wordings are, whatever the region."""
    return in_standard(in_plain_german(text))


def _without_accents(text: str) -> str:
    """Spanish as people type it in a hurry; an ñ loses its tilde too."""
    apart = unicodedata.normalize("NFD", text)
    return unicodedata.normalize("NFC", "".join(c for c in apart if not "\u0300" <= c <= "\u0303"))


@cache
def _gloss(language: str) -> Gloss:
    """What the files of a language tell."""
    text = files(__package__).joinpath(f"{language}.tsv").read_text("utf-8")
    lines = [line.split("\t") for line in text.splitlines() if line and not line.startswith("#")]
    named = dict(_NUMBERS)
    phrases, words = [], {}
    for said, english in lines:
        if said.startswith("@"):
            named[said[1:]] = f"(?:{_with_parts(english, named)})"
        elif _WORD.fullmatch(said):
            words[said] = english
        else:
            phrases.append((_compiled(said, named), english))
    words = _everyday_words(language) | words
    typed = {spelling: words[word] for word in words for spelling in _spellings(word)}
    return Gloss(Rewriting(phrases, _without_gaps), typed | words)


def _everyday_words(language: str) -> dict[str, str]:
    """Words that no wording of the trade has taken: several a line, and their English."""
    text = files(__package__).joinpath(f"{language}_words.tsv").read_text("utf-8")
    lines = [line.split("\t") for line in text.splitlines() if not line.startswith("#")]
    return {word: english for said, english in lines for word in said.split(",")}


def _without_gaps(text: str) -> str:
    return _GAPS.sub(" ", text)


def _with_parts(said: str, named: Mapping[str, str]) -> str:
    return _PART.sub(lambda match: named[match.group(1)], said)


def _compiled(said: str, named: Mapping[str, str]) -> re.Pattern[str]:
    whole = _with_parts(said, named)
    for umlaut, typed in _UMLAUTS.items():
        whole = whole.replace(umlaut, f"(?:{'|'.join(typed)})")
    return re.compile(rf"(?<!\w)(?:{whole})(?:(?<!\w)|(?!\w))")


def _spellings(word: str) -> Iterable[str]:
    """A word with its umlauts as they may be typed."""
    return map("".join, product(*(_UMLAUTS.get(letter, (letter,)) for letter in word)))
