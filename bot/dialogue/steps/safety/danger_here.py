"""What danger a message tells of, by its words and by what is going on."""

from __future__ import annotations

from bot.dialogue.danger import Danger, DangerKind, Level, Safe, people_here, who_is_safe
from bot.dialogue.danger.calm_parts import denies_rising
from bot.dialogue.danger.cry import cry_of
from bot.dialogue.danger.rain_asked import trouble_in
from bot.dialogue.meaning.sentences import clauses_of
from bot.dialogue.meaning.water_colour import Brown, brown_asked
from bot.dialogue.own_words import is_own
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.standing import only_asks_to_stand
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.safety import (
    all_safe,
    closed_place,
    doubt_reply,
    emergency,
    frame_edges,
    rain_asked,
    slick_side,
)
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
    harmless = is_own(text) or cry_of(text) or rain_asked.is_asked(turn, text)
    danger = None if harmless else _told(said, text)
    if danger is None:
        return None
    if danger.kind is DangerKind.FLOOD and _is_peat(text):
        return None
    danger = _only_asked(text, danger)
    if emergency.is_held(turn):
        return danger if danger.certain and not all_safe.clears(turn, said, danger) else None
    if not (danger.certain and danger.level is Level.EMERGENCY) and composition.tells_of_a_step(
        turn, glossed(text, manner.written_in(turn, text))
    ):
        return None
    bare = frame_edges.beside(turn, text, danger)
    bare = slick_side.beside(text, danger) if bare is None else bare
    if bare is not None:
        return danger_in(turn, bare) if bare else None
    likely = danger if danger.certain else _uncertain(turn, text, danger)
    # Who came away from an edge may still be beside water that rises.
    stays = danger.kind.value in emergency.STAY_AWAY
    left = not stays and closed_place.left(turn, text, surely=danger.certain)
    return None if left else likely


def _told(said: str, text: str) -> Danger | None:
    """What is heard; who is cut off and asks of rain is at least asked whether they are safe."""
    danger = people_here.danger_in(said, text)
    vague = danger is None or danger.level is Level.HINT
    return (trouble_in(text) or danger) if vague else danger


def _is_peat(text: str) -> bool:
    """Whether brown water is asked about that is clear and does not rise: no flood."""
    return brown_asked(text) is Brown.CLEAR and denies_rising(text)


def _only_asked(text: str, danger: Danger) -> Danger:
    """Leave to play in the water for somebody in the water, where a message only asks for it."""
    if danger.kind is DangerKind.IN_WATER and only_asks_to_stand(text):
        return Danger(DangerKind.WADING, Level.STOP)
    return danger


def _uncertain(turn: Turn, text: str, danger: Danger) -> Danger | None:
    """What is left of a danger that is heard by likeness alone, by what else a message says."""
    if doubt_reply.denies(turn, text):
        return None
    if turn.context.conversation.away and _tells_of_all(text):
        return None
    if danger.kind is DangerKind.DARK and _tells_light(turn, text):
        return Danger(DangerKind.UNCLEAR, Level.HINT, certain=False)
    return danger


def _tells_of_all(text: str) -> bool:
    """Whether a part of a message says that all are safe: "we're at the car now"."""
    return any(who_is_safe(part) is Safe.ALL for part in clauses_of(text))


def _tells_light(turn: Turn, text: str) -> bool:
    """Whether a message tells the light of a picture: "overcast, and pretty dark down here"."""
    return read(manner.as_said(turn, text).english, units=turn.units).light is not None


def with_friends(turn: Turn, text: str) -> str:
    """A message with the people of the room, by name, as friends."""
    return people_here.with_friends(text, turn.origin.people, manner.written_in(turn, text))
