"""Dials and filters moved within their ranges, and where they then stand."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from core.adjust.ranges import (
    aperture_range,
    block_of,
    brightness,
    in_look,
    iso_range,
    look_times_of,
    marks_of,
    reachable,
    steady_s,
    time_range,
    value_of,
    with_value,
)
from core.adjust.situation import Lever, Situation
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.series import EQUAL, EQUAL_STOPS, Mark

#: A frame may stay darker by so much and be lifted afterwards: two thirds, and what a polariser
#: of 1.7 stops leaves over them (own rule).
DARKER_KEPT_STOPS: Final = 0.75
#: Polariser and ND together darken the corners below this focal length, as on full frame [mm]
#: (common practice).
CORNERS_BELOW_MM: Final = 20.0


@dataclass(frozen=True)
class State:
    """Where dials and filters stand, and what is still wanted [stops]."""

    settings: Settings
    polariser_on: bool
    nd_on: float
    remaining: float

    def at(self, lever: Lever, value: float) -> State:
        """This state with one dial moved to an exact value.

        Args:
            lever: time, aperture or ISO.
            value: exact: seconds, f-number or speed, above 0.
        """
        before = brightness(lever, value_of(lever, self.settings))
        change = brightness(lever, value) - before
        settings = with_value(lever, self.settings, value)
        return replace(self, settings=settings, remaining=self.remaining - change)

    def with_filters(self, polariser_on: bool, nd_on: float) -> State:
        """This state with other filters on the lens.

        Args:
            polariser_on: whether it is on the lens.
            nd_on: neutral density on the lens [stops], 0 for none.
        """
        change = POLARISER_STOPS * (self.polariser_on - polariser_on) + self.nd_on - nd_on
        return replace(
            self, polariser_on=polariser_on, nd_on=nd_on, remaining=self.remaining - change
        )


def may_stay(remaining: float) -> bool:
    """Whether a frame that is darker than wanted may stay so, to be lifted afterwards.

    Args:
        remaining: what is still wanted [stops]; positive: brighter.
    """
    return 0 < remaining <= DARKER_KEPT_STOPS


def start_of(situation: Situation) -> State:
    """The state in which the frame was taken."""
    polariser_on = situation.polariser == "on"
    return State(situation.settings, polariser_on, situation.nd_on, situation.change_stops)


def moved(
    state: State, lever: Lever, wanted: float, situation: Situation, *, never_past: bool = False
) -> State:
    """One dial moved by what is nearest to `wanted`; of two equally near, the darker.

    Args:
        state: where dials and filters stand.
        lever: time, aperture or ISO.
        wanted: change [stops]; positive: brighter.
        situation: the limits.
        never_past: move by as much as is wanted, or less.
    """
    if block_of(lever, situation) is not None or abs(wanted) <= EQUAL_STOPS:
        return state
    start = value_of(lever, state.settings)
    here = brightness(lever, start)

    def miss(mark: Mark) -> tuple[float, float]:
        level = brightness(lever, mark.exact) - here
        return round(abs(level - wanted), 6), level

    stay = Mark(start, start, "")
    marks = reachable(lever, start, wanted, situation)
    if never_past:
        marks = [
            m for m in marks if abs(brightness(lever, m.exact) - here) <= abs(wanted) + EQUAL_STOPS
        ]
    best = min([stay, *marks], key=miss)
    return state if best is stay else state.at(lever, best.exact)


def time_into_look(state: State, situation: Situation) -> State:
    """The time brought inside the look, there as near to the wanted change as it goes."""
    outside = not in_look(state.settings.shutter_s, situation)
    if not outside or block_of(Lever.TIME, situation) is not None:
        return state
    start = state.settings.shutter_s
    marks = [mark.exact for mark in marks_of(Lever.TIME, situation.camera.dial)]
    times = [value for value in marks if _may_go(start, value, situation)]
    inside = [value for value in times if in_look(value, situation)]
    if inside:
        best = min(inside, key=lambda value: abs(math.log2(value / start) - state.remaining))
        return state.at(Lever.TIME, best)
    nearest = min([start, *times], key=lambda value: _outside(value, situation))
    return state.at(Lever.TIME, nearest)


def _may_go(start: float, value: float, situation: Situation) -> bool:
    """Whether the camera and, for a longer time, the hand allow it; the look is left out."""
    free = time_range(replace(situation, look_times=None))
    if value > start:
        return value <= free.brightest * EQUAL
    return free.darkest / EQUAL <= value


def _outside(shutter_s: float, situation: Situation) -> float:
    """How far a time lies outside the look [stops]."""
    shortest_s, longest_s = look_times_of(situation)
    if shutter_s > longest_s:
        return math.log2(shutter_s / longest_s)
    return math.log2(shortest_s / shutter_s) if shutter_s < shortest_s else 0.0


def opened_back(state: State, situation: Situation) -> State:
    """A lens stopped down past the format's limit opened again, as far as ISO pays for it.

    Small f-numbers by habit and ISO left high are two faults that cancel in brightness: both are
    mended together. What is still to be darkened is left to the ISO.
    """
    if block_of(Lever.APERTURE, situation) is not None:
        return state
    limits = aperture_range(situation)
    if state.settings.f_number <= limits.darkest * EQUAL:
        return state
    goal = max(situation.wished_f or _good_f(situation), limits.brightest)
    full = brightness(Lever.APERTURE, goal) - brightness(Lever.APERTURE, state.settings.f_number)
    room = _iso_room(state, situation)
    return moved(state, Lever.APERTURE, max(min(full, room + state.remaining), 0.0), situation)


def _good_f(situation: Situation) -> float:
    """Where to open to when nobody said: the best range if the depth is known, else its limit."""
    if situation.depth_f is None:
        return aperture_range(situation).darkest
    return max(situation.depth_f, situation.camera.sensor.best_f[1])


def out_of_extended(state: State, situation: Situation) -> State:
    """A speed below base raised to base, as far as brighter is wanted: it costs nothing."""
    below = math.log2(situation.camera.base_iso / state.settings.iso)
    return moved(state, Lever.ISO, max(min(below, state.remaining), 0.0), situation)


def _iso_room(state: State, situation: Situation) -> float:
    """By how much ISO can still go down to base [stops]; 0 if kept."""
    if block_of(Lever.ISO, situation) is not None:
        return 0.0
    return max(math.log2(state.settings.iso / iso_range(situation).darkest), 0.0)


def darkened(state: State, situation: Situation) -> State:
    """ISO to base, then the time inside a known look: what costs nothing."""
    levers = [Lever.ISO] if situation.look_times is None else [Lever.ISO, Lever.TIME]
    for lever in levers:
        if state.remaining < 0:
            state = moved(state, lever, state.remaining, situation)
    return state


def closed(state: State, situation: Situation) -> State:
    """The aperture to the format's limit; then the time, if free and no look is known."""
    levers = [Lever.APERTURE, Lever.TIME] if situation.look_times is None else [Lever.APERTURE]
    for lever in levers:
        if state.remaining < 0:
            state = moved(state, lever, state.remaining, situation)
    return state


