"""When to start: from the forecast, the way, and the time to turn back."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.visits import sky
from bot.dialogue.steps.walk import arrive, day_plan
from bot.dialogue.steps.walk.day_plan import ENOUGH, at_clock
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.trip import Spell
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import turn_back_of, way_of

#: So long at one fall is wished for (common practice: 2 to 3 h).
_WISHED: Final = timedelta(hours=3)
#: Clouds are waited for so long at the water, and no longer (own rule: looking takes a quarter of
#: an hour, frames of the first light some more).
_MOST_WAIT: Final = timedelta(hours=1)
#: When a storm is feared all day.
_DAY: Final = "00:00"
#: A start is named to so many minutes (own rule).
_STEP_MIN: Final = 5


@dataclass(frozen=True)
class _Day:
    """The hours that a start rests on."""

    out: timedelta
    turn_back: datetime
    clouds: Spell | None

    @property
    def clouds_at(self) -> datetime | None:
        """When the clouds come, where they are waited for in time."""
        if self.clouds is None:
            return None
        comes = at_clock(self.turn_back, self.clouds.since)
        return comes if comes < self.turn_back else None

    @property
    def best_there(self) -> datetime:
        """When to be there: as the clouds come, but with two hours left; else with three."""
        latest = self.turn_back - ENOUGH
        comes = self.clouds_at
        return self.turn_back - _WISHED if comes is None else min(comes, latest)

    @property
    def best(self) -> datetime:
        """When to start for it, to five minutes, rather earlier."""
        start = self.best_there - self.out
        return start - timedelta(minutes=start.minute % _STEP_MIN, seconds=start.second)


def say(turn: Turn, asked: str | None) -> None:
    """Whether a start is good, else which one is; what is missing for it is asked for.

    Args:
        turn: the answer under construction.
        asked: the start that the question is about, "HH:MM"; None where it asks for one.
    """
    way, moment = way_of(turn.facts, turn.trip), turn_back_of(turn)
    if way is None or moment is None:
        arrive.tell_or_offer(turn)
        planning.go_on(turn)
        return
    out, spells = timedelta(minutes=way.out_min), turn.trip.spells
    storm = sky.first_of(spells, "storm")
    safe = moment if storm is None else min(moment, at_clock(moment, storm.since or _DAY) - out)
    day = _Day(out, safe, sky.clouds_from(spells))
    if asked is None:
        _say_best(turn, day)
    else:
        _judge(turn, day, at_clock(moment, asked))
    _say_weather(turn, day)
    day_plan.say_moved(turn, moment, Role.CHECK, sure=turn.position is not None)
    if arrive.moves(turn):
        day_plan.say_way(turn, way)
    arrive.remind_and_explain(turn, way, moment)
    planning.go_on(turn)


def _say_best(turn: Turn, day: _Day) -> None:
    comes = day.clouds_at
    key = "start.best" if comes is None else "start.best_clouds"
    turn.say(Role.SETTINGS, key, **_values(day, day.best))


def _judge(turn: Turn, day: _Day, told: datetime) -> None:
    """A start that was told: yes, or what speaks against it."""
    there = told + day.out
    comes = day.clouds_at
    if there >= day.turn_back - ENOUGH + timedelta(minutes=_STEP_MIN):
        turn.say(Role.SETTINGS, "start.late", **_values(day, told))
    elif comes is None:
        turn.say(Role.SETTINGS, "start.good", **_values(day, told))
    elif comes - there > _MOST_WAIT and day.best > told:
        turn.say(Role.SETTINGS, "start.early", **_values(day, told))
    else:
        turn.say(Role.SETTINGS, "start.good_clouds", **_values(day, told))


def _values(day: _Day, start: datetime) -> dict[str, str]:
    there, best = start + day.out, day.best
    stay_min = (day.turn_back - there).total_seconds() / 60
    values = {
        "start": measures.hour_and_minute(start),
        "there": measures.hour_and_minute(there),
        "best": measures.hour_and_minute(best),
        "best_there": measures.hour_and_minute(best + day.out),
        "turn": measures.hour_and_minute(day.turn_back),
        "back": measures.hour_and_minute(day.turn_back + day.out),
        "stay": measures.minutes(max(stay_min, 0.0)),
    }
    if day.clouds is not None:
        values["sky"] = TEXTS[f"sky.{day.clouds.sky}"]
        values["since"] = measures.told_clock(day.clouds.since)
    return values


def _say_weather(turn: Turn, day: _Day) -> None:
    """Storms: back at the car before them; rain: a cover, and the time to turn all the more."""
    spells = turn.trip.spells
    storm, rain = sky.first_of(spells, "storm"), sky.first_of(spells, "rain")
    spell = storm or rain
    if spell is None:
        return
    key = f"start.{spell.sky}" if spell.since else f"start.{spell.sky}_all_day"
    since = measures.told_clock(spell.since) if spell.since else ""
    role = Role.SAFETY if storm is not None else Role.CHECK
    turn.say(role, key, since=since, turn=measures.hour_and_minute(day.turn_back))
