"""An option of the bot's own choice in words, with more behind them: "a new walk please, …"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import clauses_of, sentences_of
from bot.dialogue.questions import Asked
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.not_known import is_no_answer
from bot.dialogue.reading.phrases import plain
from bot.dialogue.replies import OF_WATER, chosen, meant, says_yes_or_no
from bot.dialogue.reply_beside import Beside
from bot.dialogue.tongues import in_any, single_words, whole_words

#: Choices of what is done next; what is seen in a frame is told in many other words.
_OF_DOING: Final = frozenset({"restart", "resume", "too_near", "next", "sky_gap"})
#: What is seen: an option in its own words at the head of a message, where nothing behind it says
#: otherwise.
_OF_SEEING: Final = frozenset({"top", "sides", "anchor", "blink", "blink_again", "leaves"})
_NEW_WALK: Final = whole_words("choices.new_walk")
#: Questions whose options have more words than their own.
_OF_A_WALK: Final = {
    "go_on": whole_words("choices.go_on"),
    "new": whole_words("choices.new_walk", "choices.new"),
}
_WORDS: Final = {"restart": _OF_A_WALK, "resume": _OF_A_WALK}
_AROUND: Final = single_words("choices.around")
#: Small words that options begin with, too.
_OWN: Final = frozenset({"take", "go", "all", "an", "a", "the", "do", "choose"})
_BUT: Final = re.compile(rf"\W*{in_any('choices.but')}\b")
_WORD: Final = re.compile(r"[\w']+")
#: "New walk shooting with the phone": thumbs part nothing by signs.
_AT_HEAD: Final = re.compile(
    rf"\W*(?:(?:{'|'.join(sorted(_AROUND))})\s+)*{in_any('choices.new_walk')}(?=\s)", re.IGNORECASE
)


def worded(asked: Asked, said: Said) -> Beside | None:
    """The option that a clause of a message names and nothing else, with all other clauses.

    Args:
        asked: the open question.
        said: the message.

    Returns:
        None where no clause names an option, or two name different ones.
    """
    if asked.name in _OF_SEEING:
        return _seen(asked, said)
    if asked.name not in _OF_DOING:
        return None
    clauses = _clauses(said)
    if asked.name in _WORDS:
        clauses = [part for clause in clauses for part in _parted(clause)]
    named = [_option(asked, clause) for clause in clauses]
    values = {value for value in named if value is not None}
    if len(values) != 1:
        return None
    rest = [one for one, value in zip(clauses, named, strict=True) if value is None]
    reply = clauses[next(place for place, value in enumerate(named) if value is not None)]
    return Beside(values.pop(), reply, _rest(said, rest))


def _seen(asked: Asked, said: Said) -> Beside | None:
    """The option that the first clause is, with the others: "clean, how do I focus?"."""
    if asked.name in OF_WATER and any(map(is_no_answer, sentences_of(said.typed)[:1])):
        return None  # "Nein, ganz im Gegenteil"
    first, *others = _clauses(said) or [""]
    option = _bare(plain(first, " .,;:!…"))
    if not others or number_answer(option) is not None or says_yes_or_no(option):
        return None
    value, rest = chosen(asked, option), _rest(said, others)
    if value is None or not rest.typed or _says_otherwise(asked, rest, value):
        return None
    return Beside(value, glossed(first, said.language), rest)


def _says_otherwise(asked: Asked, rest: Said, value: str) -> bool:
    """Whether words behind an option take it back, or name another one or what stands there."""
    named = {edges_told(rest.english).get(asked.name), meant(asked, rest.english)}
    return bool(named - {None, value}) or _BUT.match(plain(rest.typed)) is not None


def behind_new_walk(said: Said) -> Said | None:
    """What a message tells beside its wish for a new walk; None where it wishes for none.

    Args:
        said: the message: "du redest vom alten bild. ich fang von vorn an: neue tour".
    """
    clauses = _clauses(said)
    rest = [one for one in clauses if not _is_only(_NEW_WALK, plain(one))]
    return None if len(rest) == len(clauses) else _rest(said, rest)


def _clauses(said: Said) -> list[str]:
    return [one for one in clauses_of(said.typed) if _WORD.search(one)]


def _parted(clause: str) -> tuple[str, ...]:
    """A clause that begins with a new walk, and what is told behind it."""
    head = _AT_HEAD.match(clause)
    return (clause,) if head is None else (clause[: head.end()], clause[head.end() :])


def _option(asked: Asked, clause: str) -> str | None:
    """The option that a clause names, small words around it left out."""
    said = plain(clause, " .,;:!?…")
    if number_answer(said) is not None:
        return None
    words = _WORDS.get(asked.name, {})
    named = [value for value, pattern in words.items() if _is_only(pattern, said)]
    if len(named) == 1:
        return named[0]
    return chosen(asked, _bare(said)) if len(said.split()) > 1 else chosen(asked, said)


def _is_only(pattern: re.Pattern[str], said: str) -> bool:
    """Whether a clause holds these words, and small words beside."""
    left = pattern.sub(" ", said)
    return left != said and set(_WORD.findall(left)) <= _AROUND


def _bare(said: str) -> str:
    """A clause without small words at its ends: "yes clean please" is "clean"."""
    words = said.split()
    while len(words) > 1 and words[-1] in _AROUND:
        words.pop()
    while len(words) > 1 and words[0] in _AROUND - _OWN:
        words.pop(0)
    return " ".join(words)


def _rest(said: Said, clauses: list[str]) -> Said:
    """The other clauses that hold more than small words, glossed anew."""
    told = [one.strip() for one in clauses if not set(_WORD.findall(plain(one))) <= _AROUND]
    typed = " ".join(told)
    return said._replace(typed=typed, english=glossed(typed, said.language))
