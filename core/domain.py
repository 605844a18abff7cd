"""Numbers and arrays held to the range in which a formula holds."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.errors import OutOfDomainError

#: What the vectorised functions compute with.
FloatArray = NDArray[np.float64]


def positive(name: str, value: ArrayLike, unit: str, high: float = np.inf) -> FloatArray:
    """Give the value as an array of floats if all of it is finite, above 0 and up to `high`.

    Args:
        name: what the value is, as the parameter is called (`distance_m`).
        value: shape (...).
        unit: its unit, "" for a pure number.
        high: highest allowed value, itself allowed unless infinite.

    Raises:
        OutOfDomainError: some element is NaN, infinite, 0, negative or above `high`; the error
            carries the first such element, and 0 as `low` (itself not allowed).
    """
    one: object = value
    if isinstance(one, float) and 0.0 < one <= high and one < np.inf:
        return np.asarray(one)  # most values are one number
    array = np.asarray(value, dtype=np.float64)
    good = np.isfinite(array) & (array > 0) & (array <= high)
    if not good.all():
        raise OutOfDomainError(name, _first(array, ~good), unit, 0.0, high)
    return array


def between(name: str, value: ArrayLike, unit: str, low: float, high: float) -> FloatArray:
    """Give the value as an array of floats if all of it lies in the closed range.

    Args:
        name: what the value is, as the parameter is called.
        value: shape (...).
        unit: its unit, "" for a pure number.
        low: lowest allowed value; an infinite limit does not allow infinity itself.
        high: highest allowed value, likewise.

    Raises:
        OutOfDomainError: some element is NaN, infinite or outside; the error carries the first.
    """
    array = np.asarray(value, dtype=np.float64)
    good = np.isfinite(array) & (array >= low) & (array <= high)
    if not good.all():
        raise OutOfDomainError(name, _first(array, ~good), unit, low, high)
    return array


def _first(array: FloatArray, bad: NDArray[np.bool_]) -> float:
    return float(array[bad].flat[0])
