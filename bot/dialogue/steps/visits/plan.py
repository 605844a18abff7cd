"""`plan`: the day as far as facts allow: way out, turn-back, light, the note home, the kit."""

from __future__ import annotations

from datetime import datetime

from bot.dialogue.compose import Part, Role
from bot.dialogue.lateness import LOW_LIGHT
from bot.dialogue.questions import in_units
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.visits import rough_card
from bot.dialogue.steps.walk import arrive
from bot.dialogue.steps.walk.day_plan import clock_of, return_times
from bot.dialogue.texts import known, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import sun_of, sunset_of, turn_back_of, way_of, when_of


def tell(turn: Turn) -> None:
    """Say what follows from what is known, and ask for what is missing most."""
    if turn.context.conversation.walk is None:
        planning.begin(turn)
    if not arrive.way_out_told(turn):
        _say_sunset(turn)
    _ask(turn)
    way, moment = way_of(turn.facts, turn.trip), turn_back_of(turn)
    if way is not None and moment is not None:
        _say_home(turn, return_times(way, moment, sure=turn.position is not None))
    _say_light(turn, moment)
    _say_rest(turn)


def _say_sunset(turn: Turn) -> None:
    """The way is unknown: what is left of the day's plan."""
    position = turn.position
    sunset = sunset_of(turn.facts, position, when_of(turn.trip, position, turn.now))
    if sunset is not None:
        time = clock_of(sunset, sure=position is not None)
        turn.say(Role.SETTINGS, "plan.sunset", time=time)
    else:
        turn.say(Role.SETTINGS, "asked.plan")


def _say_home(turn: Turn, times: dict[str, str]) -> None:
    """The text for home and the hour at which they call, in place of the return alone."""
    turn.parts = [part for part in turn.parts if part.key != "arrive.back"]
    turn.say_or_keep(Role.CHECK, "plan.home", **times)


def _ask(turn: Turn) -> None:
    """What is missing most: the way; then, while it is planned, the rest of the plan."""
    if way_of(turn.facts, turn.trip) is None:
        if planning.is_planning(turn):
            turn.caution("arrive_short")
        turn.change_walk(trip=turn.trip.marked("way"))
        turn.ask(in_units("walk_out", turn.units))
    elif planning.is_planning(turn):
        planning.go_on(turn)
    else:
        repeat.put_again_if_open(turn)


def _say_light(turn: Turn, moment: datetime | None) -> None:
    """When the sun is low at the place, today: without its place nothing is said of it."""
    sun = sun_of(turn.position, when_of(turn.trip, turn.position, turn.now))
    if sun is None or sun.rise is None or sun.set is None:
        return
    morning, evening = sun.rise + LOW_LIGHT, sun.set - LOW_LIGHT
    too_late = moment is not None and moment <= evening
    turn.say_or_keep(
        Role.CHECK,
        "plan.light_morning" if too_late else "plan.light",
        rise=measures.hour_and_minute(sun.rise),
        morning=measures.clock(morning) if too_late else measures.hour_and_minute(morning),
        evening=measures.hour_and_minute(evening),
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
    for part in rough_card.parts(turn):
        turn.reason(part.key, **part.values)
    more = Part(Role.ASSUMPTION, "plan.more")
    if turn.has_room_for(more):
        turn.parts.append(more)
