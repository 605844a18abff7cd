"""The time behind an ND from the time without it, and what an ND's number or density takes."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.folding import folded
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.steps.asked.stops_between import value_of
from bot.dialogue.steps.walk import base
from bot.dialogue.texts import measures
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.camera import density_stops, factor_stops, nd_factor
from core.series import exact_shutter_s, is_same_mark
from core.water import Look

_HOW_LONG: Final = whole_words("filter_time.how_long")
_HOW_MUCH: Final = whole_words("filter_time.how_much")
_BARE: Final = whole_words("filter_time.bare")
_EXPOSED: Final = whole_words("filter_time.exposed")
_WHICH: Final = whole_words("filter_time.which")
#: What a question of the time behind a filter may hold; the f-number only as it is set.
_OF_THE_FILTER: Final = frozenset({"nd_on_stops", "nd_stops", "f_number", "keep", "units"})
_LEVEL: Final = re.compile(r"\b(?:ev|lw) ?\d")
#: With another light, opening or speed it is no longer the time that is set.
_OTHERWISE: Final = re.compile(r"\b(?:ev|lw|f ?/? ?\d|iso ?\d)")
_TIME: Final = re.compile(
    r"(?<![\d/.])(?P<time>1/[1-9]\d*|\d+(?:\.\d+)?(?= ?(?:s|secs?|seconds?)\b))"
)
#: "6-stop ND", "nd 8", "nd 0.9", "density 1.8".
_FILTER: Final = re.compile(
    r"\b(?P<stops>\d{1,2}(?:\.\d)?)[ -]?stops?(?:per)?\b"
    r"|\b(?:nd|density(?: of)?|dichte|densidad(?: de)?)[ -]?(?:filter )?"
    r"(?P<density>[0-4]\.\d{1,2})\b"
    r"|\bnd[ -]?(?:filter )?(?P<factor>\d{1,4})\b"
)
#: Below this a whole number on a filter is no factor: none is sold as ND1 (common practice).
_LEAST_FACTOR: Final = 2
_MOST_STOPS: Final = 20.0
#: Longer times take a watch: cameras' own end there (common practice).
_BULB_S: Final = 30.0
_IN_MINUTES_S: Final = 120.0
#: From so many times the shortest misty time on a longer one changes little (own rule: two stops).
_WELL_PAST: Final = 4.0


def answer(turn: Turn, said: Said) -> bool:
    """Answer such a question from its own numbers; whether it was one.

    Time and factor: each stop doubles the time (definition of a stop).

    Args:
        turn: the answer under construction.
        said: the message.
    """
    text, typed = plain_times(said.english.casefold()), folded(said.typed)
    stops = _stops_in(text)
    times = [value_of(found["time"]) for found in _TIME.finditer(text)]
    if stops is None:
        return False
    bare = _BARE.search(typed) or _BARE.search(text)
    given = turn.walk.given
    if given is not None and not times and _is_of_the_set(turn, given, text, typed):
        _say_time(turn, given.shutter_s, stops)
    elif len(times) == 1 and _HOW_LONG.search(typed) and bare:
        _say_time(turn, times[0], stops)
    elif not times and _HOW_MUCH.search(typed):
        turn.say(
            Role.SETTINGS,
            "asked.nd_takes",
            stops=measures.stops(stops),
            factor=measures.significant(nd_factor(stops)),
        )
    else:
        return False
    turn.reason("why.practice")
    return True


def _is_of_the_set(turn: Turn, given: GivenSettings, text: str, typed: str) -> bool:
    """Whether the time that is set is asked for, as it becomes behind the filter."""
    if given.nd_on_stops:
        return False
    if _EXPOSED.search(typed) and not _OTHERWISE.search(text):
        return True
    told = read(text, units=turn.units)
    other_f = told.f_number is not None and not is_same_mark(told.f_number, given.f_number)
    names_more = other_f or told.known().keys() - _OF_THE_FILTER
    return _WHICH.search(typed) is not None and not names_more and not _LEVEL.search(text)


def _say_time(turn: Turn, bare_s: float, stops: float) -> None:
    """The time without and with the filter, as they are set and counted."""
    with_s = exact_shutter_s(bare_s) * nd_factor(stops)
    bulb = with_s > _BULB_S
    turn.say(
        Role.SETTINGS,
        "asked.nd_time_bulb" if bulb else "asked.nd_time",
        bare=solving.time_text(bare_s, turn.camera),
        time=_watched(with_s) if bulb else solving.time_text(with_s, turn.camera),
        stops=measures.stops(stops),
    )
    _say_sense(turn, with_s)


def _say_sense(turn: Turn, with_s: float) -> None:
    """What such a time makes of the water here, where that is known: past misty it adds little."""
    if turn.walk.given is None:
        return
    flow = base.standing(turn).flow
    misty_s = flow.times(Look.MISTY)[0]
    turn.say(
        Role.CHECK,
        "asked.nd_past_misty" if with_s > misty_s * _WELL_PAST else "asked.nd_look",
        time=solving.watch_text(misty_s, turn.camera),
        look=solving.look_is(turn.facts, with_s),
    )


def _watched(time_s: float) -> str:
    """A time by the watch: in seconds, from two minutes on in minutes."""
    return measures.wait(time_s) if time_s < _IN_MINUTES_S else measures.minutes(time_s / 60)


def _stops_in(text: str) -> float | None:
    """What the one filter of a message takes; None without one, or with several."""
    found = [_stops_of(match) for match in _FILTER.finditer(text)]
    known = {round(stops, 1): stops for stops in found if stops is not None}
    return next(iter(known.values())) if len(known) == 1 else None


def _stops_of(match: re.Match[str]) -> float | None:
    if match["density"]:
        stops = density_stops(float(match["density"])) if float(match["density"]) else 0.0
    elif match["factor"]:
        factor = float(match["factor"])
        stops = factor_stops(factor) if factor >= _LEAST_FACTOR else 0.0
    else:
        stops = float(match["stops"])
    return stops if 0.0 < stops <= _MOST_STOPS else None
