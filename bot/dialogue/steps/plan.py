"""`plan`: the day as far as facts allow: way out, turn-back, light, the note home, the kit."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.compose import Part, Role
from bot.dialogue.context import KIT_SLOTS
from bot.dialogue.lateness import LOW_LIGHT
from bot.dialogue.questions import in_units
from bot.dialogue.steps import repeat, trip_answers
from bot.dialogue.steps.arrive import clock_of
from bot.dialogue.texts import known, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import leave_at, sunset_of, walk_out_min, zone_of
from core.sun.rise_set import sun_times

#: So long after they should be back somebody is called (common practice: 1 to 2 h).
_CALL_AFTER: Final = timedelta(hours=2)


def tell(turn: Turn) -> None:
    """Say what follows from what is known, and ask for what is missing most."""
    position, facts = turn.position, turn.facts
    sunset, out_min = sunset_of(facts, position, turn.now), walk_out_min(facts)
    moment = leave_at(facts, position, turn.now)
    sure = position is not None
    if moment is not None and sunset is not None and out_min is not None:
        _say_day(turn, moment, sunset, out_min, sure=sure)
    elif out_min is not None:
        turn.say(Role.SETTINGS, "plan.way", out=measures.minutes(out_min))
        turn.say(Role.CHECK, "arrive.no_sunset" if sure else "arrive.sunset_missing")
    elif sunset is not None:
        turn.say(Role.SETTINGS, "plan.sunset", time=clock_of(sunset, sure=sure))
    else:
        turn.say(Role.SETTINGS, "asked.plan")
    if out_min is None:
        turn.ask(in_units("walk_out", turn.units))
    else:
        repeat.put_again_if_open(turn)
    _say_light(turn, moment)
    _say_rest(turn)


def _say_day(turn: Turn, moment: datetime, sunset: datetime, out_min: float, *, sure: bool) -> None:
    """The turn-back time, and what the one at home is to know of it."""
    back = moment + timedelta(minutes=out_min)
    turn.say(
        Role.SETTINGS,
        "plan.turn_back",
        time=clock_of(moment, sure=sure),
        sunset=clock_of(sunset, sure=sure),
        out=measures.minutes(out_min),
    )
    times = {"back": clock_of(back, sure=sure), "call": clock_of(back + _CALL_AFTER, sure=sure)}
    turn.say(Role.CHECK, "plan.home", **times)


def _say_light(turn: Turn, moment: datetime | None) -> None:
    """When the sun is low at the place, today: without its place nothing is said of it."""
    position = turn.position
    zone = zone_of(position)
    if position is None or zone is None:
        return
    day = turn.now.astimezone(zone).date()
    sun = sun_times(position.latitude, position.longitude, day, zone)
    if sun.rise is None or sun.set is None:
        return
    morning, evening = sun.rise + LOW_LIGHT, sun.set - LOW_LIGHT
    too_late = moment is not None and moment <= evening
    turn.say_or_keep(
        Role.CHECK,
        "plan.light_morning" if too_late else "plan.light",
        rise=f"{sun.rise:%H:%M}",
        morning=measures.clock(morning) if too_late else f"{morning:%H:%M}",
        evening=f"{evening:%H:%M}",
        set=measures.clock(sun.set),
    )


def _say_rest(turn: Turn) -> None:
    """Kit, packing, what to ask the land manager: what finds no room stands under `why`."""
    kit = known(turn.context.person.kit, turn.units, only=KIT_SLOTS) if turn.origin.direct else ""
    if kit:
        turn.reason("plan.kit", list=kit)
    turn.reason("asked.pack")
    if not any(part.key == "plan.home" for part in turn.parts):
        turn.reason("asked.tell_home")
    turn.reason("asked.path_open")
    for part in trip_answers.card_parts(turn):
        turn.reason(part.key, **part.values)
    more = Part(Role.ASSUMPTION, "plan.more")
    if turn.has_room_for(more):
        turn.parts.append(more)
