"""Blur by diffraction, and the f-number at which it and defocus together are least."""

from __future__ import annotations

import math
from typing import Final

from core.domain import positive

#: Green light, the middle of what the eye and a sensor see best [nm] (common practice).
GREEN_NM: Final = 550.0
#: Diameter of the first dark ring over wavelength times f-number (Hecht, Optics, and Born & Wolf,
#: Principles of Optics; from memory); twice the first zero of the Bessel function J1 over pi.
AIRY: Final = 2.44


def best_f_number(spread_mm: float, wavelength_nm: float = GREEN_NM) -> float:
    """F-number of the least blur at both ends of a focus spread: sqrt(D / (4.88 lambda)).

    Defocus falls with the f-number and diffraction grows with it; the sum of their squares is
    least where the two are equal.

    Args:
        spread_mm: D, as `focus_spread_mm` gives it [mm], above 0.
        wavelength_nm: lambda [nm], above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.

    Source: Hansma, Photo Techniques, March/April 1996, from memory, who uses 1/750 mm per
        f-number for the diffraction, which is 546 nm.
    """
    positive("spread_mm", spread_mm, "mm")
    positive("wavelength_nm", wavelength_nm, "nm")
    return math.sqrt(spread_mm / (2 * AIRY * wavelength_nm * 1e-6))


def airy_diameter_um(f_number: float, wavelength_nm: float = GREEN_NM) -> float:
    """Diameter of the first dark ring around a point of light [um]: 2.44 lambda N.

    Args:
        f_number: N, above 0.
        wavelength_nm: lambda [nm], above 0.

    Raises:
        OutOfDomainError: a number is not positive and finite.

    Source: Hecht, Optics; Born & Wolf, Principles of Optics; from memory (formula only).
    """
    positive("f_number", f_number, "")
    positive("wavelength_nm", wavelength_nm, "nm")
    return AIRY * wavelength_nm * f_number / 1000
