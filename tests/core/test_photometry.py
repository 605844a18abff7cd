"""From exposure value to luminance and illuminance, and where a sensor clips."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.exposure import exposure_value
from core.photometry import clipping_luminance, illuminance, luminance, saturation_speed
from tests.core.numbers import NEVER_A_LEVEL, NEVER_POSITIVE, Ref

GNU_UNITS = "GNU units 2.22, definitions file, photographic exposure value"


REFERENCES = [
    Ref("f/16, 1/100 s", luminance(exposure_value(16, 1 / 100)), 3200, 1e-3, GNU_UNITS),
    Ref(
        "a meter with K = 14",
        math.log2(luminance(0, 14) / luminance(0)),
        1 / 6,
        0.005,
        "computed here from log2(14 / 12.5); said to be a sixth of a stop",
    ),
    Ref(
        "clear sky of 8000 cd/m2",
        luminance(15.966),
        8000,
        3,
        "IES Lighting Handbook, 8th ed. (1993), by GNU units",
    ),
    Ref(
        "sun of 100 klx",
        illuminance(15.288),
        100_000,
        30,
        "IES Lighting Handbook, 8th ed. (1993), by GNU units",
    ),
    Ref(
        "overcast of 10 klx",
        illuminance(11.966),
        10_000,
        3,
        "IES Lighting Handbook, 8th ed. (1993), by GNU units",
    ),
    Ref("0.78 lx s", saturation_speed(0.78), 100, 1e-9, "ISO 12232:2006, from memory"),
    Ref(
        "headroom above the metered tone, in stops",
        math.log2(clipping_luminance(0) / luminance(0)),
        3.263,
        5e-4,
        "computed here from log2(78 / (0.65 * 12.5))",
    ),
    Ref("clipping at EV 0", clipping_luminance(0), 1.2, 1e-12, "computed here from 78 / 65"),
]


@pytest.mark.parametrize("ref", REFERENCES, ids=lambda ref: ref.what)
def test_published_value(ref: Ref) -> None:
    """The published value comes out, within the digits that the source prints."""
    assert ref.found == pytest.approx(ref.expected, rel=0, abs=ref.tolerance)


def test_tables_of_light() -> None:
    """Whole tables convert at once."""
    # Lagarde & de Rousiers, course notes, SIGGRAPH 2014 (K = 12.5).
    np.testing.assert_allclose(luminance([0, 3, 10, 13, 16]), [0.125, 1, 128, 1024, 8192])
    # Formula of GNU units 2.22 (C = 250), computed here.
    np.testing.assert_allclose(illuminance([0, 10, 12, 15]), [2.5, 2560, 10240, 81920])
    np.testing.assert_allclose(clipping_luminance([0, 1]), [1.2, 2.4])


@given(st.floats(-10.0, 20.0))
def test_a_stop_doubles_the_light(level: float) -> None:
    """One exposure value more is twice the light, on every scale."""
    for light in (luminance, illuminance, clipping_luminance):
        assert light(level + 1) == pytest.approx(2 * light(level))


@given(st.floats(1e-6, 1e3))
def test_a_sensor_that_saturates_later_is_slower(exposure_lx_s: float) -> None:
    """Twice the exposure at saturation is half the speed."""
    assert saturation_speed(2 * exposure_lx_s) == pytest.approx(saturation_speed(exposure_lx_s) / 2)


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -31.0, 31.0])
@pytest.mark.parametrize("light", [luminance, illuminance, clipping_luminance])
def test_bad_levels_are_refused(light: Callable[[float], object], bad: float) -> None:
    """NaN, infinity and levels beyond all light are refused."""
    with pytest.raises(OutOfDomainError):
        light(bad)


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call", [saturation_speed, lambda bad: luminance(9, bad), lambda bad: illuminance(9, bad)]
)
def test_bad_constants_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no constant of a meter and no exposure."""
    with pytest.raises(OutOfDomainError):
        call(bad)
