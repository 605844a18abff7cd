"""Arrays are held to the range of a formula, and the error names the first that is outside."""

from __future__ import annotations

import math

import numpy as np
import pytest

from core.domain import between, positive
from core.errors import OutOfDomainError
from tests.core.numbers import NEVER_A_LEVEL, NEVER_POSITIVE


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
def test_positive_refuses_what_is_no_positive_number(bad: float) -> None:
    """Zero, negative, NaN and infinity are refused alone and inside an array."""
    for value in (bad, [1.0, bad], [[2.0], [bad]]):
        with pytest.raises(OutOfDomainError) as caught:
            positive("distance_m", value, "m")
        assert (caught.value.name, caught.value.unit) == ("distance_m", "m")
        np.testing.assert_equal(caught.value.value, bad)


def test_positive_allows_its_upper_limit_only_so_far() -> None:
    """The upper limit itself is allowed, the next float is not."""
    assert positive("x", 3.0, "", 3.0) == 3.0
    with pytest.raises(OutOfDomainError):
        positive("x", math.nextafter(3.0, 4.0), "", 3.0)


@pytest.mark.parametrize("bad", [*NEVER_A_LEVEL, -1.001, 2.001])
def test_between_refuses_what_is_outside(bad: float) -> None:
    """NaN, infinity and everything beyond the limits are refused."""
    for value in (bad, [0.0, bad]):
        with pytest.raises(OutOfDomainError) as caught:
            between("level", value, "stops", -1.0, 2.0)
        assert (caught.value.low, caught.value.high) == (-1.0, 2.0)


def test_between_allows_its_limits() -> None:
    """The range is closed, and an infinite limit does not allow infinity itself."""
    np.testing.assert_array_equal(between("x", [-1.0, 2.0], "", -1.0, 2.0), [-1.0, 2.0])
    with pytest.raises(OutOfDomainError):
        between("x", math.inf, "", 0.0, math.inf)


def test_first_bad_element_is_named() -> None:
    """Of several bad elements the error carries the first, in reading order."""
    with pytest.raises(OutOfDomainError) as caught:
        positive("x", [[1.0, -2.0], [-3.0, 4.0]], "")
    assert caught.value.value == -2.0
