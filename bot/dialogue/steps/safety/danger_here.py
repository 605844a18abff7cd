"""What danger a message tells of, by its words and by what is going on."""

from __future__ import annotations

from bot.dialogue.danger import Danger, Level, people_here
from bot.dialogue.danger.cry import cry_of
from bot.dialogue.own_words import is_own
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.safety import all_safe, closed_place, doubt_reply, emergency, frame_edges
from bot.dialogue.steps.walk import composition
from bot.dialogue.turn import Turn


def danger_in(turn: Turn, text: str) -> Danger | None:
    """What danger a message tells of.

    Linn's own words sent back tell of none, and a bare call for help tells not of which. While an
    emergency is held, what says that it is over is no new one, nor is what people do about it;
    while a place is closed, what says that nobody is there any more. "Moved left, now it's gone" is
    of a twig while the frame's edges are looked at, "the lip just kisses it" of the frame.
    """
    said = with_friends(turn, text)
    danger = None if is_own(text) or cry_of(text) else people_here.danger_in(said, text)
    if danger is None:
        return None
    if emergency.is_held(turn):
        return danger if danger.certain and not all_safe.clears(turn, said, danger) else None
    if not (danger.certain and danger.level is Level.EMERGENCY) and composition.tells_of_a_step(
        turn, glossed(text, manner.written_in(turn, text))
    ):
        return None
    bare = frame_edges.beside(turn, text, danger)
    if bare is not None:
        return danger_in(turn, bare) if bare else None
    if not danger.certain and doubt_reply.denies(turn, text):
        return None
    return None if closed_place.left(turn, text, surely=danger.certain) else danger


def with_friends(turn: Turn, text: str) -> str:
    """A message with the people of the room, by name, as friends."""
    return people_here.with_friends(text, turn.origin.people, manner.written_in(turn, text))
