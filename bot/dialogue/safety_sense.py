"""Whether a reply to a question of safety says that all are safe: by its words and its sense."""

from __future__ import annotations

from typing import Final, NamedTuple

from bot.dialogue.danger.denied import sounds_of_danger
from bot.dialogue.meaning.options import OTHER, meant_of_safety
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer
from bot.dialogue.replies import says_yes_or_no


class _Needed(NamedTuple):
    """How far before all else a sense must be that stands alone; None: it never does.

    Args:
        safe: that nobody is in danger.
        sounding: the same of words that sound of danger themselves.
        unsafe: that somebody is.
        words: and in how many words at least.
    """

    safe: float
    sounding: float
    unsafe: float | None
    words: int


#: The option by which nobody is in danger.
SAFE_OPTION: Final = {"in_danger": "no", "out_there": "no", "safe": "yes"}
#: A first sentence of fewer words is no answer by itself where more follows: "no. yes. both
#: feet" (own rule).
_LEAST_WORDS: Final = 3
#: More words than so many may hold an exception: "all fine except Ben"; fewer are better known by
#: the words themselves, "nooo she's fine" (own rule).
_FEW: Final = 6
#: Own rules, on the replies of writers who were left out in turn: three in four that say that
#: nobody is in danger are heard and 3 in 100 others taken for one of them; of the words alone
#: three in ten, and 6 in 100. Where somebody may stand in a closed place, or an emergency is
#: held, a few words are no proof; what else is said there has answers of its own.
_NEEDED: Final = {
    "in_danger": _Needed(0.4, 0.5, 0.4, 1),
    "out_there": _Needed(0.45, 0.5, None, _FEW + 1),
    "safe": _Needed(0.45, 0.55, None, _FEW + 1),
}
#: From here on the sense of a long message takes back what words seem to say (own rule, as above).
_TAKEN_BACK: Final = 0.1


def first_sentence(text: str) -> str | None:
    """The first of several sentences, where the others sound of no danger: it may answer alone.

    Args:
        text: a reply as typed.
    """
    first, *rest = sentences_of(text) or [text]
    answers = bool(rest) and len(first.split()) >= _LEAST_WORDS
    return first if answers and not sounds_of_danger(" ".join(rest)) else None


def says_safe(question: str, said: Said, by_words: bool | None) -> bool | None:
    """Whether a reply says that nobody is in danger, or that somebody is.

    Args:
        question: `in_danger`, `out_there` or `safe`.
        said: the reply.
        by_words: what known words in it say: True where nobody is in danger.

    Returns:
        The same; None where it says neither, or words and sense disagree.
    """
    if number_answer(said.typed) is not None or says_yes_or_no(said.english):
        return by_words
    found = meant_of_safety(question, (*QUESTIONS[question].options, OTHER), said)
    if found is None or found.option == OTHER:
        return by_words
    needed, safe = _NEEDED[question], found.option == SAFE_OPTION[question]
    words = len(said.typed.split())
    if by_words is not None:
        taken_back = by_words and words > _FEW and not safe and found.ahead >= _TAKEN_BACK
        return None if taken_back else by_words
    if not safe:
        return False if needed.unsafe is not None and found.ahead >= needed.unsafe else None
    least = needed.sounding if sounds_of_danger(said.typed) else needed.safe
    return True if words >= needed.words and found.ahead >= least else None
