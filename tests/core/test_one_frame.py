"""The focal length up to which near and far are both sharp in one frame."""

from __future__ import annotations

import math
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.errors import OutOfDomainError
from core.one_frame import longest_focal_mm
from core.optics import smallest_f_number
from tests.core.numbers import NEVER_POSITIVE


class Row(NamedTuple):
    """A near and a far distance [m], an f-number, a blur circle [mm], and the focal length [mm]."""

    near_m: float
    far_m: float
    f_number: float
    coc_mm: float
    focal_mm: float
    tolerance: float


#: The first three turn a common table of f-numbers round (0.030 mm, far side at infinity), whose
#: form f^2 / (2 c n) leaves out a few per cent; the others are worked by hand from the thin lens.
ROWS = [
    Row(0.5, math.inf, 8.5, 0.030, 16.0, 0.5),
    Row(1.0, math.inf, 9.6, 0.030, 24.0, 0.5),
    Row(1.5, math.inf, 13.6, 0.030, 35.0, 0.5),
    # 2 x 8 x 0.01443 = 0.2309 mm; 19.06^2 = 363.3; 363.3 / 1480.9 - 363.3 / 24981 = 0.2308
    Row(1.5, 25.0, 8.0, 0.01443, 19.06, 0.01),
    # 2 x 16 x 0.0288 = 0.9216 mm; 43.18^2 = 1864.5; 1864.5 / 1956.8 - 1864.5 / 59957 = 0.9217
    Row(2.0, 60.0, 16.0, 0.0288, 43.18, 0.01),
    # near and far are one distance: any lens does, up to half of it, as for life size
    Row(3.0, 3.0, 8.0, 0.03, 1500.0, 1e-6),
]


@pytest.mark.parametrize("row", ROWS, ids=str)
def test_focal_length_for_one_frame(row: Row) -> None:
    """The focal length is the one whose depth the f-number just holds."""
    found = longest_focal_mm(row.near_m, row.far_m, row.f_number, row.coc_mm)
    assert found == pytest.approx(row.focal_mm, abs=row.tolerance)


@given(st.floats(0.5, 20.0), st.floats(1.5, 100.0), st.floats(2.0, 22.0))
def test_that_f_number_is_just_what_it_needs(near_m: float, times: float, f_number: float) -> None:
    """At that focal length the depth asks for the f-number, or the lens may be no longer."""
    focal_mm = longest_focal_mm(near_m, near_m * times, f_number, 0.0288)
    needed = smallest_f_number(focal_mm, near_m, near_m * times, 0.0288)
    assert needed == pytest.approx(f_number) or focal_mm == pytest.approx(500 * near_m)


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
def test_numbers_out_of_range(bad: float) -> None:
    """Nothing of it may be zero, negative, NaN or infinite; the far side alone may be infinite."""
    for near_m, f_number, coc_mm in ((bad, 8.0, 0.03), (1.0, bad, 0.03), (1.0, 8.0, bad)):
        with pytest.raises(OutOfDomainError):
            longest_focal_mm(near_m, math.inf, f_number, coc_mm)
    with pytest.raises(OutOfDomainError):
        longest_focal_mm(2.0, 1.0, 8.0, 0.03)
