"""The questions of a message that surely ask, and whether what a walk goes on with is of one."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue.meaning.sentences import clauses_of, sentences_of
from bot.dialogue.tongues import in_any, of_each, whole_words

_ASKS: Final[Mapping[str, re.Pattern[str]]] = {
    language: re.compile(rf"(?<!\w)(?:{said})", re.IGNORECASE)
    for language, said in of_each("left_unanswered.asks").items()
}
#: What a clause begins with that asks without a mark, as who dictates it: "am I late".
_OPENS: Final[Mapping[str, re.Pattern[str]]] = {
    language: re.compile(rf"(?:{said})\b", re.IGNORECASE)
    for language, said in of_each("left_unanswered.opens").items()
}
#: A tag alone, or behind what is told: "f/8 then, right?".
_TAG: Final = re.compile(
    rf"(?:^|[,;:.]\s*|\s[-\u2013]\s*|\s)¿?{in_any('left_unanswered.tag')}\W*\?\W*$", re.IGNORECASE
)
#: Who goes on so has answered it: "should I leave the rock out? Yes, nothing near".
_ANSWERED: Final = re.compile(rf"\W*{in_any('left_unanswered.yes_no')}\b", re.IGNORECASE)
_OF_SETTINGS: Final = re.compile(whole_words("left_unanswered.of_settings").pattern, re.IGNORECASE)
_OF_VIEW: Final = re.compile(whole_words("left_unanswered.of_view").pattern, re.IGNORECASE)
#: With fewer words a question is too short to know what it asks (own rule).
_LEAST_WORDS: Final = 4
_LEAST_CLAUSE: Final = 3
_CLAUSE: Final = re.compile(r"[,;:]\s+|\s[-\u2013]\s")
_AND: Final = re.compile(
    rf"^\W*(?:{in_any('asking.and')}|so|{in_any('asking.or')})\s+", re.IGNORECASE
)
_OR_NOT: Final = re.compile(rf"\w+ {in_any('asking.or')} \w+$", re.IGNORECASE)
_WORD: Final = re.compile(r"[^\W\d_]{3,}")
#: Two questions that share so many of their longer words are one, asked again (own rule).
_SAME: Final = 0.6


def questions_in(typed: str, language: str) -> list[str]:
    """The sentences of a message that surely ask something, as typed; without mere tags.

    Args:
        typed: the message.
        language: in which it is, by its code.
    """
    sentences = sentences_of(typed)
    behind = [*sentences[1:], ""]
    return [
        question
        for sentence, following in zip(sentences, behind, strict=True)
        if not _ANSWERED.match(following)
        for question in _asked_in(sentence.strip(), language)
    ]


def _asked_in(sentence: str, language: str) -> list[str]:
    """The sentence where its mark says that it asks, else its clauses that begin so."""
    marked = sentence.endswith("?")
    pieces = [sentence] if marked else map(_bare, clauses_of(sentence))
    asks = _of(_ASKS, language).search if marked else _of(_OPENS, language).match
    return [
        piece
        for piece in pieces
        if len(piece.split()) >= _LEAST_WORDS and not _TAG.search(piece) and asks(piece)
    ]


def _bare(clause: str) -> str:
    """A clause without what joins it to the one before."""
    return _AND.sub("", clause).strip(" ¿,;:")


def _of(patterns: Mapping[str, re.Pattern[str]], language: str) -> re.Pattern[str]:
    return patterns.get(language, patterns["en"])


def asking_clause(question: str, language: str, most: int) -> str | None:
    """A clause of a long question that asks by itself; None where none is short enough.

    Args:
        question: as typed.
        language: in which it is, by its code.
        most: characters that it may have.
    """
    asks = _of(_ASKS, language)
    clauses = (_AND.sub("", clause).strip(" ¿") for clause in _CLAUSE.split(question))
    fitting = (one for one in clauses if len(one) <= most and len(one.split()) >= _LEAST_CLAUSE)
    return next((one for one in fitting if asks.search(one) and not _OR_NOT.match(one)), None)


def is_of_settings(question: str) -> bool:
    """Whether settings, or what was said of a frame, may be the answer."""
    return _OF_SETTINGS.search(question) is not None


def is_of_view(question: str) -> bool:
    """Whether what was said of lens, place or borders may be the answer."""
    return _OF_VIEW.search(question) is not None


def is_same(one: str, other: str) -> bool:
    """Whether two questions are one, asked again in nearly the same words."""
    mine, others = (frozenset(_WORD.findall(text.casefold())) for text in (one, other))
    shared = len(mine & others)
    return bool(shared) and shared >= _SAME * min(len(mine), len(others))
