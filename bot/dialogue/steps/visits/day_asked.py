"""What is asked of a day's hours: at home when to start, at the water when to leave."""

from __future__ import annotations

import re
from typing import Final, Literal, TypeAlias

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading.phrases import plain
from bot.dialogue.reading.walking import start_in
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.visits import leaving, start_advice
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn

#: A start to come, or the way back from the water.
Hour: TypeAlias = Literal["start", "leave"]

_START: Final = whole_words("day_asked.start")
_START_GOOD: Final = whole_words("day_asked.start_good")
#: "And 13:00?", "what about half past nine?".
_WHAT_OF: Final = re.compile(
    rf"(?:{in_any('day_asked.what_of')},? )+(?:(?:at|um|a las|las) )?(?=\d|half|quarter)"
    r"(?:\d{1,2}(?:[:.h]\d\d)?(?: ?[ap]\.?m\.?| uhr)?|(?:half|quarter) (?:past|to) \w+)\W*$"
)
_LEAVE: Final = whole_words("day_asked.leave")
#: Signs that somebody leaves at once, whatever the hour (common practice).
_AT_ONCE: Final = whole_words("day_asked.at_once")
#: What is wrong with a frame is answered first, and its settings are of a frame.
_OF_A_FRAME: Final = frozenset(
    {"symptoms", "blink", "histogram_at_right", "meter_stops", "change_stops"}
    | {"f_number", "shutter_s", "iso"}
)


def asked(turn: Turn, typed: str, said: str) -> Hour | None:
    """Which hour of the day a message asks for; None where it asks for none.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
        said: the message in English.
    """
    sentences = list(map(plain, sentences_of(typed)))
    leaves = any(_LEAVE.search(one) and not _AT_ONCE.search(one) for one in sentences)
    if not planning.is_planning(turn):
        return "leave" if leaves else None
    if any(_START.search(one) or _WHAT_OF.match(one) for one in sentences):
        return "start"
    if leaves and turn.trip.back_by is not None:
        return "leave"
    good = any(_START_GOOD.search(one) for one in sentences)
    return "start" if good and _start_of(turn, said) else None


def _start_of(turn: Turn, said: str) -> str | None:
    """The start that a question is about: of its own words, else as told before."""
    text = plain(said)
    return start_in(text) or start_in(text, asked=True) or turn.trip.start_at


def stands_first(facts: Facts) -> bool:
    """Whether nothing is told beside it that has to be answered before any hour."""
    return not facts.known().keys() & _OF_A_FRAME


def answer(turn: Turn, hour: Hour, typed: str, said: str) -> None:
    """Answer it from all that is known by now.

    Args:
        turn: the answer under construction; what the message tells is learnt.
        hour: that is asked for.
        typed: the message as it came.
        said: the message in English.
    """
    if hour == "start":
        start_advice.say(turn, _start_of(turn, said))
    else:
        leaving.say(turn, typed)
