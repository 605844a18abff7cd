"""The way out and the day around it: zone and sun of the place, walking time, turn-back time."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone, tzinfo
from typing import Final
from zoneinfo import ZoneInfo

from bot.dialogue.context import Context, Position
from bot.dialogue.facts import Facts
from bot.dialogue.lateness import Day
from bot.dialogue.turn import Turn
from core.sun.rise_set import sun_times
from core.sun.zone import zone_name
from core.trip import FACTOR_GROUP, FACTOR_WET_LOADED, turn_back, walking_time_min

#: In the far north the sun may set after midnight: before this hour, told after noon, the
#: coming night is meant (own rule).
_NIGHT_ENDS_H: Final = 4
_NOON_H: Final = 12


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
    context, origin = turn.context, turn.origin
    position = context.person.position
    if position is not None and not origin.direct and position.room_id != origin.room_id:
        person = context.person.model_copy(update={"position": None})
        context = context.model_copy(update={"person": person})
    return zone_around(context) or turn.stated_zone


def walk_out_min(facts: Facts) -> float | None:
    """Time of the way out with its factor [min], None while its length is unknown."""
    if facts.walk_km is None:
        return None
    factor = FACTOR_GROUP if facts.group_mixed else FACTOR_WET_LOADED
    return walking_time_min(facts.walk_km, facts.climb_m or 0.0, factor)


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
    if position is None or zone is None:
        return None
    return sun_times(position.latitude, position.longitude, local.date(), zone).set


def leave_at(facts: Facts, position: Position | None, now: datetime) -> datetime | None:
    """The turn-back time, None while sunset or the way out are unknown."""
    if facts.walk_km is None:
        return None
    return _turn_back_before(sunset_of(facts, position, now), facts)


def _turn_back_before(sunset: datetime | None, facts: Facts) -> datetime | None:
    out_min = walk_out_min(facts)
    if out_min is None or sunset is None:
        return None
    return turn_back(sunset, out_min)


def day_around(context: Context, now: datetime) -> Day:
    """Sun and turn-back time of the local day, as far as a shared position makes them sure."""
    facts, position = context.facts, context.person.position
    zone = zone_of(position)
    if position is None or zone is None:
        return Day()
    sun = sun_times(position.latitude, position.longitude, now.astimezone(zone).date(), zone)
    sunset = sunset_of(facts, position, now) if facts.sunset is not None else sun.set
    return Day(sun.rise, sunset, _turn_back_before(sunset, facts))
