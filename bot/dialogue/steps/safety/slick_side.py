"""Slick ground to a side of who writes: nobody steps there for the sake of a clean edge."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.danger import Danger, Level
from bot.dialogue.danger.whose import names_somebody
from bot.dialogue.meaning.slick_side import tells_of_slick, without_slick
from bot.dialogue.turn import Turn

#: It was told on this walk; and what is said in place of a step to a side.
_TOLD: Final = "slick"
_SAID: Final = "sides.slick"
_STEPS: Final = frozenset(
    {"sides.twig", "sides.twig_feet", "asked.crop_or_move", "asked.in_the_way", "asked.gardening"}
)


def beside(text: str, danger: Danger) -> str | None:
    """A message without what it tells of such ground, to be read for danger once more.

    Args:
        text: as typed.
        danger: what was heard in all of it.

    Returns:
        None where the message as a whole counts: the danger is told outright, somebody else is
        named, or it tells of no such ground.
    """
    if danger.certain or danger.level is Level.EMERGENCY or names_somebody(text):
        return None
    rest = without_slick(text)
    return None if rest == text else rest


def hear(turn: Turn, text: str) -> str | None:
    """Keep that a side is slick, and say so where a message tells it in a sentence of its own.

    Args:
        turn: the answer under construction.
        text: as typed.

    Returns:
        What else the message says; None where that is all.
    """
    if not tells_of_slick(text):
        return text
    if turn.context.conversation.walk is not None:
        turn.change_walk(checks=turn.walk.checks | {_TOLD: "told"})
    rest = without_slick(text)
    if rest == text:
        return text
    turn.say(Role.SAFETY, _SAID)
    turn.reason("why.practice")
    return rest or None


def mind(turn: Turn) -> None:
    """Where a side is slick, no remedy sends anybody a step there.

    Args:
        turn: the answer under construction, which has answered the message.
    """
    walk = turn.context.conversation.walk
    if walk is None or _TOLD not in walk.checks:
        return
    said = any(part.key == _SAID for part in turn.parts)
    left = [part for part in turn.parts if not (said and part.key in _STEPS)]
    turn.parts = [
        replace(part, key=_SAID, values={}) if part.key in _STEPS else part for part in left
    ]
