"""Answers that count: frames to average, minutes for each student, the last settings again."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.reading.spoken_numbers import SIMPLE, number_said
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn

#: How many frames or people a question names.
_NUMBER: Final = re.compile(
    rf"\b(?P<n>\d{{1,3}}|{'|'.join(SIMPLE)})\b(?! ?(?:s|sec\w*|min\w*|mm|m|ft|%|stops?)\b)"
)
_FEWEST: Final = 2
#: Enough for silk, and where more gains little (common practice).
_USUAL_FRAMES: Final = 8
_MOST_FRAMES: Final = 64
#: One round of looks at every screen [min] (common practice: 15 to 20).
_ROUND_MIN: Final = 18
_USUAL_STUDENTS: Final = 6
_MOST_STUDENTS: Final = 15


def say_frames(turn: Turn, text: str) -> None:
    """How many frames to average: n of them smooth the water like log2(n) stops of ND.

    Source: times add up; noise falls with the root of n (statistics of independent frames).
    """
    number = _named(text, _MOST_FRAMES) or _USUAL_FRAMES
    turn.say(
        Role.SETTINGS,
        "asked.frames",
        number=str(number),
        stops=measures.stops(math.log2(number)),
        double=str(2 * number),
    )
    turn.reason("why.practice")


def say_rounds(turn: Turn, text: str) -> None:
    """How often to look at each student's screen, and how long each has of a round."""
    people = turn.trip.people
    told = _named(text, _MOST_STUDENTS) or (people - 1 if people and people > _FEWEST else None)
    number = told or _USUAL_STUDENTS
    turn.say(
        Role.SETTINGS,
        "asked.rounds",
        number=str(number),
        minutes=str(max(1, round(_ROUND_MIN / number))),
    )


def say_last_settings(turn: Turn, text: str) -> None:
    """The settings of the frame that was told or kept last."""
    del text
    given = turn.walk.given
    if given is None:
        turn.say(Role.SETTINGS, "asked.last_none")
        return
    settings = solving.settings_on(given, turn.camera)
    turn.say(Role.SETTINGS, "where.given", settings=settings)


def say_warning_where(turn: Turn, text: str) -> None:
    """Where a camera shows what is clipped; a phone shows nothing but white."""
    del text
    on_phone = reckoning.is_phone(turn.facts)
    turn.say(Role.SETTINGS, "asked.warning_phone" if on_phone else "asked.warning_where")


def _named(text: str, most: int) -> int | None:
    """The first number of a question that may be meant."""
    for found in _NUMBER.finditer(text.casefold()):
        number = int(number_said(found["n"]))
        if _FEWEST <= number <= most:
            return number
    return None
