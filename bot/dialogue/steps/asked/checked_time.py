"""A time behind a filter that somebody has reckoned themselves: yes or no, with the right one."""

from __future__ import annotations

import math
import re
from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.steps.asked.checked_sum import RIGHT
from bot.dialogue.steps.asked.stops_between import value_of
from bot.dialogue.texts import measures
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn
from core.series import exact_shutter_s

_TIME: Final = (
    r"(?P<{0}>1/[1-9]\d*|(?:[1-9]\d*(?:\.\d+)?|0\.\d*[1-9])(?= ?(?:s|secs?|seconds?)\b))"
    r"(?: ?(?:s|secs?|seconds?)\b)?"
)
#: "3 stops on 1/15 is 1/2 s".
_SUM: Final = re.compile(
    rf"\b(?P<stops>\d{{1,2}}(?:\.\d)?)[ -]?stops?(?: nd| filter)? {in_any('checked_time.on')}"
    rf" (?:an? |the )?{_TIME.format('bare')},? {in_any('checked_time.makes')}"
    rf" (?:an? |about )?{_TIME.format('claimed')}"
)
_TAG: Final = re.compile(rf"{in_any('checked_time.asks')}|\?")


def answer(turn: Turn, said: Said) -> str | None:
    """Check such a sum: each stop doubles the time (definition of a stop).

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        The message without the sum, in English; None where it has none to be checked.
    """
    text = plain_times(said.english.casefold())
    found = _SUM.search(text)
    if found is None or not _TAG.search(text):
        return None
    bare_s = exact_shutter_s(value_of(found["bare"]))
    claimed_s = exact_shutter_s(value_of(found["claimed"]))
    stops = float(found["stops"])
    right = abs(math.log2(claimed_s / bare_s) - stops) <= RIGHT
    turn.say(
        Role.SETTINGS,
        "checked_time.yes" if right else "checked_time.no",
        stops=measures.stops(stops),
        bare=solving.time_text(bare_s, turn.camera),
        time=solving.watch_text(bare_s * 2**stops, turn.camera),
    )
    turn.reason("why.practice")
    return text[: found.start()] + text[found.end() :]
