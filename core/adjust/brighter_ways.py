"""When it stays too dark: silkier water, a rest, a focus stack, more noise, more light."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from core.adjust.moves import State, moved
from core.adjust.offers import offer, other_aperture, other_time
from core.adjust.ranges import block_of, look_times_of, marks_of, steady_s
from core.adjust.situation import Lever, Note, Price, Situation, Step
from core.adjust.telling import iso_cost
from core.exposure import averaging_noise, frames_for
from core.optics import circle_of_confusion_mm, stack_frames
from core.series import EQUAL


def brighter_ways(end: State, situation: Situation) -> Iterator[Step]:
    """The levers left when a frame is still too dark, the least trouble first."""
    yield from _support(end, situation)
    yield from other_time(Lever.LONGER_TIME, end, situation)
    yield from _stack(end, situation)
    yield from _noisier(end, situation)
    yield from _average_rock(end, situation)
    yield offer(Lever.WAIT, end, end.remaining, Price.PATIENCE, {"stops": end.remaining})


def _support(end: State, situation: Situation) -> Iterator[Step]:
    """By hand: what a rest for the camera would allow inside the look."""
    if situation.tripod or block_of(Lever.TIME, situation) is not None:
        return
    rested = replace(situation, tripod=True)
    room = math.log2(look_times_of(situation)[1] / end.settings.shutter_s)
    after = moved(end, Lever.TIME, min(end.remaining, max(room, 0.0)), rested)
    stops = end.remaining - after.remaining
    if stops > 0:
        numbers = {"steady_s": steady_s(situation)}
        yield offer(Lever.SUPPORT, end, stops, Price.WORK, numbers, after.settings)


def _stack(end: State, situation: Situation) -> Iterator[Step]:
    """Wider open than the depth allows, with the frames that it then takes."""
    notes = (Note.WIND,) if situation.wind else ()
    for step in other_aperture(Lever.STACK, end, situation, situation.widest_f, notes):
        frames = _stack_numbers(step.settings.f_number, situation)
        yield replace(step, price=Price.WORK, numbers={**step.numbers, **frames})


def _stack_numbers(f_number: float, situation: Situation) -> dict[str, float]:
    """Frames of the stack, when the geometry is known."""
    if situation.focal_mm is None or situation.near_m is None or situation.far_m is None:
        return {}
    coc_mm = circle_of_confusion_mm(situation.camera.sensor.diagonal_mm)
    near_m, far_m = situation.near_m, situation.far_m
    return {"frames": stack_frames(situation.focal_mm, near_m, far_m, f_number, coc_mm)}


def _noisier(end: State, situation: Situation) -> Iterator[Step]:
    """ISO beyond what is acceptable, to the owner's own limit."""
    after = _at_higher_iso(end, situation)
    if after == end or block_of(Lever.ISO, situation) is not None:
        return
    cost = iso_cost(end, after, situation)
    stops = end.remaining - after.remaining
    numbers = dict(cost.numbers)
    yield offer(Lever.ISO, end, stops, cost.price, numbers, after.settings, cost.notes)


def _average_rock(end: State, situation: Situation) -> Iterator[Step]:
    """As many frames at a higher ISO as bring the noise back; the water turns silky in them."""
    after = _at_higher_iso(end, situation)
    if after == end:
        return
    stops = end.remaining - after.remaining
    frames = frames_for(stops)
    numbers = {"frames": float(frames), "noise_ratio": averaging_noise(frames)}
    yield offer(Lever.AVERAGE_ROCK, end, stops, Price.WORK, numbers, after.settings)


def _at_higher_iso(end: State, situation: Situation) -> State:
    """ISO raised by what is wanted, no further than the owner's limit."""
    highest = situation.camera.highest_iso * EQUAL
    iso = end.settings.iso
    marks = [m.exact for m in marks_of(Lever.ISO, situation.camera.dial)]
    fitting = [value for value in marks if iso * EQUAL < value <= highest]
    if not fitting:
        return end
    goal = min(fitting, key=lambda value: abs(math.log2(value / iso) - end.remaining))
    return end.at(Lever.ISO, goal)
