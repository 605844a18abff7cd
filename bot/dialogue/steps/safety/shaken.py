"""Legs that shake once all are up and safe: a fright, no cold, where the water only rose."""

from __future__ import annotations

from bot.dialogue.compose import Role
from bot.dialogue.context import Emergency
from bot.dialogue.danger.aftermath import without_shaken
from bot.dialogue.danger.denied import sounds_of_danger
from bot.dialogue.steps.safety import emergency
from bot.dialogue.turn import Turn


def calmed(held: Emergency, text: str) -> str:
    """A message without its shaking legs; who was in the water, hurt or cold may shake for that.

    Args:
        held: the emergency that holds the conversation.
        text: the message, as typed.
    """
    return without_shaken(text) if held.told | {held.kind} <= emergency.STAY_AWAY else text


def is_all_the_danger(held: Emergency, text: str) -> bool:
    """Whether nothing else in a message sounds of danger, and it says something else.

    Args:
        held: the emergency that holds the conversation.
        text: the message, as typed.
    """
    rest = calmed(held, text)
    return rest not in {text, ""} and not sounds_of_danger(rest)


def say(turn: Turn, held: Emergency, text: str) -> None:
    """What shaking legs ask for, where a message tells of them.

    Args:
        turn: the answer under construction, which has said that all are safe.
        held: the emergency that is over.
        text: the message, as typed.
    """
    if calmed(held, text) != text:
        turn.say(Role.SAFETY, "danger.shaken")
