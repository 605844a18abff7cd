"""The blur that `best_f_number` makes least, written down independently of it."""

from __future__ import annotations

import math

from core.blur import GREEN_NM, airy_diameter_um


def defocus_um(spread_mm: float, f_number: float) -> float:
    """Blur at either end of a focus spread, focused in its middle: similar triangles."""
    return 1000 * spread_mm / (2 * f_number)


def total_blur_um(spread_mm: float, f_number: float, wavelength_nm: float = GREEN_NM) -> float:
    """Root of defocus squared plus diffraction squared (Hansma's model, from memory)."""
    return math.hypot(defocus_um(spread_mm, f_number), airy_diameter_um(f_number, wavelength_nm))
