"""A reply to a question of safety, part by part: what answers it, and what else is said.

People do not stop behind the answer: "1, nobody. How do I lose that twig?" Read as a whole such a
reply is of unknown words; part by part one of them answers, and the others have an answer of their
own.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final, NamedTuple

from bot.dialogue.danger.denied import sounds_of_danger
from bot.dialogue.folding import folded
from bot.dialogue.meaning.options import OTHER, meant_of_safety
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import clauses_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.safety_sense import SAFE_OPTION
from bot.dialogue.tongues import in_any, whole_words

#: The number of an option before words; "2 of us" and "2 m" count something.
_NUMBERED: Final = re.compile(
    rf"\W*(?:{in_any('clauses.option')}\W*)?(\d)(?P<sign>[.,:;!)-]*\s+)(?P<rest>\D.*)",
    re.IGNORECASE | re.DOTALL,
)
_COUNTED: Final = re.compile(rf"{in_any('clauses.counted')}\b", re.IGNORECASE)
#: Who is left out of good news, or not sure to be in it; then it answers nothing.
_EXCEPTION: Final = whole_words("clauses.exception")
_HEDGE: Final = whole_words("clauses.hedge")
#: Who a part is of: the water, the twig and the light are nobody.
_PERSON: Final = whole_words("clauses.person")
#: What a part has in it that answers by its sense: without such a word one part in twenty of what
#: people say of pictures, and of danger, is near to good news.
_ANSWERING: Final = {
    "in_danger": whole_words("clauses.safe", "clauses.out_there"),
    "out_there": whole_words("clauses.out_there"),
    "safe": whole_words("clauses.safe"),
}
#: So far before all else [nearness] the sense of such a part must be, and that of one which tells
#: of danger to somebody, in so many words at least (own rules, on parts of strangers' lines).
_SURE: Final = 0.3
_SURELY_NOT: Final = 0.45
_LEAST_WORDS: Final = 2
#: One part alone is the whole reply, which others read.
_SEVERAL: Final = 2

#: What one part says by its words: True where nobody is in danger; None: nothing of it.
Verdict = Callable[[str], bool | None]


class Heard(NamedTuple):
    """What a reply says, and what is left of it.

    Args:
        safe: whether nobody is in danger; None where it says neither, or both.
        rest: the parts that say nothing of it, as typed; "" where it says neither.
        doubtful: whether a part contradicts, leaves somebody out or tells of danger.
    """

    safe: bool | None
    rest: str = ""
    doubtful: bool = False


class _Part(NamedTuple):
    """One part of a reply, and what it says: True where nobody is in danger."""

    text: str
    by_words: bool | None
    by_sense: bool | None


NOTHING_HEARD: Final = Heard(None)
_DOUBTFUL: Final = Heard(None, doubtful=True)


def heard(question: str, text: str, by_words: Verdict, said: Callable[[str], Said]) -> Heard:
    """Hear a reply part by part.

    Args:
        question: `in_danger`, `out_there` or `safe`.
        text: as typed or dictated, in any of Linn's languages.
        by_words: what known words of one part say.
        said: glosses one part.

    Returns:
        The answer where a number stands before words that do not contradict it, or where one
        part gives it and no other contradicts it, leaves somebody out or tells of danger.
    """
    option, behind = _numbered(text)
    parts = [_part(question, part, by_words, said) for part in clauses_of(behind)]
    if any(map(_leaves_somebody_out, parts)):
        return _DOUBTFUL
    if option is not None and (safe := _is_safe(question, option)) is not None:
        contradicted = (not safe) in {part.by_words for part in parts}
        return _DOUBTFUL if contradicted else Heard(safe, _rest_of(parts))
    if False in {part.by_words for part in parts}:
        return _DOUBTFUL if len(parts) >= _SEVERAL else NOTHING_HEARD
    return _heard_in(parts)


def _heard_in(parts: Sequence[_Part]) -> Heard:
    """What several parts say that no words contradict; the sense of one may speak against it."""
    stated = True in {part.by_words for part in parts}
    sensed = {part.by_sense for part in parts}
    if len(parts) < _SEVERAL or not (stated or (True in sensed and False not in sensed)):
        return NOTHING_HEARD
    return Heard(True, _rest_of(parts))


def _rest_of(parts: Sequence[_Part]) -> str:
    """The parts that do not say that all are safe."""
    return " ".join(part.text for part in parts if not (part.by_words or part.by_sense))


def _leaves_somebody_out(part: _Part) -> bool:
    """Whether a part makes an exception, or says only perhaps that all is well."""
    said = folded(part.text)
    answers = part.by_words is not None or part.by_sense is not None
    hedged = answers and _HEDGE.search(said) is not None
    return "?" not in part.text and (hedged or _EXCEPTION.search(said) is not None)


def _is_safe(question: str, option: int) -> bool | None:
    options = QUESTIONS[question].options
    chosen = options[option - 1] if 1 <= option <= len(options) else None
    return None if chosen is None else chosen == SAFE_OPTION[question]


def _numbered(text: str) -> tuple[int | None, str]:
    """The number that a reply begins with, and the words behind it."""
    found = _NUMBERED.match(text)
    if found is None or _COUNTED.match(found["rest"]):
        return None, text
    return int(found[1]), found["rest"]


def _part(question: str, part: str, by_words: Verdict, said: Callable[[str], Said]) -> _Part:
    """What one part says, by its words, else by its sense where that is sure."""
    known = by_words(part)
    if known is None and sounds_of_danger(part):
        return _Part(part, None, by_sense=False)
    if known is not None or len(part.split()) < _LEAST_WORDS or "?" in part:
        return _Part(part, known, None)
    found = meant_of_safety(question, (*QUESTIONS[question].options, OTHER), said(part))
    if found is None or found.option == OTHER:
        return _Part(part, None, None)
    safe = found.option == SAFE_OPTION[question]
    needed, telling = (_SURE, _ANSWERING[question]) if safe else (_SURELY_NOT, _PERSON)
    sure = found.ahead >= needed and telling.search(folded(part)) is not None
    return _Part(part, None, safe if sure else None)
