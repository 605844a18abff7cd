"""White without texture in a told frame: lost, at the limit, or sparkle; raw, a darker frame."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning.white_asked import White
from bot.dialogue.steps.home import told_frames, told_levels, told_names
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.series import SAME_STOPS

#: A connected patch in all channels wider than this is lost, one narrower than that is fine, as a
#: share of the frame's width (own rule, from the trade: over 1 % reject, under 0.5 % fine).
_LOST: Final = 0.01
_FINE: Final = 0.005
#: So much is pulled down in raw before a frame is given up [stops]: raw often holds half a stop to
#: a stop more than the preview (common practice).
_PULL_STOPS: Final = 2 / 3


def say(turn: Turn, place: int | None, white: White) -> None:
    """Say whether such a frame is a keeper, what raw may bring back, and which one to take instead.

    Args:
        turn: the answer under construction.
        place: of the frame among those told; None where none is meant.
        white: as it was told.
    """
    verdict = _verdict(white)
    named = TEXTS["white.it"] if place is None else told_names.name(turn, place)
    share = "" if white.share is None else measures.percent(_rounded(white.share))
    turn.say(Role.SETTINGS, f"white.{verdict}", named=named, share=share)
    if place is not None and verdict != "ask":
        _keep_as_seen(turn, place, lost=verdict not in {"fine", "one"})
    if verdict in {"lost", "lost_if", "limit"}:
        _say_raw(turn, place)


def _rounded(share: float) -> float:
    """A share that somebody judged by eye: whole percent, tenths below two of them."""
    return round(share, 2 if share >= 2 * _LOST else 3)


def _keep_as_seen(turn: Turn, place: int, *, lost: bool) -> None:
    """What is lost in a frame is lost in those that are as bright, or brighter, too."""
    level = told_levels.level_of(turn, place)
    places = [place]
    if lost:
        everyone = range(len(told_frames.frames_of(turn)))
        places = [
            other for other in everyone if told_levels.level_of(turn, other) > level - SAME_STOPS
        ]
    told_frames.see(turn, places, "clipped" if lost else "holds")
    told_frames.change(turn, about=(place,))


def _verdict(white: White) -> str:
    """By the trade: sparkle, one channel alone, a patch at the limit, one beyond it; or unknown."""
    if white.dots or (white.share is not None and white.share <= _FINE):
        return "fine"
    if white.channels == "one":
        return "one"
    if white.share is None:
        return "ask"
    if white.share <= _LOST:
        return "limit"
    return "lost" if white.channels == "all" else "lost_if"


def _say_raw(turn: Turn, place: int | None) -> None:
    """What raw may hold, and the darker frame where one was told."""
    pull = measures.stops(_PULL_STOPS)
    darker = None if place is None else _darker(turn, place)
    if place is None or darker is None:
        turn.say(Role.CHECK, "white.raw", pull=pull)
        return
    levels = (told_levels.level_of(turn, place), told_levels.level_of(turn, darker))
    turn.say(
        Role.CHECK,
        "white.raw_other",
        pull=pull,
        other=told_names.name(turn, darker),
        stops=measures.stops(levels[0] - levels[1]),
    )


def _darker(turn: Turn, place: int) -> int | None:
    """The told frame that is darker by the least; None where none is."""
    frames = told_frames.frames_of(turn)
    level = told_levels.level_of(turn, place)
    darker = {
        other: told_levels.level_of(turn, other)
        for other in range(len(frames))
        if told_levels.level_of(turn, other) <= level - SAME_STOPS
    }
    return max(darker, key=lambda other: darker[other], default=None)
