"""The levers beyond dial and filter: what to fetch, wait for, average, stack or accept."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from core.adjust.brighter_ways import brighter_ways
from core.adjust.darker_ways import darker_ways
from core.adjust.moves import State
from core.adjust.offers import offer
from core.adjust.situation import Lever, Note, Price, Situation, Step
from core.exposure import bracket
from core.light import HELD_STOPS

#: A third of a stop of f-number is not worth an ND filter (own rule) [stops, darker].
_WORTH_SPARING: Final = -0.6


def others_of(end: State, situation: Situation, *, met: bool) -> tuple[Step, ...]:
    """What else would do it, from the end of a plan; each alone covers what it says in `stops`.

    Args:
        end: where the plan ended.
        situation: the limits.
        met: whether nothing more is wanted; then only a bracket for contrast may be left.
    """
    found: list[Step] = []
    if not met:
        ways = darker_ways if end.remaining < 0 else brighter_ways
        found.extend(ways(end, situation))
    found.extend(_bracket(end, situation))
    return tuple(found)


def instead_of(steps: Sequence[Step], end: State, situation: Situation) -> tuple[Step, ...]:
    """Ways that spare the diffraction, or the noise beyond the clean range, of a plan's steps.

    Args:
        steps: of the plan.
        end: where it ended.
        situation: the limits.

    Returns:
        Offers from the plan without the dearest step: what is then missing, by other ways.
    """
    for step in steps:
        if step.price is Price.DIFFRACTION and step.stops <= _WORTH_SPARING:
            spared = end.at(Lever.APERTURE, situation.settings.f_number)
            return tuple(darker_ways(spared, situation))
        if Note.BEYOND_CLEAN in step.notes:
            spared = end.at(Lever.ISO, situation.camera.sensor.clean_iso)
            ways = brighter_ways(spared, situation)
            return tuple(way for way in ways if way.lever is not Lever.ISO)  # the plan's own step
    return ()


def _bracket(end: State, situation: Situation) -> Iterator[Step]:
    """Several brightnesses, by the time alone, when the scene holds more than one frame does."""
    contrast = situation.contrast_stops
    if contrast is None:
        return
    offsets = bracket(contrast, HELD_STOPS)
    if len(offsets) == 1:
        return
    numbers = {
        "frames": float(len(offsets)),
        "step_stops": offsets[1] - offsets[0],
        "contrast_stops": contrast,
        "held_stops": HELD_STOPS,
    }
    yield offer(Lever.BRACKET, end, 0.0, Price.WORK, numbers)
