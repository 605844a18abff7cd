"""Light that changed since the settings were given: they follow it, or its amount is asked for."""

from __future__ import annotations

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.light_changed import LightChange, is_behind_a_filter, light_change_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.turn import Turn
from core.series import exact_iso, iso_label


def laid_over(turn: Turn, said: Said, facts: Facts) -> Facts:
    """What was read, with so many stops of light as the meter would show them.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it; a light by its name says more.
    """
    change = _change(turn, said, facts)
    if turn.walk.given is not None and change is None and is_behind_a_filter(said.typed):
        return facts.model_copy(update={"change_stops": None})
    if change is None or change.stops is None:
        return facts
    unread = tuple(piece for piece in facts.unread if "stop" not in piece)
    without = facts.model_copy(update={"change_stops": None, "unread": unread})
    return without.updated(Facts(meter_stops=change.side * change.stops))


def say(turn: Turn, said: Said, facts: Facts) -> bool:
    """What each stop does to the time, where only a change was told; whether one was.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.
    """
    change = _change(turn, said, facts)
    if change is None or change.stops is not None or facts.meter_stops is not None:
        return False
    given, camera = turn.given, turn.camera
    turn.say(
        Role.SETTINGS,
        "light_changed.darker" if change.side < 0 else "light_changed.brighter",
        time=solving.time_text(given.shutter_s, camera),
        then=solving.time_text(given.shutter_s * 2.0**-change.side, camera),
        iso=iso_label(exact_iso(given.iso * 2), camera.dial),
    )
    turn.reason("why.practice")
    return True


def _change(turn: Turn, said: Said, facts: Facts) -> LightChange | None:
    if turn.walk.given is None or facts.light is not None or facts.ask_what_if:
        return None
    return light_change_in(said.typed, said.language)
