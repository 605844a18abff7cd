"""What the person likes, or has set: such a time stays until they want another."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.context import GivenSettings
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asides import praises
from bot.dialogue.reckoning import Assumed
from bot.dialogue.turn import Turn
from core.water import look_of

#: What the person likes is kept by the time that made it.
_LIKED: Final = "liked"


def note(turn: Turn, text: str, told: Facts) -> None:
    """Keep that the person likes the time that this message tells of, or that was given."""
    if not praises(text):
        return
    given = turn.walk.given
    time_s = reckoning.exact_settings(turn.facts.updated(told))[1]
    if time_s is None and given is not None:
        time_s = given.shutter_s
    if time_s is not None:
        turn.change_walk(checks=turn.walk.checks | {_LIKED: _mark(time_s)})


def is_liked(turn: Turn, given: GivenSettings) -> bool:
    """Whether the person called a frame of this time good."""
    return turn.walk.checks.get(_LIKED) == _mark(given.shutter_s)


def _mark(time_s: float) -> str:
    return f"{time_s:.5g}"


def holds(turn: Turn, given: GivenSettings) -> bool:
    """Whether a frame has what the person wants: they like it, or set it and it has their look."""
    if is_liked(turn, given):
        return True
    facts = turn.facts
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), Assumed())
    return given.own and look_of(flow.share(given.shutter_s)) is reckoning.wished_look(facts)
