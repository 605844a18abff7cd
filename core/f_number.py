"""Which f-number to set: the least blur within what depth, format and lens allow."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from core.blur import best_f_number
from core.camera import SensorFormat
from core.domain import positive
from core.errors import within
from core.optics import (
    CONFUSION_DIVISOR,
    NEAREST_IN_FOCAL_LENGTHS,
    circle_of_confusion_mm,
    smallest_f_number,
    stack_frames,
)
from core.series import Dial, exact_f_number, f_number_marks

#: Two f-numbers this close are the same (rounding of floats).
_SLACK: Final = 1e-9

LimitedBy = Literal["depth", "format", "lens", "least blur"]


@dataclass(frozen=True)
class FNumberChoice:
    """The f-number to set, and why.

    Args:
        exact: the f-number to set, exact value of a mark (or a phone's fixed one).
        needed: smallest f-number that holds the depth in one frame; 0 without a near thing.
        best: f-number of the least blur before any limit; 0 without a near thing.
        limited_by: what decided: "least blur", "depth" (it asks for more than the least blur),
            "format" (best range or softening limit), "lens" (opens or closes no further).
        stack: frames of a focus stack at `exact` when one frame can't hold the depth, else None.
    """

    exact: float
    needed: float
    best: float
    limited_by: LimitedBy
    stack: int | None


def choose_f_number(
    sensor: SensorFormat,
    focal_mm: float,
    near_m: float | None,
    far_m: float,
    widest: float,
    narrowest: float,
    dial: Dial = Dial.THIRDS,
    divisor: float = CONFUSION_DIVISOR,
) -> FNumberChoice:
    """The f-number of least blur within what depth, format and lens allow.

    Never below what the depth needs; never above the f-number at which the format softens (a
    focus stack at the low end of its best range then); never below that low end, nor wider than
    the lens opens.

    Args:
        sensor: the camera's format; a fixed f-number of its own overrules the lens.
        focal_mm: focal length [mm], above 0.
        near_m: nearest thing that must be sharp [m], at least twice the focal length; None if
            nothing stands near.
        far_m: farthest one [m], not below `near_m`; infinity is allowed.
        widest: smallest f-number of the lens at this focal length, above 0.
        narrowest: its largest f-number, not below `widest`.
        dial: steps of the camera's dial.
        divisor: for the circle of confusion, as in `circle_of_confusion_mm`.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: own rule, from `best_f_number`, `smallest_f_number` and `SensorFormat`.
    """
    openings = _openings(sensor, widest, narrowest, dial)
    best_from, softening = sensor.best_f[0], sensor.softening_f
    low = next((f for f in openings if f >= best_from), openings[-1])
    fitting = [f for f in openings if low <= f <= max(low, softening)]
    coc_mm = circle_of_confusion_mm(sensor.diagonal_mm, divisor)
    needed = _needed(focal_mm, near_m, far_m, coc_mm)
    best = best_f_number(2 * coc_mm * needed) if needed > 0 else 0.0
    high_by: LimitedBy = "lens" if openings[-1] < softening else "format"
    if near_m is not None and needed > fitting[-1]:
        frames = stack_frames(focal_mm, near_m, far_m, low, coc_mm)
        return FNumberChoice(low, needed, best, high_by, frames)
    deep = [f for f in fitting if f >= needed]
    exact = min(deep, key=lambda f: abs(math.log(f / max(best, low))))
    if best < low:
        low_by: LimitedBy = "format" if openings[0] <= best_from < openings[-1] else "lens"
        return FNumberChoice(exact, needed, best, low_by, None)
    if best > fitting[-1]:
        return FNumberChoice(exact, needed, best, high_by, None)
    return FNumberChoice(exact, needed, best, "depth" if needed > best else "least blur", None)


def _needed(focal_mm: float, near_m: float | None, far_m: float, coc_mm: float) -> float:
    if near_m is not None:
        return smallest_f_number(focal_mm, near_m, far_m, coc_mm)
    positive("focal_mm", focal_mm, "mm")
    within("far_m", far_m, "m", NEAREST_IN_FOCAL_LENGTHS * focal_mm / 1000, math.inf)
    return 0.0


def _openings(
    sensor: SensorFormat, widest: float, narrowest: float, dial: Dial
) -> tuple[float, ...]:
    """All exact f-numbers that can be set, widest first; a fixed one need not be a mark."""
    positive("widest", widest, "")
    positive("narrowest", narrowest, "")
    within("narrowest", narrowest, "", widest, math.inf)
    if sensor.fixed_f_number is not None:
        return (sensor.fixed_f_number,)
    low, high = (exact_f_number(marked, dial) for marked in (widest, narrowest))
    marks = [mark.exact for mark in f_number_marks(dial)]
    return tuple(f for f in marks if low <= f * (1 + _SLACK) and f <= high * (1 + _SLACK)) or (low,)
