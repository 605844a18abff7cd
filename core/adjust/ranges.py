"""How far each dial may go: camera, lens, depth, diffraction, look and hand."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import cache
from typing import Final

from core.adjust.situation import Lever, Limit, Setting, Situation
from core.camera import Camera
from core.exposure import Settings
from core.series import (
    EQUAL,
    EQUAL_STOPS,
    LONGEST_MARKED_S,
    Dial,
    Mark,
    f_number_marks,
    iso_marks,
    shutter_label,
    time_marks,
)

#: Longest time held in bulb [s]: 2^9, some eight minutes (own rule).
BULB_LONGEST_S: Final = 512.0
#: Handheld without knowing the focal length: 1/60 s (common practice).
UNKNOWN_STEADY_S: Final = 2**-6


@dataclass(frozen=True)
class Range:
    """Where a dial may stand, as exact values, with what sets each end.

    Args:
        darkest: the end towards darker frames; moving there is never past it.
        brightest: the end towards brighter frames.
        darkest_by: what sets the dark end.
        brightest_by: what sets the bright end.
    """

    darkest: float
    brightest: float
    darkest_by: Limit
    brightest_by: Limit


_SETTING: Final[dict[Lever, Setting]] = {
    Lever.TIME: "time",
    Lever.APERTURE: "f_number",
    Lever.ISO: "iso",
}


def value_of(lever: Lever, settings: Settings) -> float:
    """The exact value at which the dial of `lever` stands."""
    if lever is Lever.TIME:
        return settings.shutter_s
    return settings.f_number if lever is Lever.APERTURE else settings.iso


def with_value(lever: Lever, settings: Settings, value: float) -> Settings:
    """The settings with the dial of `lever` at an exact value.

    Args:
        lever: time, aperture or ISO.
        settings: exact values.
        value: exact: seconds, f-number or speed, above 0.
    """
    if lever is Lever.TIME:
        return replace(settings, shutter_s=value)
    if lever is Lever.APERTURE:
        return replace(settings, f_number=value)
    return replace(settings, iso=value)


def brightness(lever: Lever, value: float) -> float:
    """What a value of a dial does to the brightness, against the value 1 [stops].

    Args:
        lever: time, aperture or ISO.
        value: exact: seconds, f-number or speed, above 0.
    """
    return -2 * math.log2(value) if lever is Lever.APERTURE else math.log2(value)


@cache
def _bulb_marks(dial: Dial) -> tuple[Mark, ...]:
    """Times beyond the dial in its own steps, shortest first."""
    steps = round(math.log2(BULB_LONGEST_S / LONGEST_MARKED_S) * dial.value)
    exact = [LONGEST_MARKED_S * 2 ** (step / dial.value) for step in range(1, steps + 1)]
    return tuple(Mark(value, value, shutter_label(value, dial)) for value in exact)


@cache
def marks_of(lever: Lever, dial: Dial) -> tuple[Mark, ...]:
    """All marks of the dial of `lever`, darkest first."""
    if lever is Lever.TIME:
        return tuple(reversed(time_marks(dial))) + _bulb_marks(dial)
    return tuple(reversed(f_number_marks(dial))) if lever is Lever.APERTURE else iso_marks(dial)


def block_of(lever: Lever, situation: Situation) -> Limit | None:
    """Why a dial does not move at all; None: it may."""
    if lever is Lever.APERTURE and situation.camera.sensor.fixed_f_number is not None:
        return Limit.FIXED
    return Limit.KEPT if _SETTING[lever] in situation.keep else None


def range_of(lever: Lever, situation: Situation) -> Range:
    """How far the dial of `lever` may go."""
    if lever is Lever.TIME:
        return time_range(situation)
    return aperture_range(situation) if lever is Lever.APERTURE else iso_range(situation)


def iso_range(situation: Situation) -> Range:
    """From base (never below: extended speeds add no highlight room) to acceptable noise."""
    camera = situation.camera
    top = max(min(camera.sensor.top_iso, camera.highest_iso), camera.base_iso)
    return Range(camera.base_iso, top, Limit.BASE_ISO, Limit.TOP_ISO)


def aperture_range(situation: Situation) -> Range:
    """From the format's limit (or the lens's narrow end) to what the depth needs."""
    sensor = situation.camera.sensor
    narrow = (sensor.softening_f, Limit.FORMAT), (situation.narrowest_f, Limit.LENS)
    darkest, darkest_by = min(narrow, key=lambda end: end[0])
    depth_f = sensor.best_f[0] if situation.depth_f is None else situation.depth_f
    wide = (situation.widest_f, Limit.LENS), (depth_f, Limit.DEPTH)
    brightest, brightest_by = max(wide, key=lambda end: end[0])
    return Range(darkest, brightest, darkest_by, brightest_by)


def longest_held_s(camera: Camera) -> float:
    """Longest time that a camera takes [s], in bulb where it has that."""
    return max(camera.longest_s, BULB_LONGEST_S) if camera.bulb else camera.longest_s


def steady_s(situation: Situation) -> float:
    """Longest time held by hand [s]; one over the focal length (common practice)."""
    if situation.steady_s is not None:
        return situation.steady_s
    focal_mm = situation.full_frame_focal_mm
    return UNKNOWN_STEADY_S if focal_mm is None else 1 / focal_mm


def time_range(situation: Situation) -> Range:
    """Inside the look, the camera's dial and, by hand, what the hand holds."""
    camera = situation.camera
    short = [(camera.shortest_s, Limit.CAMERA)]
    long = [(longest_held_s(camera), Limit.CAMERA)]
    if situation.look_times is not None:
        short.append((situation.look_times[0], Limit.LOOK))
        long.append((situation.look_times[1], Limit.LOOK))
    if not situation.tripod:
        long.append((steady_s(situation), Limit.STEADY))
    darkest, darkest_by = max(short, key=lambda end: end[0])
    brightest, brightest_by = min(long, key=lambda end: end[0])
    return Range(darkest, brightest, darkest_by, brightest_by)


def look_times_of(situation: Situation) -> tuple[float, float]:
    """Shortest and longest time of the wished look [s]; all times when none is wished."""
    return (0.0, math.inf) if situation.look_times is None else situation.look_times


def in_look(shutter_s: float, situation: Situation) -> bool:
    """Whether a time gives the wished look; True when none is wished.

    Args:
        shutter_s: exposure time [s], above 0.
        situation: with the times of the wished look.
    """
    shortest_s, longest_s = look_times_of(situation)
    return shortest_s / EQUAL <= shutter_s <= longest_s * EQUAL


def reachable(lever: Lever, start: float, wanted: float, situation: Situation) -> list[Mark]:
    """Marks from `start` towards `wanted` [stops], none beyond the range, near first.

    Args:
        lever: time, aperture or ISO.
        start: exact value where the dial stands.
        wanted: change [stops]; its sign alone counts, positive: brighter.
        situation: the limits.
    """
    limits = range_of(lever, situation)
    sign = math.copysign(1.0, wanted)
    end = brightness(lever, limits.brightest if sign > 0 else limits.darkest)
    here = brightness(lever, start)
    # from an extended speed the first mark upwards is base, never another extended one
    lowest = limits.darkest / EQUAL if lever is Lever.ISO else 0.0
    marks = [
        mark
        for mark in marks_of(lever, situation.camera.dial)
        if sign * (brightness(lever, mark.exact) - here) > EQUAL_STOPS
        and sign * (end - brightness(lever, mark.exact)) > -EQUAL_STOPS
        and mark.exact >= lowest
    ]
    return marks if sign > 0 else marks[::-1]
