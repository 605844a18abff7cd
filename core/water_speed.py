"""Speed of water: falling, and in a chute."""

from __future__ import annotations

import math
from typing import Final

from core.domain import positive

#: Standard acceleration of free fall [m/s2] (third General Conference on Weights and Measures,
#: 1901; ISO 80000-3).
GRAVITY_MPS2: Final = 9.80665
#: Fastest that single drops fall [m/s]: the largest stable ones, 5 to 6 mm, reach 9.1 to 9.2 (Gunn
#: & Kinzer, Journal of Meteorology 6, 1949, table; from memory).
DROP_TERMINAL_MPS: Final = 9.2
#: Highest fall for which speeds are given [m] (own rule: the highest on Earth are under 1000 m).
HIGHEST_FALL_M: Final = 1000.0
#: Deepest water in a chute for which a speed is given [m] (own rule).
DEEPEST_CHUTE_M: Final = 20.0
#: Fastest terminal speed that is taken [m/s] (own rule: over ten times that of any drop).
FASTEST_TERMINAL_MPS: Final = 100.0


def free_fall_speed_mps(height_m: float) -> float:
    """Speed after falling a height without air [m/s]: sqrt(2 g h). The upper bound for a fall.

    Args:
        height_m: h [m], above 0 to 1000.

    Raises:
        OutOfDomainError: `height_m` is out of range.

    Source: textbook mechanics.
    """
    positive("height_m", height_m, "m", HIGHEST_FALL_M)
    return math.sqrt(2 * GRAVITY_MPS2 * height_m)


def mean_fall_speed_mps(height_m: float) -> float:
    """Mean speed over a whole free fall [m/s]: sqrt(2 g h) / 2. The looks' bands are set by it.

    Args:
        height_m: h [m], above 0 to 1000.

    Raises:
        OutOfDomainError: `height_m` is out of range.

    Source: textbook mechanics; height over the time of the fall.
    """
    return free_fall_speed_mps(height_m) / 2


def drag_fall_speed_mps(height_m: float, terminal_mps: float = DROP_TERMINAL_MPS) -> float:
    """Speed after falling a height with quadratic air drag [m/s]: vt sqrt(1 - exp(-2 g h / vt^2)).

    The lower bound for a fall: sheets and clumps of water are not single drops and fall faster.

    Args:
        height_m: h [m], above 0 to 1000.
        terminal_mps: vt, speed at which drag and weight are equal [m/s], above 0 to 100.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: textbook mechanics, closed form for drag that grows with the square of the speed.
    """
    positive("height_m", height_m, "m", HIGHEST_FALL_M)
    positive("terminal_mps", terminal_mps, "m/s", FASTEST_TERMINAL_MPS)
    return terminal_mps * math.sqrt(-math.expm1(-2 * GRAVITY_MPS2 * height_m / terminal_mps**2))


def foot_speed_range_mps(height_m: float) -> tuple[float, float]:
    """Speed at the foot of a fall [m/s], from single drops in air to free fall.

    Args:
        height_m: above 0 to 1000 [m].

    Raises:
        OutOfDomainError: `height_m` is out of range.

    Source: `drag_fall_speed_mps` and `free_fall_speed_mps`.
    """
    return drag_fall_speed_mps(height_m), free_fall_speed_mps(height_m)


def chute_speed_mps(depth_m: float) -> float:
    """Speed of water in a chute or over a lip, flowing freely [m/s]: sqrt(g * depth).

    Args:
        depth_m: depth of the water [m], above 0 to 20.

    Raises:
        OutOfDomainError: `depth_m` is out of range.

    Source: critical flow, Chow, Open-Channel Hydraulics (1959), from memory (formula only). Steep
        streams tend to it: Grant, Water Resources Research 33 (1997), 349.
    """
    positive("depth_m", depth_m, "m", DEEPEST_CHUTE_M)
    return math.sqrt(GRAVITY_MPS2 * depth_m)
