"""The curve of sRGB: what the standard prints, and that both ways undo each other."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np
import pytest

from core.frame.srgb import curved_of, linear_of


class Ref(NamedTuple):
    """One point of the curve."""

    value: float
    light: float
    tolerance: float  # of the light, from the digits that the source prints
    source: str


REFERENCES = [
    Ref(0.0, 0.0, 0.0, "IEC 61966-2-1: black"),
    Ref(1.0, 1.0, 1e-15, "IEC 61966-2-1: white"),
    Ref(0.04045, 0.0031308, 5e-8, "IEC 61966-2-1: where the straight part ends"),
    Ref(0.02, 0.02 / 12.92, 1e-15, "IEC 61966-2-1: slope of the straight part"),
    Ref(0.5, 0.214041, 5e-7, "worked by hand: (0.555 / 1.055) ** 2.4"),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda ref: ref.source)
def test_light_of_a_value(ref: Ref) -> None:
    """The light comes out within the digits that are printed."""
    np.testing.assert_allclose(
        linear_of(np.array(ref.value)), ref.light, rtol=0, atol=ref.tolerance
    )


def test_both_ways_undo_each_other() -> None:
    """Every code comes back as itself, and more light is never a lower code."""
    values = np.arange(256) / 255
    light = linear_of(values)
    np.testing.assert_array_equal(np.rint(255 * curved_of(light)), np.arange(256))
    assert (np.diff(light) > 0).all()
