"""Share of the frame that water crosses, look from time and time from look."""

from __future__ import annotations

import math
from collections.abc import Mapping
from enum import Enum
from types import MappingProxyType
from typing import Final, overload

import numpy as np
from numpy.typing import ArrayLike

from core.domain import FloatArray, between, positive


class Look(Enum):
    """How moving water shall read in the picture; the value is what is stored."""

    FROZEN = "frozen"
    CRISP = "crisp"
    TEXTURED = "textured"
    SILKY = "silky"
    MISTY = "misty"


#: Shares of the frame at which one look passes into the next (own rule, set so that a 10 m fall
#: taken whole on 24 mm upright from 15 m gets the looks that teachers commonly give to times:
#: 1/500 s frozen, 1/8 to 1/3 s textured, 1/2 to 1 s silky, above that misty).
BANDS: Final = (0.0015, 0.01, 0.10, 0.35)

#: Share to aim at for a look (own rule): 4 % for textured; silky and crisp the geometric middle
#: of their bands; misty and frozen a clear step beyond their limits.
AIM: Final[Mapping[Look, float]] = MappingProxyType(
    {
        Look.FROZEN: 0.001,
        Look.CRISP: math.sqrt(BANDS[0] * BANDS[1]),
        Look.TEXTURED: 0.04,
        Look.SILKY: math.sqrt(BANDS[2] * BANDS[3]),
        Look.MISTY: 0.5,
    }
)
#: Nearest to the lens axis that a flow may run for a time to be told [deg] (own rule: straight
#: towards the camera the first order says nothing).
LEAST_ANGLE_DEG: Final = 1.0
#: A share within this part of a limit counts as the limit (rounding of floats).
_EDGE: Final = 1e-9


def coverage_m(distance_m: float, side_mm: float, focal_mm: float) -> float:
    """How much of the scene the frame covers along one side [m]: distance * side / focal length.

    Args:
        distance_m: from the camera to the water [m], above 0.
        side_mm: side of the sensor along the flow [mm], above 0.
        focal_mm: focal length [mm], above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.

    Source: similar triangles, thing far away against the focal length.
    """
    positive("distance_m", distance_m, "m")
    positive("side_mm", side_mm, "mm")
    positive("focal_mm", focal_mm, "mm")
    return distance_m * side_mm / focal_mm


@overload
def share(
    speed_mps: float, shutter_s: float, coverage_m: float, angle_deg: float = 90.0
) -> float: ...
@overload
def share(
    speed_mps: ArrayLike, shutter_s: ArrayLike, coverage_m: ArrayLike, angle_deg: ArrayLike = 90.0
) -> float | FloatArray: ...
def share(
    speed_mps: ArrayLike, shutter_s: ArrayLike, coverage_m: ArrayLike, angle_deg: ArrayLike = 90.0
) -> float | FloatArray:
    """Length of the water's streaks over the side of the frame: v t sin(angle) / coverage.

    Args:
        speed_mps: v, of the water, shape (...), [m/s], above 0.
        shutter_s: t, shape (...), [s], above 0.
        coverage_m: what the frame covers along the flow, shape (...), [m], above 0.
        angle_deg: between the flow and the lens axis, shape (...), [deg], 0 to 180; 90 is across
            the view, 0 straight towards or away from the camera.

    Returns:
        Share, broadcast shape; a float for numbers. 0.04 is 4 % of the side.

    Raises:
        OutOfDomainError: an element is out of range.

    Source: similar triangles; the angle to first order, in the middle of the frame.
    """
    speed = positive("speed_mps", speed_mps, "m/s")
    time = positive("shutter_s", shutter_s, "s")
    covered = positive("coverage_m", coverage_m, "m")
    sine = np.sin(np.radians(between("angle_deg", angle_deg, "deg", 0.0, 180.0)))
    part: float | FloatArray = speed * time * sine / covered
    return part


def look_of(share: float) -> Look:
    """The look of a share: frozen below 0.15 %, crisp to 1 %, textured to 10 %, silky to 35 %.

    Args:
        share: as `share` gives it, at least 0.

    Raises:
        OutOfDomainError: `share` is negative, NaN or infinite.

    Source: own rule, see `BANDS`.
    """
    between("share", share, "", 0.0, math.inf)
    if share < BANDS[0] * (1 - _EDGE):
        return Look.FROZEN
    for look, limit in zip((Look.CRISP, Look.TEXTURED, Look.SILKY), BANDS[1:], strict=True):
        if share <= limit * (1 + _EDGE):
            return look
    return Look.MISTY


def band_of(look: Look) -> tuple[float, float]:
    """Least and most share of a look; 0 for frozen, infinite for misty.

    Source: own rule, see `BANDS`.
    """
    edges = (0.0, *BANDS, math.inf)
    place = list(Look).index(look)
    return edges[place], edges[place + 1]


def time_for_share(
    share: float, speed_mps: float, coverage_m: float, angle_deg: float = 90.0
) -> float:
    """Exposure time that gives a share [s]: share * coverage / (v sin(angle)).

    Args:
        share: above 0.
        speed_mps: v, of the water [m/s], above 0.
        coverage_m: what the frame covers along the flow [m], above 0.
        angle_deg: between the flow and the lens axis [deg], 1 to 179.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: `share` solved for the time.
    """
    positive("share", share, "")
    positive("speed_mps", speed_mps, "m/s")
    positive("coverage_m", coverage_m, "m")
    between("angle_deg", angle_deg, "deg", LEAST_ANGLE_DEG, 180.0 - LEAST_ANGLE_DEG)
    return share * coverage_m / (speed_mps * math.sin(math.radians(angle_deg)))


def time_range(
    look: Look, speed_mps: float, coverage_m: float, angle_deg: float = 90.0
) -> tuple[float, float]:
    """Shortest and longest exposure time of a look [s]; 0 for frozen, infinite for misty.

    Args:
        look: the wished look.
        speed_mps: of the water [m/s], above 0.
        coverage_m: what the frame covers along the flow [m], above 0.
        angle_deg: between the flow and the lens axis [deg], 1 to 179.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: `time_for_share` at the limits of `BANDS`.
    """
    low, high = band_of(look)
    return (
        time_for_share(low, speed_mps, coverage_m, angle_deg) if low else 0.0,
        time_for_share(high, speed_mps, coverage_m, angle_deg) if high < math.inf else math.inf,
    )
