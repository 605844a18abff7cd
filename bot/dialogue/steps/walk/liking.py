"""What the person likes, or has set: such a time stays until they want another."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asides import praises
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.water import look_of


def note(turn: Turn, text: str, told: Facts) -> None:
    """Keep that the person likes the time that this message tells of, or that was given."""
    if not praises(text):
        return
    given = turn.walk.given
    time_s = reckoning.exact_settings(turn.facts.updated(told))[1]
    if time_s is None and given is not None:
        time_s = given.shutter_s
    if time_s is not None:
        turn.change_walk(stays=turn.walk.stays | {_mark(time_s): "liked"})


def note_set(turn: Turn, time_s: float) -> None:
    """Keep that the person set this time, or asked for it by what they said of the look.

    What they like already stays liked.
    """
    turn.change_walk(stays={_mark(time_s): "set", **turn.walk.stays})


def forget_set(turn: Turn) -> None:
    """Linn chooses the time anew: what the person liked stays, what they only set does not."""
    liked = {mark: why for mark, why in turn.walk.stays.items() if why == "liked"}
    turn.change_walk(stays=liked)


def is_liked(turn: Turn, given: GivenSettings) -> bool:
    """Whether the person called a frame of this time good."""
    return turn.walk.stays.get(_mark(given.shutter_s)) == "liked"


def _mark(time_s: float) -> str:
    return f"{time_s:.5g}"


def holds(turn: Turn, given: GivenSettings) -> bool:
    """Whether a frame has what the person wants: they like it, or set it and it has their look."""
    if is_liked(turn, given):
        return True
    facts = turn.facts
    flow = reckoning.flow_of(facts)
    own = _mark(given.shutter_s) in turn.walk.stays
    return own and look_of(flow.share(given.shutter_s)) is reckoning.wished_look(facts)
