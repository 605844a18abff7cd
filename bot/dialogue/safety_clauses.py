"""A reply to a question of safety, part by part: what answers it, and what else is said.

People do not stop behind the answer: "1, nobody. How do I lose that twig?" Read as a whole such a
reply is of unknown words; part by part one of them answers, and the others have an answer of their
own.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final, NamedTuple

from bot.dialogue.danger.aftermath import has_left, is_over, wonders
from bot.dialogue.danger.beside import FACT_ODDS
from bot.dialogue.danger.calm_parts import without_calm, without_idle
from bot.dialogue.danger.cold_hands import only_cold_hands
from bot.dialogue.danger.denied import sounds_of_danger
from bot.dialogue.danger.good_news import is_only_good
from bot.dialogue.danger.judged import judged
from bot.dialogue.danger.left_open import leaves_something, left_a_thing
from bot.dialogue.danger.whose import names_another
from bot.dialogue.danger.with_me import is_with_me, wishes_a_picture
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.options import OTHER, meant_of_safety
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import clauses_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
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
#: Words of the picture, in a part that sounds no more of danger than parts that tell facts.
_PICTURE: Final = whole_words("cold_hands.picture", "clauses.picture")
#: What a part has in it that answers by its sense: without such a word one part in twenty of what
#: people say of pictures, and of danger, is near to good news.
_ANSWERING: Final = {
    "in_danger": whole_words("clauses.safe", "clauses.out_there"),
    "out_there": whole_words("clauses.out_there"),
    "safe": whole_words("clauses.safe"),
}
#: So far before all else [nearness] the sense of such a part must be, in so many words at least
#: (own rules, on parts of strangers' lines).
_SURE: Final = 0.3
_LEAST_WORDS: Final = 2
#: So far it must be where a part only stands beside good news (own rule: of 15 such parts that
#: tell of trouble in plain words none is so far, of 9 that tell of none 6).
_LEANS: Final = 0.05
#: A single word of fewer letters is a bare yes or no (own rule).
_BARE: Final = 6
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
    """One part of a reply; `safe` is True where it says that nobody is in danger, or None."""

    text: str
    safe: bool | None


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
        part gives it and no other contradicts it, leaves or names somebody, or tells of danger.
        Where somebody was in danger, words alone are an answer only beside what asks, tells facts
        or is known: "all fine, ben lies there" is none.
    """
    option, behind = _numbered(text)
    parts = [_part(question, part, by_words, said) for part in clauses_of(behind)]
    numbered = None if option is None else _is_safe(question, option)
    if numbered is None and len(parts) < _SEVERAL:
        return NOTHING_HEARD
    if numbered is False:
        return _DOUBTFUL if any(part.safe for part in parts) else Heard(safe=False)
    return _good_news(question, parts, said, numbered=numbered is True)


def _good_news(
    question: str, parts: Sequence[_Part], said: Callable[[str], Said], *, numbered: bool
) -> Heard:
    """Whether the parts say that all are safe, and what they say besides."""
    if any(map(_contradicts, parts)):
        return _DOUBTFUL
    beside = [part.text for part in parts if part.safe is None and not asks(said(part.text))]
    named = [part for part in beside if names_another(part) and len(part.split()) > 1]
    named = [part for part in named if not _is_calm(part)]
    if not all(_leans_safe(question, part, said) for part in named):
        return NOTHING_HEARD if question == "safe" else _DOUBTFUL
    strict = question == "safe" and not numbered
    unknown = strict and not all(_is_harmless(part, said) for part in beside)
    stated = numbered or any(part.safe for part in parts)
    return NOTHING_HEARD if unknown or not stated else Heard(True, _rest_of(parts))


def _rest_of(parts: Sequence[_Part]) -> str:
    """The parts that say nothing of anybody's safety, nor where anybody is."""
    left = [part.text for part in parts if part.safe is None]
    return " ".join(part for part in left if not _tells_nothing(part)).strip()


def _tells_nothing(part: str) -> bool:
    """Whether a part only tells where people are, or since when."""
    said = folded(part)
    return (
        is_with_me(part)
        or has_left(part)
        or (is_only_good(said) and not any(map(str.isdigit, said)))
    )


def _contradicts(part: _Part) -> bool:
    """Whether a part tells of danger, makes an exception, or gives good news without being sure."""
    said = folded(part.text)
    excepts = "?" not in part.text and _EXCEPTION.search(said) is not None
    return part.safe is False or excepts or (part.safe is True and _HEDGE.search(said) is not None)


def _is_harmless(part: str, said: Callable[[str], Said]) -> bool:
    """Whether a part leans to good news, tells facts or is small words; "ben lies there" is not."""
    if _is_calm(part):
        return True
    if left_a_thing(part) and not names_another(part):
        return not sounds_of_danger(part)
    if leaves_something(part) or sounds_of_danger(part):
        return False
    if wishes_a_picture(part) or only_cold_hands(part) or _is_of_the_picture(part):
        return True
    tells = bool(read(said(part).english).known()) or is_only_good(folded(part))
    return tells or _leans_safe("safe", part, said)


def _is_of_the_picture(part: str) -> bool:
    """Whether a part speaks of frames or settings, and of nobody."""
    said = _PICTURE.search(folded(part)) is not None
    return said and not names_another(part) and judged(part).odds <= FACT_ODDS


def _is_calm(part: str) -> bool:
    """Whether a part in known words tells of no trouble: beside me, left at once, not rising."""
    if is_with_me(part) or is_over(part) or wonders(part):
        return True
    return not without_calm(part) or not without_idle(part)


def _leans_safe(question: str, part: str, said: Callable[[str], Said]) -> bool:
    """Whether the sense of a part is nearer to good news than to all else, however little."""
    return _ahead(question, part, said) >= _LEANS


def _ahead(question: str, part: str, said: Callable[[str], Said]) -> float:
    """How far before all else [nearness] the sense of a part is good news; 0 where it is not."""
    found = meant_of_safety(question, (*QUESTIONS[question].options, OTHER), said(part))
    return found.ahead if found is not None and found.option == SAFE_OPTION[question] else 0.0


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
    """What one part says, by its words, else by its sense where it has a word of good news."""
    safe = by_words(part)
    if safe is False and is_with_me(part):
        safe = None  # "he's out, shaking all over us": the dog is
    if safe and len(part) < _BARE and " " not in part:
        return _Part("", None)  # "no, I'm holding on": a bare word says nothing of the rest
    if safe is not None or len(part.split()) < _LEAST_WORDS or "?" in part:
        return _Part(part, safe)
    telling = _ANSWERING[question].search(folded(part)) is not None
    if not telling or sounds_of_danger(part):
        return _Part(part, None)
    return _Part(part, True if _ahead(question, part, said) >= _SURE else None)
