"""How many stops lie between two settings, and how long a fraction of a second is."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.series import exact_f_number, exact_iso, exact_shutter_s

_TIME: Final = r"(?P<{0}>1/[1-9]\d*|\d+(?:\.\d+)?)(?: ?(?:s|secs?|seconds?))?"
_BETWEEN: Final = r"(?: and| to| ->|-| vs\.?| versus| or)+ "
_STOPS: Final = re.compile(
    r"\b(?:how (?:many|much) (?:more |less )?stops?|how far|what(?: is|'s) the difference)\b"
    r"[^.;?!]*?"
    r"(?:between|from|is|are) (?P<kind>f ?/? ?|iso ?)?"
    + _TIME.format("one")
    + _BETWEEN
    + r"(?:f ?/? ?|iso ?)?"
    + _TIME.format("other")
    + r"\W*(?:apart)?\W*$"
)
_LONG: Final = re.compile(
    r"\bhow (?:many seconds?|long|much)(?: of a second)?(?: is| are| does)?(?: a)? "
    r"(?P<time>1/[1-9]\d*)(?: ?(?:s|secs?|seconds?))?(?: mean| take)?\b"
)


def answer(turn: Turn, text: str) -> bool:
    """Answer such a question from its own numbers; whether it was one.

    Args:
        turn: the answer under construction.
        text: the message in English.
    """
    said = plain_times(text.casefold())
    if found := _STOPS.search(said):
        one, other = (_level(found["kind"], value_of(found[name])) for name in ("one", "other"))
        if one is None or other is None:
            return False
        turn.say(Role.SETTINGS, "asked.stops_between", stops=measures.stops(abs(one - other)))
    elif found := _LONG.search(said):
        seconds = measures.significant(value_of(found["time"]))
        turn.say(Role.SETTINGS, "asked.seconds", time=found["time"], seconds=seconds)
    else:
        return False
    turn.reason("why.practice")
    return True


def value_of(told: str) -> float:
    """A number or a fraction as a number: "1/8" is 0.125."""
    above, _, below = told.partition("/")
    return float(above) / float(below or 1)


def _level(kind: str | None, value: float) -> float | None:
    """The exact setting behind a mark in stops; None where there is no such setting."""
    if value <= 0:
        return None
    if kind is None:
        return math.log2(exact_shutter_s(value))
    if kind.startswith("i"):
        return math.log2(exact_iso(value))
    return 2 * math.log2(exact_f_number(value))
