"""The settings that a light gives, where no lever holds the wished time in it."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from bot.dialogue.solving import Solved
from core.adjust import plan
from core.series import nearest, time_marks

#: The time is held at one mark (rounding of floats).
_AT: Final = 1.001


def within_light(solved: Solved) -> Solved | None:
    """The same change of brightness with the time left to the light, the water as that makes it.

    Args:
        solved: a plan whose levers end before the wish is met.

    Returns:
        The plan that meets it; None where the first one does, where the time is kept or held by
        hand, or where the dial has no such time.
    """
    rest, situation = solved.plan.remaining_stops, solved.situation
    by_hand = rest > 0 and not situation.tripod
    if solved.plan.met or "time" in situation.keep or by_hand:
        return None
    time_s = solved.plan.settings.shutter_s * 2**rest
    camera = solved.camera
    if camera.sensor.fixed_f_number is not None:
        time_s = max(time_s, camera.shortest_s)  # a phone goes on shorter by itself
    if not camera.shortest_s <= time_s <= camera.longest_s:
        return None
    mark_s = nearest(time_marks(camera.dial), time_s).exact
    bound = replace(situation, look_times=(mark_s / _AT, mark_s * _AT))
    found = replace(solved, situation=bound, plan=plan(bound))
    return found if found.plan.met or time_s == camera.shortest_s else None
