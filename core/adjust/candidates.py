"""Of several times that were tried, the one to take, and why."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Final

from core.domain import positive
from core.errors import OutOfDomainError, within

#: Rock can be lifted by so much at base ISO on recent large sensors (common practice) [stops].
LIFT_STOPS: Final = 3.0


class Ground(Enum):
    """What spoke for the chosen frame, or against another."""

    CLIPPED = "clipped"  # white water without texture cannot be brought back
    OUTSIDE_LOOK = "outside_look"
    NO_TEXTURE = "no_texture"
    TOO_DARK = "too_dark"  # more than can be lifted cleanly


@dataclass(frozen=True)
class Candidate:
    """One frame that was tried; None: not known.

    Args:
        shutter_s: its time [s], above 0.
        level_stops: its level on the meter, or against what was wanted [stops], -20 to 20; a third
            under is -1/3.
        clipped: the body of the water is clipped.
        textured: the water shows texture, as seen on the picture.

    Raises:
        OutOfDomainError: a number is NaN or out of range.
    """

    shutter_s: float
    level_stops: float | None = None
    clipped: bool | None = None
    textured: bool | None = None

    def __post_init__(self) -> None:
        positive("shutter_s", self.shutter_s, "s")
        if self.level_stops is not None:
            within("level_stops", self.level_stops, "stops", -20, 20)


@dataclass(frozen=True)
class BetterTime:
    """The frame to take.

    Args:
        index: its place among the candidates.
        against: for each candidate, what speaks against it; empty for a clean one.
    """

    index: int
    against: tuple[tuple[Ground, ...], ...]


def better_time(
    candidates: Sequence[Candidate], look_times: tuple[float, float] | None = None
) -> BetterTime:
    """Choose among frames of one scene that differ in time.

    A clipped body of water is lost, a dark frame can be lifted: so clipping counts first, then
    texture and look, then too dark to lift, then nearness to the wanted level, then the
    shorter time.

    Args:
        candidates: at least one frame.
        look_times: shortest and longest time of the wished look [s]; None: no look is wished.

    Returns:
        Which to take, and what speaks against each.

    Raises:
        OutOfDomainError: no candidates.

    Source: own rule, from "expose for the white water" (common practice).
    """
    if not candidates:
        raise OutOfDomainError("candidates", 0, "", 1, math.inf)
    against = tuple(_against(candidate, look_times) for candidate in candidates)
    rank = tuple(_ORDER)

    def faults(index: int) -> tuple[tuple[bool, ...], float, float]:
        level = candidates[index].level_stops
        off = math.inf if level is None else abs(level)
        held = tuple(ground in against[index] for ground in rank)
        return held, off, candidates[index].shutter_s

    index = min(range(len(candidates)), key=faults)
    return BetterTime(index, against)


_ORDER: Final = (Ground.CLIPPED, Ground.NO_TEXTURE, Ground.OUTSIDE_LOOK, Ground.TOO_DARK)


def _against(candidate: Candidate, look_times: tuple[float, float] | None) -> tuple[Ground, ...]:
    shortest_s, longest_s = look_times or (0.0, math.inf)
    level = candidate.level_stops
    holds = {
        Ground.CLIPPED: candidate.clipped is True,
        Ground.NO_TEXTURE: candidate.textured is False,
        Ground.OUTSIDE_LOOK: not shortest_s <= candidate.shutter_s <= longest_s,
        Ground.TOO_DARK: level is not None and level < -LIFT_STOPS,
    }
    return tuple(ground for ground in _ORDER if holds[ground])
