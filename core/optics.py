"""Depth of field, focus distance, focus stack."""

from __future__ import annotations

import math
from typing import Final

from core.domain import positive
from core.errors import within

#: Circle of confusion as a part of the diagonal (Lyon, Depth of field outside the box, draft of
#: 2006); 0.03 mm on 36x24 mm is the diagonal over 1442.
CONFUSION_DIVISOR: Final = 1500.0
#: Shortest distance between the lens and a thing in focus, over the focal length. Nearer than
#: twice the focal length is beyond life size, where these formulas are not meant (own rule).
NEAREST_IN_FOCAL_LENGTHS: Final = 2.0


def circle_of_confusion_mm(diagonal_mm: float, divisor: float = CONFUSION_DIVISOR) -> float:
    """Largest blur that still reads as sharp [mm]: the sensor's diagonal over `divisor`.

    Args:
        diagonal_mm: diagonal of the sensor [mm], above 0.
        divisor: above 0; 1500 for a print seen whole, 3000 for close scrutiny (common practice).

    Raises:
        OutOfDomainError: a number is not positive and finite.
    """
    positive("diagonal_mm", diagonal_mm, "mm")
    positive("divisor", divisor, "")
    return diagonal_mm / divisor


def hyperfocal_m(focal_mm: float, f_number: float, coc_mm: float) -> float:
    """Nearest focus at which infinity is still sharp [m]: f^2 / (N c) + f.

    Args:
        focal_mm: f [mm], above 0.
        f_number: N, above 0.
        coc_mm: c, circle of confusion [mm], above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.

    Source: Ray, Applied Photographic Optics; Greenleaf, Photographic Optics (1950); both from
        memory (formula only). Some tables leave out the last f.
    """
    positive("focal_mm", focal_mm, "mm")
    positive("f_number", f_number, "")
    positive("coc_mm", coc_mm, "mm")
    return (focal_mm**2 / (f_number * coc_mm) + focal_mm) / 1000


def depth_limits_m(
    focal_mm: float, f_number: float, focus_m: float, coc_mm: float
) -> tuple[float, float]:
    """Nearest and farthest distance that are sharp [m]; the far one may be infinite.

    With H the hyperfocal distance, s the focus, f the focal length: near is
    s (H - f) / (H + s - 2 f), far is s (H - f) / (H - s), or infinite from s = H on.

    Args:
        focal_mm: f [mm], above 0.
        f_number: N, above 0.
        focus_m: s, from the lens [m], at least twice the focal length.
        coc_mm: circle of confusion [mm], above 0.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: as `hyperfocal_m`; thin lens.
    """
    hyperfocal = hyperfocal_m(focal_mm, f_number, coc_mm)
    focal = focal_mm / 1000
    positive("focus_m", focus_m, "m")
    _beyond_the_lens("focus_m", focus_m, focal_mm)
    near = focus_m * (hyperfocal - focal) / (hyperfocal + focus_m - 2 * focal)
    if focus_m >= hyperfocal:
        return near, math.inf
    return near, focus_m * (hyperfocal - focal) / (hyperfocal - focus_m)


def focus_distance_m(near_m: float, far_m: float) -> float:
    """Focus that leaves near and far equally sharp [m]: 2 near far / (near + far).

    Args:
        near_m: nearest thing that must be sharp [m], above 0.
        far_m: farthest one [m], not below `near_m`; infinity is allowed and gives twice the near.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: harmonic mean; Ray, Applied Photographic Optics, from memory (formula only).
    """
    _near_before_far(near_m, far_m)
    # Written so that an infinite far distance needs no case of its own.
    return 2 / (1 / near_m + 1 / far_m)


def focus_spread_mm(focal_mm: float, near_m: float, far_m: float) -> float:
    """How far apart behind the lens near and far come to focus [mm]: f^2/(n - f) - f^2/(F - f).

    Args:
        focal_mm: f [mm], above 0.
        near_m: n [m], at least twice the focal length.
        far_m: F [m], not below `near_m`; infinity is allowed.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: thin lens equation.
    """
    positive("focal_mm", focal_mm, "mm")
    _near_before_far(near_m, far_m)
    _beyond_the_lens("near_m", near_m, focal_mm)
    behind_near = focal_mm**2 / (1000 * near_m - focal_mm)
    return behind_near - focal_mm**2 / (1000 * far_m - focal_mm)


def smallest_f_number(focal_mm: float, near_m: float, far_m: float, coc_mm: float) -> float:
    """Smallest f-number that keeps near and far within the circle of confusion: D / (2 c).

    Args:
        focal_mm: focal length [mm], above 0.
        near_m: nearest thing that must be sharp [m], at least twice the focal length.
        far_m: farthest one [m], not below `near_m`; infinity is allowed.
        coc_mm: c [mm], above 0.

    Returns:
        F-number with the focus at `focus_distance_m`; 0 when near and far are the same.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: Ray, Applied Photographic Optics, from memory; taken by the focus spread D, which asks
        up to a few per cent more than the form for large distances.
    """
    positive("coc_mm", coc_mm, "mm")
    return focus_spread_mm(focal_mm, near_m, far_m) / (2 * coc_mm)


def stack_frames(
    focal_mm: float,
    near_m: float,
    far_m: float,
    f_number: float,
    coc_mm: float,
    overlap: float = 0.25,
) -> int:
    """Frames of a focus stack from near to far, each sharp over 2 N c of the focus spread.

    The first frame covers 2 N c, each further one the same less the overlap.

    Args:
        focal_mm: focal length [mm], above 0.
        near_m: nearest thing that must be sharp [m], at least twice the focal length.
        far_m: farthest one [m], not below `near_m`; infinity is allowed.
        f_number: N, above 0.
        coc_mm: c [mm], above 0.
        overlap: part of a frame's depth shared with the next, 0 to 0.9; 0.25 is common practice.

    Raises:
        OutOfDomainError: a number is out of range.

    Source: depth of focus of a thin lens, as in `smallest_f_number`.
    """
    positive("f_number", f_number, "")
    positive("coc_mm", coc_mm, "mm")
    within("overlap", overlap, "", 0.0, 0.9)
    depth_mm = 2 * f_number * coc_mm
    beyond_first_mm = max(focus_spread_mm(focal_mm, near_m, far_m) - depth_mm, 0.0)
    return 1 + math.ceil(beyond_first_mm / (depth_mm * (1 - overlap)) - 1e-9)


def _near_before_far(near_m: float, far_m: float) -> None:
    positive("near_m", near_m, "m")
    within("far_m", far_m, "m", near_m, math.inf)


def _beyond_the_lens(name: str, distance_m: float, focal_mm: float) -> None:
    within(name, distance_m, "m", NEAREST_IN_FOCAL_LENGTHS * focal_mm / 1000, math.inf)
