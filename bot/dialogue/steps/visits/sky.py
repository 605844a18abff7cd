"""The sky of a visit to come: what is forecast by the hour, and the light that it means."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.reading.sky_hours import spells_in, tells_cold, tells_rain
from bot.dialogue.steps.walk.day_plan import start_of
from bot.dialogue.trip import Sky, Spell, Trip
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import turn_back_of, way_of, when_of

#: The light of a sky: sun that comes and goes is planned for as sun, the harder of the two; rain
#: falls from a closed sky (common practice).
_LIGHT_OF: Final[dict[Sky, str]] = {
    "sun": "full sun",
    "partly": "full sun",
    "cloud": "bright cloud",
    "overcast": "overcast",
    "rain": "overcast",
    "storm": "overcast",
}
#: Skies that are waited for, and those in which one waits (common practice).
_CLOUDS: Final = frozenset({"cloud", "overcast"})
_SUNNY: Final = frozenset({"sun", "partly"})
#: When somebody is at the water while no hours are known (own rule): the middle of the day.
_MIDDAY_H: Final = 13


def take(turn: Turn, typed: str) -> bool:
    """Keep a forecast by the hour, and rain or cold that is spoken of; whether hours were told.

    The one light that cards and filters are reckoned for is that of the hours at the fall.

    Args:
        turn: the answer under construction; a visit is planned.
        typed: the message as it came.
    """
    spells = spells_in(typed)
    weather = tuple(
        name for name, tells in (("rain", tells_rain), ("cold", tells_cold)) if tells(typed)
    )
    if spells or weather:
        turn.change_walk(trip=turn.trip.updated(Trip(spells=spells, weather=weather)))
    light = light_at_fall(turn)
    if light is not None:
        turn.change_walk(trip=turn.trip.model_copy(update={"forecast": light}))
    if spells:
        turn.trip_told = turn.trip_told.updated(Trip(forecast=light, spells=spells))
    return bool(spells)


def without_its_own(turn: Turn, facts: Facts) -> Facts:
    """The facts of a forecast by the hour: its light is none of now, its hours are not unread."""
    hours = {int(spell.since[:2]) for spell in turn.trip_told.spells if spell.since}
    named = {str(number) for hour in hours for number in (hour, hour % 12)}
    unread = tuple(piece for piece in facts.unread if piece not in named)
    return facts.model_copy(update={"light": None, "unread": unread})


def light_at_fall(turn: Turn) -> str | None:
    """The light in the middle of the hours at the fall; None without a forecast by the hour."""
    spells = turn.trip.spells
    if not spells:
        return None
    spell = at(spells, _middle(turn))
    return _LIGHT_OF[spell.sky]


def at(spells: tuple[Spell, ...], moment: datetime) -> Spell:
    """The spell of a moment; before the first one that one."""
    told = f"{moment:%H:%M}"
    begun = [spell for spell in spells if spell.since <= told]
    return (begun or spells[:1])[-1]


def _middle(turn: Turn) -> datetime:
    """The middle of the hours at the fall, of the middle of the day where they are not known."""
    moment, way = turn_back_of(turn), way_of(turn.facts, turn.trip)
    day = when_of(turn.trip, turn.position, turn.now)
    start = start_of(turn, moment or day)
    if moment is None or way is None or start is None:
        return day.replace(hour=_MIDDAY_H, minute=0)
    there = start + timedelta(minutes=way.out_min)
    return there + (moment - there) / 2


def clouds_from(spells: tuple[Spell, ...]) -> Spell | None:
    """The first clouds behind sun, or behind hours of which nothing is told; None without any."""
    sunny = True
    for spell in spells:
        if spell.sky in _CLOUDS and spell.since and sunny:
            return spell
        sunny = spell.sky in _SUNNY
    return None


def first_of(spells: tuple[Spell, ...], kind: Sky) -> Spell | None:
    """The first spell of one kind of sky."""
    return next((spell for spell in spells if spell.sky == kind), None)
