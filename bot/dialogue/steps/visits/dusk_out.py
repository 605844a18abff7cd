"""The way out when light is short: go now, how long the light still lasts, how with few lamps."""

from __future__ import annotations

import re
from datetime import datetime
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading.visit import read_visit
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.walk.base_said import AFTER_SUNSET
from bot.dialogue.steps.walk.day_plan import clock_of
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import paced, sun_of, turn_back_of

#: Lights after which dusk is all that is left.
_SHORT: Final = AFTER_SUNSET | {"sunset"}
_LAMPS: Final = re.compile(
    r"\b(?:only |just |but )*(?:one|a single|a|1|no) (?:\w+ )?"
    r"(?:head ?-?(?:lamps?|lights?|torch(?:es)?)|torch(?:es)?|flash ?lights?|lamps?|light)\b"
)
_GETTING_DARK: Final = re.compile(
    r"\b(?:get(?:ting|s)? (?:dark|gloomy|dim)|nearly dark|almost dark|before dark"
    r"|till dark|dusk|in the dark"
    r"|light (?:is )?(?:going|fading|left))\b"
)


def answer(turn: Turn, text: str) -> bool:
    """Answer who tells how far it is to the car when light is short; whether they did.

    Args:
        turn: the answer under construction.
        text: the message in English.
    """
    if turn.trip_told.walk_min is None or planning.is_planning(turn):
        return False
    few = _LAMPS.search(text.casefold()) is not None
    if not _is_short(turn, text) and not (few and turn.walk.given is not None):
        return False
    _say_go(turn)
    _say_lamps(turn, few=few)
    turn.close_question()
    return True


def say_beside(turn: Turn, text: str) -> None:
    """The way in the dark beside the hour to leave by, where the light goes.

    Args:
        turn: the answer under construction, which tells the hour.
        text: the message in English.
    """
    if not planning.is_planning(turn) and _is_short(turn, text):
        _say_lamps(turn, few=_LAMPS.search(text.casefold()) is not None)


def _is_short(turn: Turn, text: str) -> bool:
    """Whether little light is left, by the light that was told, the words, or the hour."""
    dark = _GETTING_DARK.search(text.casefold()) is not None
    return dark or turn.facts.light in _SHORT or _is_late(turn)


def _say_lamps(turn: Turn, *, few: bool) -> None:
    """How to go with lamps; nobody stays together with somebody who is alone."""
    alone = "_alone" if turn.trip.people == 1 else ""
    turn.say(Role.SAFETY, f"dusk.one_lamp{alone}" if few else f"dusk.lamps{alone}")


def is_way_out(text: str) -> bool:
    """Whether a message tells how far the car is, and that lamps are few, and nothing worse.

    Args:
        text: the message in English.
    """
    said = text.casefold()
    short = _LAMPS.search(said) or _GETTING_DARK.search(said)
    told = read_visit(text).walk_min is not None and short is not None
    return told and not _WORSE.search(said)


#: What is more than few lamps.
_WORSE: Final = re.compile(
    r"\b(?:no|dead|died|dying|broken|empty|lost|hurt|cold|wet|fell|fallen|slipped|injured|limp\w*"
    r"|can't|cannot|scared|afraid|missing|alone|help|path|trail|find|know|rain\w*|storm|thunder)\b"
)


def _is_late(turn: Turn) -> bool:
    """Whether the turn-back time of today has gone, where the place tells the clock."""
    moment = turn_back_of(turn)
    return turn.position is not None and moment is not None and moment <= turn.now


def _say_go(turn: Turn) -> None:
    way = paced(turn.trip_told.walk_min or 0.0, turn.facts, turn.trip)
    out = measures.minutes(way.out_min)
    values = {"out": out, "factor": measures.plain(way.factor), "why": TEXTS[f"pace.{way.why}"]}
    turn.urgent = True
    turn.say(Role.SAFETY, "dusk.go", told=measures.minutes(way.bare_min), **values)
    dusk = _civil_dusk(turn)
    if dusk is None:
        turn.say(Role.SAFETY, "dusk.half_an_hour")
    elif dusk > turn.now:
        left_min = (dusk - turn.now).total_seconds() / 60
        enough = "dusk.left" if left_min >= way.out_min else "dusk.left_too_short"
        time = clock_of(dusk, sure=True)
        turn.say(Role.SAFETY, enough, left=measures.minutes(left_min), time=time)
    else:
        turn.say(Role.SAFETY, "dusk.gone", time=clock_of(dusk, sure=True))


def _civil_dusk(turn: Turn) -> datetime | None:
    """Until when the dusk of today shows a path, where the place tells it."""
    sun = sun_of(turn.position, turn.now)
    return None if sun is None else sun.civil_dusk
