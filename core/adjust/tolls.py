"""What a way costs in all, so that ways with and without a filter can be compared."""

from __future__ import annotations

import math
from typing import Final

from core.adjust.moves import DARKER_KEPT_STOPS, State, may_stay, shades_corners
from core.adjust.ranges import aperture_range, brightness
from core.adjust.situation import Lever, Situation
from core.series import EQUAL

# Prices in one unit, so that ways with and without a filter can be compared (own rule). What
# they are weighed for: a third or two more f-number before a polariser; a polariser before a
# whole stop; one filter before two; two filters before a stop of f-number and a missing one.
_PER_STOP_SHORT: Final = 100.0  # of the goal
_PER_STOP_DARKER: Final = 0.5  # kept darker, to be lifted
_PER_STOP_CLOSING: Final = 1.2  # towards diffraction, the frame being too bright
_PER_STOP_CLOSING_BACK: Final = 0.1  # what a filter taken off allows
_PER_STOP_OPENING: Final = 0.15  # towards the limit of the depth
_PER_STOP_CLEAN_ISO: Final = 0.5
_PER_STOP_NOISY_ISO: Final = 1.0
_PER_STOP_ISO_FOR_FILTER: Final = 1.5  # a filter too strong, paid for with noise
_PER_STOP_GAINED: Final = -0.1  # ISO down, or back from diffraction
_PER_STOP_TIME: Final = 0.05  # inside the look
_PER_STOP_UNKNOWN_LOOK: Final = 0.3  # a time whose look nobody named
_POLARISER_ON: Final = 1.0
_POLARISER_OFF: Final = 0.4
_ND_DARKER: Final = 1.5
_ND_OFF: Final = -0.3
_ND_WEAKER: Final = 0.1
_CORNERS: Final = 0.5


def toll(start: State, end: State, situation: Situation, *, too_bright: bool) -> float:
    """What a way costs in all, in the unit of the prices above; lower is better.

    Args:
        start: where dials and filters stood.
        end: where this way leads.
        situation: the limits and the wish.
        too_bright: darker was wanted.
    """
    return (
        _missing(end.remaining, situation, too_bright)
        + _aperture_toll(start, end, situation, too_bright)
        + _iso_toll(start.settings.iso, end.settings.iso, situation, too_bright)
        + _time_toll(start.settings.shutter_s, end.settings.shutter_s, situation)
        + _filter_toll(start, end, situation)
    )


def is_met(remaining: float, situation: Situation, *, too_bright: bool) -> bool:
    """Whether what remains is within half a step, or dark enough to be lifted afterwards.

    Args:
        remaining: what is still wanted [stops]; positive: brighter.
        situation: with half a step of its dial [stops].
        too_bright: darker was wanted, so that what stays darker may be lifted.
    """
    if too_bright and may_stay(remaining):
        return True
    return abs(remaining) <= situation.half_step


def _missing(remaining: float, situation: Situation, too_bright: bool) -> float:
    if too_bright and remaining > 0:
        beyond = max(remaining - DARKER_KEPT_STOPS, 0.0)
        return _PER_STOP_DARKER * min(remaining, DARKER_KEPT_STOPS) + _PER_STOP_SHORT * beyond
    return _PER_STOP_SHORT * max(abs(remaining) - situation.half_step, 0.0)


def _aperture_toll(start: State, end: State, situation: Situation, too_bright: bool) -> float:
    before, after = start.settings.f_number, end.settings.f_number
    change = brightness(Lever.APERTURE, after) - brightness(Lever.APERTURE, before)
    if change < 0:
        return -change * (_PER_STOP_CLOSING if too_bright else _PER_STOP_CLOSING_BACK)
    too_narrow = before > aperture_range(situation).darkest * EQUAL
    return change * (_PER_STOP_GAINED if too_narrow else _PER_STOP_OPENING)


def _iso_toll(before: float, after: float, situation: Situation, too_bright: bool) -> float:
    raised = math.log2(after / before)
    if raised <= 0:
        return -raised * _PER_STOP_GAINED
    if too_bright:
        return raised * _PER_STOP_ISO_FOR_FILTER
    clean = max(situation.camera.sensor.clean_iso, before)
    noisy = max(math.log2(after / clean), 0.0)
    return _PER_STOP_CLEAN_ISO * (raised - noisy) + _PER_STOP_NOISY_ISO * noisy


def _time_toll(before: float, after: float, situation: Situation) -> float:
    each = _PER_STOP_UNKNOWN_LOOK if situation.look_times is None else _PER_STOP_TIME
    return each * abs(math.log2(after / before))


def _filter_toll(start: State, end: State, situation: Situation) -> float:
    cost = 0.0
    if end.polariser_on != start.polariser_on:
        cost += _POLARISER_ON if end.polariser_on else _POLARISER_OFF
    if end.nd_on > start.nd_on:
        cost += _ND_DARKER
    elif end.nd_on < start.nd_on:
        cost += _ND_WEAKER if end.nd_on else _ND_OFF
    changed = (start.polariser_on, start.nd_on) != (end.polariser_on, end.nd_on)
    return cost + (_CORNERS if changed and shades_corners(end, situation) else 0.0)
