"""The longest focal length at which near and far are both sharp in one frame."""

from __future__ import annotations

import math

from core.domain import positive
from core.errors import within
from core.optics import NEAREST_IN_FOCAL_LENGTHS


def longest_focal_mm(near_m: float, far_m: float, f_number: float, coc_mm: float) -> float:
    """Focal length at which the focus spread is just 2 N c, the most that one frame holds [mm].

    With n and F the near and the far distance and S = 2 N c, the spread f^2/(n - f) - f^2/(F - f)
    equals S at the positive root of f^2 (F - n - S) + S (n + F) f - S n F = 0; it is written here
    so that an infinite F needs no case of its own.

    Args:
        near_m: nearest thing that must be sharp [m], above 0.
        far_m: farthest one [m], not below `near_m`; infinity is allowed.
        f_number: N, above 0.
        coc_mm: c, circle of confusion [mm], above 0.

    Returns:
        Focal length [mm], never so long that `near_m` is nearer than twice of it.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: `core.optics.focus_spread_mm` (thin lens) solved for the focal length.
    """
    positive("near_m", near_m, "m")
    within("far_m", far_m, "m", near_m, math.inf)
    positive("f_number", f_number, "")
    positive("coc_mm", coc_mm, "mm")
    near_mm, spread_mm = 1000 * near_m, 2 * f_number * coc_mm
    part = near_m / far_m
    linear = spread_mm * (1 + part)
    square = linear**2 + 4 * spread_mm * (near_mm * (1 - part) - spread_mm * part)
    focal_mm = 2 * spread_mm * near_mm / (linear + math.sqrt(max(square, 0.0)))
    return min(focal_mm, near_mm / NEAREST_IN_FOCAL_LENGTHS)
