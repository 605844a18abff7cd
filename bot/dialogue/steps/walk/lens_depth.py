"""Depth of field in the choice of the lens: what one frame holds sharp, and what it takes."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.reckoning import FAR_M
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from core.camera import Lens
from core.one_frame import longest_focal_mm
from core.optics import circle_of_confusion_mm

#: A hair inside the limit, so that its own f-number still holds the depth (rounding of floats).
_INSIDE: Final = 0.999
#: So much of a focal length is given for an f-number of the best range (own rule: the fall is
#: drawn a fifth smaller at most, which is cropped at home; the f-number falls by two thirds).
_LITTLE_WIDER: Final = 0.8
#: Lenses within this of the wanted focal length are as good [share] (own rule).
CLOSE: Final = 0.03


def sharp_or_as_wanted(turn: Turn, lenses: list[Lens], focal_mm: float) -> float:
    """The focal length that holds the depth in one frame, said where it had to be another one.

    Args:
        turn: the answer under construction.
        lenses: that may be used.
        focal_mm: what frames the fall; it stays where no lens of the kit holds the depth.
    """
    sharp_mm = _sharp_in_one(turn.facts, lenses, focal_mm)
    if sharp_mm is None or sharp_mm >= focal_mm:
        return focal_mm
    if _is_stacked(turn.facts, focal_mm):
        _say_near(turn, "lens.wider_for_depth")
    return sharp_mm


def say_wider(turn: Turn, lenses: list[Lens], focal_mm: float) -> None:
    """What of the kit would hold the depth in one frame, where the focal length set does not."""
    sharp_mm = _sharp_in_one(turn.facts, lenses, focal_mm)
    if sharp_mm is not None and _is_stacked(turn.facts, focal_mm):
        crop = reckoning.sensor_of(turn.facts).crop_factor
        _say_near(turn, "lens.set_too_deep", focal=measures.focal(sharp_mm, crop))


def no_longer_holds(turn: Turn) -> bool:
    """Whether a near thing that was told now makes the focal length that Linn chose a bad one."""
    facts = turn.facts
    near_m, focal_mm = reckoning.nearest_of(facts), facts.focal_mm
    if near_m is None or focal_mm is None or turn.walk.checks.get("focal") != "chosen":
        return False
    if turn.walk.stays or turn.walk.light_is_measured:
        return False  # frames were taken with it
    whole = facts.fall_height_m is not None and facts.distance_m is not None
    if not whole or reckoning.is_stream(facts) or facts.section or facts.section_height_m:
        return False
    outside = focal_mm > reckoning.framing_of(facts, near_m).longest_mm * (1 + CLOSE)
    return outside or _is_stacked(facts, focal_mm)


def _sharp_in_one(facts: Facts, lenses: list[Lens], focal_mm: float) -> float | None:
    """The focal length near a wanted one at which one frame is sharp from near to far.

    Never past the f-number at which diffraction softens the format; a little wider still where
    that keeps the f-number inside the format's best range.

    Args:
        facts: what is known; the nearest thing among it.
        lenses: that may be used; any focal length while there are none.
        focal_mm: the longest one that is wanted.

    Returns:
        That focal length; None where no lens goes so wide, or nothing near must be sharp.
    """
    near_m, sensor = reckoning.nearest_of(facts), reckoning.sensor_of(facts)
    if near_m is None or sensor.fixed_f_number is not None:
        return None
    far_m = reckoning.farthest_of(facts) or FAR_M
    coc_mm = circle_of_confusion_mm(sensor.diagonal_mm)
    softens_mm, best_mm = (
        longest_focal_mm(near_m, far_m, f_number, coc_mm) * _INSIDE
        for f_number in (sensor.softening_f, sensor.best_f[1])
    )
    most_mm = min(focal_mm, softens_mm)
    wanted_mm = max(min(most_mm, best_mm), most_mm * _LITTLE_WIDER)
    fitting = [lens for lens in lenses if lens.shortest_mm <= most_mm]
    reached = [max(min(lens.longest_mm, wanted_mm), lens.shortest_mm) for lens in fitting]
    if not lenses:
        return wanted_mm
    return min(reached, key=lambda mm: abs(math.log(mm / wanted_mm)), default=None)


def _is_stacked(facts: Facts, focal_mm: float) -> bool:
    """Whether one frame can't hold the depth at a focal length."""
    return reckoning.depth_of(facts, focal_mm).stack is not None


def _say_near(turn: Turn, key: str, **values: str) -> None:
    near = measures.length(turn.facts.nearest_m or 0.0, turn.units)
    turn.say(Role.CHECK, key, near=near, **values)
