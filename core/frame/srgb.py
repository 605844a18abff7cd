"""The curve of sRGB, both ways: between codes and the linear light that they stand for."""

from __future__ import annotations

import numpy as np

from core.domain import FloatArray


def linear_of(value: FloatArray) -> FloatArray:
    """Linear light of a curved value.

    Args:
        value: code over the brightest code, shape (...), 0 to 1.

    Returns:
        Linear light, shape (...), 0 to 1.

    Source: IEC 61966-2-1 (sRGB).
    """
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def curved_of(light: FloatArray) -> FloatArray:
    """Curved value of linear light, the inverse of `linear_of`.

    Args:
        light: linear light, shape (...), 0 to 1.

    Returns:
        Code over the brightest code, shape (...), 0 to 1.

    Source: IEC 61966-2-1 (sRGB).
    """
    return np.where(light <= 0.0031308, 12.92 * light, 1.055 * light ** (1 / 2.4) - 0.055)
