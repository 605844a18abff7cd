"""From exposure value to luminance and illuminance, and where a sensor clips."""

from __future__ import annotations

from typing import Final, overload

import numpy as np
from numpy.typing import ArrayLike

from core.domain import FloatArray, between, positive
from core.exposure import EV_RANGE

#: Constant of reflected-light meters [cd s/m2]; makers use 12.5 or 14 (a sixth of a stop apart),
#: ISO 2720:1974 allows 10.6 to 13.4 (GNU units 2.22, definitions file, photographic exposure).
REFLECTED_CONSTANT: Final = 12.5
#: Constant of incident-light meters with a flat receptor [lx s] (GNU units 2.22, there too).
INCIDENT_CONSTANT: Final = 250.0
#: Saturation speed times the exposure at which the sensor saturates [lx s] (ISO 12232:2006, from
#: memory): 10 * sqrt(2) / 0.18 = 78.6, rounded down.
SATURATION_CONSTANT: Final = 78.0
#: Share of the light that a typical lens brings to the sensor (ISO 12232, from memory).
LENS_FACTOR: Final = 0.65


@overload
def luminance(ev100: float, constant: float = REFLECTED_CONSTANT) -> float: ...
@overload
def luminance(ev100: ArrayLike, constant: float = REFLECTED_CONSTANT) -> float | FloatArray: ...
def luminance(ev100: ArrayLike, constant: float = REFLECTED_CONSTANT) -> float | FloatArray:
    """Luminance that a reflected-light meter reads as an exposure value: 2^EV * K / 100.

    Args:
        ev100: EV at ISO 100, shape (...), -30 to 30.
        constant: K [cd s/m2], above 0.

    Returns:
        Luminance [cd/m2], shape (...); a float for a number.

    Raises:
        OutOfDomainError: an element is out of range.

    Source: GNU units 2.22, definitions file; ANSI PH3.49-1971.
    """
    level = between("ev100", ev100, "EV", *EV_RANGE)
    bright: float | FloatArray = np.exp2(level) * positive("constant", constant, "cd s/m2") / 100
    return bright


@overload
def illuminance(ev100: float, constant: float = INCIDENT_CONSTANT) -> float: ...
@overload
def illuminance(ev100: ArrayLike, constant: float = INCIDENT_CONSTANT) -> float | FloatArray: ...
def illuminance(ev100: ArrayLike, constant: float = INCIDENT_CONSTANT) -> float | FloatArray:
    """Illuminance that an incident-light meter reads as an exposure value: 2^EV * C / 100.

    Args:
        ev100: EV at ISO 100, shape (...), -30 to 30.
        constant: C [lx s], above 0.

    Returns:
        Illuminance [lx], shape (...); a float for a number.

    Raises:
        OutOfDomainError: an element is out of range.

    Source: GNU units 2.22, definitions file.
    """
    level = between("ev100", ev100, "EV", *EV_RANGE)
    light: float | FloatArray = np.exp2(level) * positive("constant", constant, "lx s") / 100
    return light


@overload
def clipping_luminance(ev100: float) -> float: ...
@overload
def clipping_luminance(ev100: ArrayLike) -> float | FloatArray: ...
def clipping_luminance(ev100: ArrayLike) -> float | FloatArray:
    """Luminance at which a saturation-rated sensor clips: 78 / (100 * 0.65) * 2^EV.

    Args:
        ev100: level for which the camera is set, EV at ISO 100, shape (...), -30 to 30.

    Returns:
        Luminance [cd/m2], shape (...); a float for a number.

    Raises:
        OutOfDomainError: an element is out of range.

    Source: ISO 12232:2006, from memory (formula only).
    """
    level = between("ev100", ev100, "EV", *EV_RANGE)
    bright: float | FloatArray = SATURATION_CONSTANT / (100 * LENS_FACTOR) * np.exp2(level)
    return bright


def saturation_speed(exposure_lx_s: float) -> float:
    """Speed of a sensor that saturates at an exposure: 78 over it; 0.78 lx s is ISO 100.

    Args:
        exposure_lx_s: exposure at saturation [lx s], above 0.

    Raises:
        OutOfDomainError: `exposure_lx_s` is not positive and finite.

    Source: ISO 12232:2006, from memory.
    """
    positive("exposure_lx_s", exposure_lx_s, "lx s")
    return SATURATION_CONSTANT / exposure_lx_s
