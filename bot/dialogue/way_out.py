"""The way out and the day around it: zone and sun of the place, walking time, turn-back time."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import datetime, timedelta, timezone, tzinfo
from typing import Final
from zoneinfo import ZoneInfo

from bot.dialogue.context import Context, Position
from bot.dialogue.facts import Facts
from bot.dialogue.lateness import Day
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from core.sun.rise_set import SunTimes, sun_times
from core.sun.zone import zone_name
from core.trip import FACTOR_GROUP, FACTOR_WET_LOADED, turn_back, walking_time_min

#: In the far north the sun may set after midnight: before this hour, told after noon, the
#: coming night is meant (own rule).
_NIGHT_ENDS_H: Final = 4
_NOON_H: Final = 12
#: So many are taken for a group of mixed fitness until somebody says otherwise (own rule).
_MANY: Final = 5
#: Before a gate shuts or a bus leaves so much is spare: for packing up, and the last steps [min]
#: (own rule).
DUE_MARGIN_MIN: Final = 15.0
#: Less than this over a whole minute is only the sum's own rounding [min].
_ROUNDING: Final = 1e-6


def zone_of(position: Position | None) -> ZoneInfo | None:
    """The zone of the shared position."""
    if position is None:
        return None
    return ZoneInfo(zone_name(position.latitude, position.longitude))


def zone_around(context: Context) -> tzinfo | None:
    """The zone that the person's clock keeps: by the place, else as their camera states it."""
    walk = context.conversation.walk
    zone = zone_of(context.person.position)
    if zone is not None or walk is None or walk.offset_min is None:
        return zone
    return timezone(timedelta(minutes=walk.offset_min))


def zone_told(turn: Turn) -> tzinfo | None:
    """The zone in which a clock time may be told here.

    A place that was shared in the direct room stays there, and so does its zone.
    """
    person = turn.context.person.model_copy(update={"position": turn.position})
    return zone_around(turn.context.model_copy(update={"person": person})) or turn.stated_zone


@dataclass(frozen=True)
class Way:
    """One way of a walk: its bare time [min], the factor of its pace, and why that factor."""

    bare_min: float
    factor: float
    #: `wet`, what makes somebody slow (see `Trip.slowest`), `group` or `many`.
    why: str

    @property
    def out_min(self) -> float:
        """The time with its factor [min], rounded up: what is told is what is reckoned with."""
        return float(math.ceil(self.bare_min * self.factor - _ROUNDING))


def way_of(facts: Facts, trip: Trip) -> Way | None:
    """One way of the walk; None while neither its length nor its time is known.

    Where both were told the longer one counts (own rule).
    """
    told_min = trip.walk_min or 0.0
    if facts.walk_km is None and not told_min:
        return None
    rule_min = walking_time_min(way_km(facts, trip), facts.climb_m or 0.0)
    return paced(max(rule_min, told_min), facts, trip)


def paced(bare_min: float, facts: Facts, trip: Trip) -> Way:
    """A way of so long [min] at the pace of who walks."""
    return Way(bare_min, *_pace(facts, trip))


def way_km(facts: Facts, trip: Trip) -> float:
    """The length of one way [km], 0 where it was told in time alone."""
    return (facts.walk_km or 0.0) / (2 if trip.round_trip else 1)


def _pace(facts: Facts, trip: Trip) -> tuple[float, str]:
    """The factor, and why: the slowest sets the pace."""
    if facts.group_mixed:
        return FACTOR_GROUP, trip.slowest or "group"
    if facts.group_mixed is None and (trip.people or 0) >= _MANY:
        return FACTOR_GROUP, "many"
    return FACTOR_WET_LOADED, "wet"


def sun_of(position: Position | None, moment: datetime) -> SunTimes | None:
    """The sun of the local day of a moment, by the place; None while none was shared."""
    zone = zone_of(position)
    if position is None or zone is None:
        return None
    day = moment.astimezone(zone).date()
    return sun_times(position.latitude, position.longitude, day, zone)


def sunset_of(facts: Facts, position: Position | None, now: datetime) -> datetime | None:
    """Sunset of the local day: as told, else by the place.

    A told one without a place has no zone: it is taken in the zone of `now` and printed
    without a name.
    """
    zone = zone_of(position)
    local = now.astimezone(zone) if zone else now
    if facts.sunset is not None:
        hour, minute = (int(part) for part in facts.sunset.split(":"))
        coming_night = hour < _NIGHT_ENDS_H and local.hour >= _NOON_H
        day = local + timedelta(days=1) if coming_night else local
        return day.replace(hour=hour, minute=minute, second=0, microsecond=0)
    sun = sun_of(position, local)
    return None if sun is None else sun.set


def when_of(trip: Trip, position: Position | None, now: datetime) -> datetime:
    """The moment around which a visit lies: now, or the same hour of the day that is planned."""
    local = now.astimezone(zone_of(position)) if position is not None else now
    if trip.day is None or trip.day <= local.date():
        return local
    return local.replace(year=trip.day.year, month=trip.day.month, day=trip.day.day)


def leave_at(facts: Facts, trip: Trip, position: Position | None, now: datetime) -> datetime | None:
    """The turn-back time by the sun, and by when somebody must be back, whichever is earlier.

    None while the way out is unknown, or both of these are.
    """
    way = way_of(facts, trip)
    if way is None:
        return None
    moment = when_of(trip, position, now)
    by_sun = _turn_back_before(sunset_of(facts, position, moment), way)
    due = due_back(trip, moment)
    spare_min = way.out_min + DUE_MARGIN_MIN
    by_hour = None if due is None else due - timedelta(minutes=spare_min)
    return min((one for one in (by_sun, by_hour) if one is not None), default=None)


def due_back(trip: Trip, moment: datetime) -> datetime | None:
    """When somebody must be back on the day of a moment, as told."""
    if trip.back_by is None:
        return None
    hour, minute = (int(part) for part in trip.back_by.split(":"))
    return moment.replace(hour=hour, minute=minute, second=0, microsecond=0)


def turn_back_of(turn: Turn, due: datetime | None = None) -> datetime | None:
    """The turn-back time by all that is known now, of the day of the answer.

    Args:
        turn: the answer under construction.
        due: another moment of that day.
    """
    return leave_at(turn.facts, turn.trip, turn.position, due or turn.now)


def _turn_back_before(sunset: datetime | None, way: Way | None) -> datetime | None:
    if way is None or sunset is None:
        return None
    return turn_back(sunset, way.out_min)


def day_around(context: Context, now: datetime) -> Day:
    """Sun and turn-back time of the local day, as far as a shared position makes them sure."""
    facts, position = context.facts, context.person.position
    sun = sun_of(position, now)
    if sun is None:
        return Day()
    sunset = sunset_of(facts, position, now) if facts.sunset is not None else sun.set
    to_come = when_of(context.trip, position, now) > now
    way = None if to_come else way_of(facts, context.trip)
    return Day(sun.rise, sunset, _turn_back_before(sunset, way))
