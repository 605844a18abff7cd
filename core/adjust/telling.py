"""From where a plan starts and ends to its steps: order, numbers, price, notes."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

from core.adjust.moves import State, held_too_long, may_stay, shades_corners
from core.adjust.ranges import aperture_range, brightness, in_look, marks_of, value_of
from core.adjust.situation import Lever, Note, Price, Situation, Step
from core.blur import airy_diameter_um
from core.camera import POLARISER_STOPS, nd_factor
from core.optics import circle_of_confusion_mm
from core.series import EQUAL, EQUAL_STOPS, Mark

#: What polarisers take in practice [stops] (common practice; 1.7 is reckoned with).
POLARISER_LOW: Final = 1.3
POLARISER_HIGH: Final = 2.0
#: Below this, as on full frame, a polariser may leave an uneven sky [mm] (common practice).
UNEVEN_BELOW_MM: Final = 28.0

_DARKER_ORDER: Final = (Lever.TIME, Lever.ISO, Lever.POLARISER, Lever.ND, Lever.APERTURE)
_BRIGHTER_ORDER: Final = (Lever.ND, Lever.TIME, Lever.APERTURE, Lever.POLARISER, Lever.ISO)


@dataclass(frozen=True)
class Cost:
    """What a step costs: price, numbers, what must be said."""

    price: Price
    numbers: Mapping[str, float]
    notes: tuple[Note, ...] = ()


def steps_between(
    start: State, end: State, situation: Situation, *, too_bright: bool
) -> tuple[Step, ...]:
    """One step for each dial or filter that differs, in the order in which it is done.

    Args:
        start: where dials and filters stood.
        end: where they stand then.
        situation: the limits and the wish.
        too_bright: darker was wanted, which sets the order.
    """
    steps: list[Step] = []
    state = start
    for lever in _order(start, end, situation, too_bright):
        after = _one_moved(lever, state, end)
        if after != state:
            steps.append(_step(lever, state, after, situation, too_bright))
            state = after
    return tuple(steps)


def _order(start: State, end: State, situation: Situation, too_bright: bool) -> list[Lever]:
    """A time that was outside the look first; what gives back an excess, or has no look, last."""
    order = _DARKER_ORDER if too_bright else _BRIGHTER_ORDER
    outside = not in_look(start.settings.shutter_s, situation)

    def place(lever: Lever) -> int:
        stops = start.remaining - _one_moved(lever, start, end).remaining
        if lever is Lever.TIME and (outside or situation.look_times is None):
            return 0 if outside else 3
        return 2 if (stops > 0) == too_bright and stops else 1

    return sorted(order, key=place)


def _one_moved(lever: Lever, state: State, end: State) -> State:
    if lever is Lever.POLARISER:
        return state.with_filters(end.polariser_on, state.nd_on)
    if lever is Lever.ND:
        return state.with_filters(state.polariser_on, end.nd_on)
    goal = value_of(lever, end.settings)
    return state if goal == value_of(lever, state.settings) else state.at(lever, goal)


def _step(
    lever: Lever, before: State, after: State, situation: Situation, too_bright: bool
) -> Step:
    cost = _COSTS[lever](before, after, situation)
    stops = before.remaining - after.remaining
    return Step(
        lever=lever,
        stops=stops,
        settings=after.settings,
        polariser_on=after.polariser_on,
        nd_on=after.nd_on,
        price=cost.price,
        numbers=cost.numbers,
        path=_path(lever, before, after, situation) if situation.small_steps else (),
        notes=cost.notes,
        optional=too_bright and cost.price is Price.DEPTH and may_stay(before.remaining),
    )


def _path(lever: Lever, before: State, after: State, situation: Situation) -> tuple[Mark, ...]:
    """The marks that the dial passes, the goal last; a filter passes none."""
    if lever in {Lever.POLARISER, Lever.ND}:
        return ()
    low, high = (brightness(lever, value_of(lever, state.settings)) for state in (before, after))
    sign = math.copysign(1.0, high - low)
    passed = [
        mark
        for mark in marks_of(lever, situation.camera.dial)
        if sign * (brightness(lever, mark.exact) - low) > EQUAL_STOPS
        and sign * (high - brightness(lever, mark.exact)) >= -EQUAL_STOPS
    ]
    return tuple(passed if sign > 0 else passed[::-1])


def time_cost(before: State, after: State, situation: Situation) -> Cost:
    """Streaks grow as the time does."""
    shutter_s = after.settings.shutter_s
    notes = {
        Note.BULB: shutter_s > situation.camera.longest_s * EQUAL,
        Note.BY_HAND: held_too_long(shutter_s, situation),
    }
    numbers = {"time_ratio": shutter_s / before.settings.shutter_s}
    return Cost(Price.LOOK, numbers, tuple(note for note, holds in notes.items() if holds))


def iso_cost(before: State, after: State, situation: Situation) -> Cost:
    """Noise of the light grows with the root of the speed (Poisson statistics)."""
    sensor = situation.camera.sensor
    ratio = after.settings.iso / before.settings.iso
    numbers = {
        "noise_ratio": math.sqrt(ratio),
        "clean_iso": sensor.clean_iso,
        "top_iso": sensor.top_iso,
    }
    noisy = ratio > 1 and after.settings.iso > sensor.clean_iso * EQUAL
    price = Price.NOISE if ratio > 1 else Price.NOTHING
    return Cost(price, numbers, (Note.BEYOND_CLEAN,) if noisy else ())


def aperture_cost(before: State, after: State, situation: Situation) -> Cost:
    """Diffraction blur when closing beyond the best range; depth when opening."""
    sensor = situation.camera.sensor
    limits = aperture_range(situation)
    old, new = before.settings.f_number, after.settings.f_number
    numbers = {
        "blur_um_before": float(airy_diameter_um(old)),
        "blur_um_after": float(airy_diameter_um(new)),
        "visible_um": 1000 * circle_of_confusion_mm(sensor.diagonal_mm),
        "format_f": sensor.softening_f,
    }
    if situation.depth_f is not None:
        numbers["depth_f"] = situation.depth_f
    if new > old:
        soft = new > sensor.best_f[1] * EQUAL
        return Cost(Price.DIFFRACTION if soft else Price.NOTHING, numbers)
    gained = old > limits.darkest * EQUAL  # it was stopped down too far
    return Cost(Price.NOTHING if gained else Price.DEPTH, numbers)


def polariser_cost(before: State, after: State, situation: Situation) -> Cost:
    """What the polariser takes or gives, and what it may leave over."""
    numbers = {"stops": POLARISER_STOPS, "low": POLARISER_LOW, "high": POLARISER_HIGH}
    if not after.polariser_on:
        return Cost(Price.GLARE, numbers)
    if before.remaining < 0 < after.remaining:
        numbers["excess_stops"] = after.remaining
    focal_mm = situation.full_frame_focal_mm
    notes = {
        Note.METER_AFTER_TURNING: True,
        Note.CORNERS: shades_corners(after, situation),
        Note.UNEVEN_SKY: focal_mm is not None and focal_mm < UNEVEN_BELOW_MM,
    }
    return Cost(Price.REFLECTIONS, numbers, tuple(note for note, holds in notes.items() if holds))


def nd_cost(before: State, after: State, situation: Situation) -> Cost:
    """Strength of the dark filter, as stops, factor and density."""
    numbers = nd_numbers(after.nd_on)
    if after.nd_on < before.nd_on:
        return Cost(Price.NOTHING, numbers)
    if before.remaining < 0 < after.remaining:
        numbers["excess_stops"] = after.remaining
    corners = (Note.CORNERS,) if shades_corners(after, situation) else ()
    return Cost(Price.TINT, numbers, (Note.FOCUS_FIRST, *corners))


def nd_numbers(stops: float) -> dict[str, float]:
    """A neutral density in the three ways in which it is sold: stops, factor, optical density.

    Args:
        stops: what the filter takes [stops], above 0.
    """
    return {"stops": stops, "factor": nd_factor(stops), "density": stops * math.log10(2)}


_COSTS: Final[Mapping[Lever, Callable[[State, State, Situation], Cost]]] = {
    Lever.TIME: time_cost,
    Lever.ISO: iso_cost,
    Lever.APERTURE: aperture_cost,
    Lever.POLARISER: polariser_cost,
    Lever.ND: nd_cost,
}
