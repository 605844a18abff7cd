"""How far the water crossed in frames told at home, and the look by it."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.by_numbers import as_taken, flow_told, rests_on_usual
from bot.dialogue.facts import Facts
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps.frames import reviewing
from bot.dialogue.steps.home.told_frames import frames_of
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import exact_shutter_s
from core.water import Look, look_of


def facts_of(turn: Turn, place: int | None = None) -> Facts:
    """What is known of a frame: its own focal length on top of what holds for all."""
    if place is None:
        return turn.facts
    frame = frames_of(turn)[place]
    return as_taken(turn.facts, frame.focal_mm, frame.focal_full_frame_mm)


def flow_of(turn: Turn, place: int | None = None) -> Flowing:
    """The water as a frame sees it, by the usual case where nothing is told."""
    return reckoning.flow_of(facts_of(turn, place))


def is_by_numbers(turn: Turn, place: int) -> bool:
    """Whether a frame's share rests on what was told of it, not on a usual fall."""
    return flow_told(facts_of(turn, place)) is not None


def is_placed(turn: Turn) -> bool:
    """Whether the place was told: all that a share needs, the format apart."""
    facts, assumed = turn.facts, Assumed()
    reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    assumed.keys.pop("full_frame", None)
    return not rests_on_usual(assumed)


def share_of(turn: Turn, place: int) -> float:
    """Share of the frame that the water crossed."""
    return flow_of(turn, place).share(exact_shutter_s(frames_of(turn)[place].shutter_s))


def look_in(turn: Turn, place: int) -> Look:
    """The look by that share."""
    return look_of(share_of(turn, place))


def values_of(turn: Turn, place: int) -> dict[str, str]:
    """A frame's share and look in words."""
    return {
        "share": measures.crossed(share_of(turn, place)),
        "look": TEXTS[f"look.{look_in(turn, place).value}"],
    }


def ends_of_look(turn: Turn) -> dict[str, str]:
    """The wished look, and its shortest and longest time from there."""
    look = reckoning.wished_look(turn.facts)
    shortest, longest = reviewing.ends_of_look(turn, turn.facts)
    return {
        "wished": TEXTS[f"look.{look.value}"].capitalize(),
        "shortest": shortest,
        "longest": longest,
    }
