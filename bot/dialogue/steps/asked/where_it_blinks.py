"""Who does not know whether it blinks: where a camera shows it, and the question again."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import clauses_of, sentences_of
from bot.dialogue.meaning.topics import TALK, nearness, topic_of
from bot.dialogue.questions import Asked
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.not_known import says_all_well, says_not_known
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked import count_answers, filter_unknown
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_OF_THE_WARNING: Final = frozenset({"blink", "blink_again", "screen_says"})
#: What is told of the frame beside: it stays open while nobody has looked.
_OF_THE_FRAME: Final = frozenset({"symptoms"})
_A_TERM: Final = whole_words("not_known.a_term")
_BLINKS: Final = whole_words("told_sights.blinks")
_TOLD: Final = "warning_where"
#: Topics of the warning itself, and what is no topic.
_OF_BLINKING: Final = frozenset({"warning_where", "told"})
#: So near [nearness] another topic is what is asked (own rule: as beside facts, and half again).
_SURE: Final = 0.45


def answer(turn: Turn, said: Said, asked: Asked | None) -> bool:
    """Say where to look, where that is not known; who only says to be well told nothing of it.

    Args:
        turn: the answer under construction.
        said: the message.
        asked: the open question.

    Returns:
        Whether it was said; not where the message tells or asks anything else.
    """
    if asked is None or asked.name not in _OF_THE_WARNING or filter_unknown.asked(said):
        return False
    if says_all_well(said.typed):
        turn.say(Role.SETTINGS, "danger.retracted")
        repeat.put_again(turn)
        return True
    clauses = clauses_of(said.typed)
    known = [one for one in clauses if not says_not_known(one)]
    if len(known) == len(clauses) or _asks_else(said) or _asks_a_term(said) or _is_of_else(said):
        return False
    told = read(glossed(" ".join(known), said.language), expecting=frozenset(asked.expects))
    if told.known().keys() - _OF_THE_FRAME:
        return False
    count_answers.say_warning_where(turn, said.english)
    turn.change_walk(checks=turn.walk.checks | {_TOLD: "said"})
    repeat.put_again(turn)
    return True


def _is_of_else(said: Said) -> bool:
    """Whether the sense of the message is surely another question: how a polariser is seen."""
    topic = topic_of(said)
    if topic is None or topic in _OF_BLINKING or topic.startswith(TALK):
        return False
    return nearness(said)[topic] >= _SURE


def _asks_a_term(said: Said) -> bool:
    """Whether another word than those of the warning is not known."""
    text = folded(said.typed)
    return _A_TERM.search(text) is not None and _BLINKS.search(text) is None


def _asks_else(said: Said) -> bool:
    """Whether another sentence than that of not knowing asks something."""
    others = (one for one in sentences_of(said.typed) if not says_not_known(one))
    return any(asks(said._replace(english=one, typed=one)) for one in others)


def instead_of_skipping(turn: Turn, said: Said, asked: Asked | None) -> bool:
    """Whether "no idea", which else leaves a question out, was answered so for the first time."""
    return _TOLD not in turn.walk.checks and answer(turn, said, asked)