def brightened(state: State, situation: Situation) -> State:
    """Time inside a known look, aperture as the depth allows, ISO; else the time last."""
    for lever in _brighter_levers(situation):
        if state.remaining > 0:
            state = moved(state, lever, state.remaining, situation)
    return state


def given_back(state: State, situation: Situation) -> State:
    """What a filter takes too much, given back, but never so much that it is too bright again.

    Noise only for a dark frame, and no more of it than is clean or than there was. Two thirds may
    stay, to be lifted afterwards, rather than cost noise or an unknown look.
    """
    for lever in _brighter_levers(situation):
        free = lever is Lever.APERTURE or (lever is Lever.TIME and situation.look_times is not None)
        wanted = state.remaining
        if lever is Lever.ISO:
            no_worse = max(situation.camera.sensor.clean_iso, situation.settings.iso)
            wanted = min(wanted, math.log2(no_worse / state.settings.iso))
        if wanted > 0 and (free or not may_stay(state.remaining)):
            state = moved(state, lever, wanted, situation, never_past=True)
    return state


def _brighter_levers(situation: Situation) -> tuple[Lever, Lever, Lever]:
    if situation.look_times is None:
        return Lever.APERTURE, Lever.ISO, Lever.TIME
    return Lever.TIME, Lever.APERTURE, Lever.ISO


def shades_corners(state: State, situation: Situation) -> bool:
    """Whether two filters stand one on the other before a wide lens."""
    focal_mm = situation.full_frame_focal_mm
    wide = focal_mm is not None and focal_mm < CORNERS_BELOW_MM
    return wide and state.polariser_on and state.nd_on > 0


def has_polariser(situation: Situation) -> bool:
    """Whether a polariser is at hand; a phone's lens takes none."""
    return situation.polariser != "none" and situation.camera.sensor.fixed_f_number is None


def held_too_long(shutter_s: float, situation: Situation) -> bool:
    """Whether a time is longer than this person can hold by hand.

    Args:
        shutter_s: exposure time [s], above 0.
        situation: whether there is a tripod, and how long a hand holds.
    """
    return not situation.tripod and shutter_s > steady_s(situation) * EQUAL
