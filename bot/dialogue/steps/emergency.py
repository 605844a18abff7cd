"""Danger and emergencies: the instruction that protects first, no settings, the walk held."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.context import Emergency
from bot.dialogue.danger import Danger, Level
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps import repeat
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.framing import section_focal_mm

#: What a safe picture of the lip shows [m] (own rule: about the width of a small fall's crest).
_LIP_SHOWN_M: Final = 12.0


def answer(turn: Turn, danger: Danger) -> None:
    """Say what protects; hold the walk if it is an emergency, else offer a safe picture."""
    turn.urgent = True
    turn.say(Role.SAFETY, f"danger.{danger.kind.value}")
    if danger.level is Level.EMERGENCY:
        turn.change_conversation(emergency=Emergency(kind=danger.kind.value, since=turn.now))
        _last_position(turn)
        turn.ask("safe")
        return
    if not turn.origin.addressed:
        return
    _safe_picture(turn)
    turn.ask("out_there")


def _last_position(turn: Turn) -> None:
    position = turn.context.person.position
    if position is None:
        turn.say(Role.CHECK, "danger.position_unknown")
        return
    turn.say(
        Role.CHECK,
        "danger.position",
        place=f"{position.latitude:.4f}, {position.longitude:.4f}",
        time=measures.clock(position.shared_at),
    )


def _safe_picture(turn: Turn) -> None:
    """A like picture from a safe place: the focal length for the known distance, else advice."""
    facts = turn.facts
    if facts.distance_m is None:
        turn.say(Role.CHECK, "danger.from_afar")
        return
    sensor = reckoning.sensor_of(facts, Assumed())
    focal_mm = section_focal_mm(_LIP_SHOWN_M, facts.distance_m, sensor.long_mm, 0.0)
    turn.say(
        Role.CHECK,
        "danger.from_there",
        distance=measures.length(facts.distance_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
        shown=measures.length(_LIP_SHOWN_M, turn.units),
    )


def held(turn: Turn) -> None:
    """Any other message while an emergency is held: no settings, only the question."""
    turn.urgent = True
    turn.say(Role.SAFETY, "danger.held")
    _last_position(turn)
    turn.ask("safe")


def answer_safe(turn: Turn, value: str) -> None:
    """All safe, or not yet."""
    turn.urgent = True
    emergency = turn.context.conversation.emergency
    if value == "not_yet" and emergency is not None:
        turn.say(Role.SAFETY, f"danger.{emergency.kind}.again")
        _last_position(turn)
        turn.ask("safe")
        return
    turn.change_conversation(emergency=None)
    turn.say(Role.SAFETY, "danger.over")
    repeat.put_again(turn)


def answer_out_there(turn: Turn, value: str) -> None:
    """Is anybody out at the dangerous place?"""
    turn.urgent = True
    if value == "yes":
        turn.say(Role.SAFETY, "danger.call_back")
        turn.ask("out_there")
        return
    turn.say(Role.SAFETY, "danger.nobody_there")
    repeat.put_again(turn)
