"""How far off a storm was, by the seconds between flash and thunder: shelter all the same."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.danger import DangerKind
from bot.dialogue.danger.flash_to_bang import flash_to_bang_s
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.trip import thunder_distance_km


def say(turn: Turn, text: str) -> None:
    """Say how far off the flash was, where a message tells the seconds.

    Args:
        turn: the answer under construction; what protects is said already.
        text: the message of a storm, as typed.
    """
    seconds = flash_to_bang_s(text, storm_told=True)
    if seconds is None:
        return
    distance = _distance(turn, seconds)
    turn.say(Role.SAFETY, "danger.thunder.distance", distance=distance)
    _reason(turn, seconds, distance)


def say_held(turn: Turn, text: str) -> None:
    """Say it while a storm is held: then the seconds and either word are enough."""
    held = turn.context.conversation.emergency
    if held is not None and held.kind == DangerKind.THUNDER.value:
        say(turn, text)


def answer(turn: Turn, text: str) -> bool:
    """Answer such seconds where nobody is in a storm now; whether a message told them."""
    seconds = flash_to_bang_s(text)
    if seconds is None:
        return False
    distance = _distance(turn, seconds)
    told = measures.plain(seconds)
    turn.say(Role.SAFETY, "storm.supposed", seconds=told, distance=distance)
    turn.say(Role.CHECK, "storm.any")
    _reason(turn, seconds, distance)
    return True


def _distance(turn: Turn, seconds: float) -> str:
    return measures.way(thunder_distance_km(seconds), turn.units)


def _reason(turn: Turn, seconds: float, distance: str) -> None:
    told = measures.plain(seconds)
    turn.reason("why.thunder.distance", seconds=told, distance=distance)
