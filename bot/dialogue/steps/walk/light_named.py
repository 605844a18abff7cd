"""Which light the settings of an answer are for: its clock time, or that it still must be so."""

from __future__ import annotations

from datetime import UTC, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.lateness import KnownBy, Seen, Standing, light_holds
from bot.dialogue.steps.anywhere.heard import is_queued, standing_of
from bot.dialogue.texts import late as texts
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import day_around, turn_back_of, zone_told

#: After so long a silence light and time left are said anew (own rule: a look around, a snack).
_PAUSE: Final = timedelta(minutes=15)
#: A turn-back time further off than this is on nobody's mind (own rule).
_WORTH_TELLING: Final = timedelta(hours=3)
#: Texts that give settings made for a light.
_FOR_A_LIGHT: Final = (
    "highlights.",
    "adjust.",
    "frame.next",
    "keep.leaf_frame",
    "told.better",
    "time_enough.yes",
    "time_enough.no",
)
#: Texts that repeat settings or compare with them: their light is named once it may have gone.
_OF_A_LIGHT: Final = (
    "keep.ladder",
    "told.settings",
    "where.given",
    "what_if.",
    "symptom.glare_time",
    "symptom.black_rock_numbers",
)
#: Texts of the base settings, which are made for a light only where one is known.
_BASE: Final = "base."
#: Texts among those that hold no settings.
_NO_SETTINGS: Final = frozenset(
    {"highlights.sky", "highlights.new_frame", "what_if.nothing", "what_if.fixed"}
)


def _rests_on_light(turn: Turn, *, live: bool) -> bool:
    """Whether the answer holds settings that rest on a light."""
    keys = {part.key for part in turn.parts} - _NO_SETTINGS
    known = turn.walk.light_is_measured or turn.facts.light is not None
    begun = (_BASE,) if known else ()
    resting = (*_FOR_A_LIGHT, *begun) if live else (*_FOR_A_LIGHT, *_OF_A_LIGHT, *begun)
    return any(key.startswith(resting) for key in keys)


def close(turn: Turn) -> None:
    """Say which light the settings are for, and leave the question to the last of several."""
    if turn.context.conversation.walk is not None:
        if turn.light is not None:
            turn.change_walk(light=turn.light)
        _say_light(turn)
        _say_time_left(turn)
    if is_queued(turn) and not turn.urgent:
        turn.leave_question_unsaid()
        if not turn.parts and not turn.actions:
            turn.say(Role.SETTINGS, "late.noted")


def _say_light(turn: Turn) -> None:
    light = turn.walk.light
    if light is None or turn.urgent:
        return
    live = standing_of(turn, light) is Standing.LIVE
    if not _rests_on_light(turn, live=live):
        return
    if live:
        _say_live(turn, light)
        return
    turn.change_walk(light_said=None, light_said_at=None)
    if any(part.key == "where.given" for part in turn.parts):
        turn.say(Role.CHECK, "light.at", when=light_of(turn, light))
    elif light.by is KnownBy.SILENCE:
        silence = (light.latest - light.earliest).total_seconds() / 60
        turn.say(Role.SETTINGS, "light.if_silent", age=measures.minutes(silence))
    else:
        turn.say(Role.SETTINGS, "light.if", when=named(turn, light))


def _after_pause(turn: Turn) -> bool:
    """Whether the person was silent for a while before this message."""
    before = turn.before.conversation.heard_at
    return before is not None and turn.origin.sent_at - before >= _PAUSE


def _say_time_left(turn: Turn) -> None:
    """After a pause: how long it is to the turn-back time, where the place tells the clock."""
    if turn.urgent or not turn.parts or turn.position is None or not _after_pause(turn):
        return
    moment = turn_back_of(turn)
    if moment is not None and timedelta(0) < moment - turn.now <= _WORTH_TELLING:
        left = measures.minutes((moment - turn.now).total_seconds() / 60)
        turn.say(Role.ASSUMPTION, "light.time_left", left=left, time=measures.clock(moment))


def _say_live(turn: Turn, light: Seen) -> None:
    """The light of now is named once, and again when it is another one; the rest is for `why`."""
    when, kind = light_of(turn, light), turn.facts.light or ""
    said_at, seen_at = turn.walk.light_said_at, light.likely or light.latest
    holds = light_holds(turn.now, day_around(turn.context, turn.now))
    same = said_at is not None and turn.walk.light_said == kind and seen_at - said_at <= holds
    same = same and not _after_pause(turn)
    if same:
        turn.reason("light.at", when=when)
        return
    turn.say(Role.ASSUMPTION, "light.at", when=when)
    turn.change_walk(light_said=kind, light_said_at=seen_at)


def named(turn: Turn, seen: Seen) -> str:
    """When something was, in words that may be said here."""
    return texts.named(seen, turn.now, zone_told(turn))


def light_of(turn: Turn, light: Seen) -> str:
    """The clock time of a light, in the zone of the place, else in UTC."""
    zone = zone_told(turn) or UTC
    return texts.clock(light.likely or light.latest, turn.now, zone)
