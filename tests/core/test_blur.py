"""Blur by diffraction, and the f-number at which it and defocus together are least."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import NamedTuple

import pytest
import scipy.optimize
import scipy.special
from hypothesis import given
from hypothesis import strategies as st

from core.blur import AIRY, airy_diameter_um, best_f_number
from core.errors import OutOfDomainError
from tests.core.blurring import defocus_um, total_blur_um
from tests.core.numbers import NEVER_POSITIVE, f_numbers

spreads_mm = st.floats(0.01, 10.0)


def test_airy_constant_is_twice_the_first_zero_over_pi() -> None:
    """2.44 is the first zero of the Bessel function J1 over pi, twice, as printed."""
    assert pytest.approx(2 * scipy.special.jn_zeros(1, 1)[0] / math.pi, abs=0.001) == AIRY


class Airy(NamedTuple):
    """An f-number and the first dark ring of a point at it."""

    f_number: float
    diameter_um: float


@pytest.mark.parametrize(
    "row",
    # 2.44 lambda N at 550 nm: Hecht, Optics; Born & Wolf; from memory (formula only).
    [Airy(8, 10.74), Airy(11, 14.76), Airy(16, 21.47), Airy(22, 29.52)],
)
def test_airy_diameter(row: Airy) -> None:
    """The first dark ring has the diameter of the textbooks."""
    assert airy_diameter_um(row.f_number) == pytest.approx(row.diameter_um, abs=0.006)


class Best(NamedTuple):
    """A focus spread and its printed best f-number."""

    spread_mm: float
    stops: float  # the printed f-number as 2 log2(N)


@pytest.mark.parametrize(
    "row",
    # Table of best f-numbers by focus spread, published for large format and credited there to
    # Hansma, Photo Techniques, March/April 1996; printed to a tenth of a stop.
    [Best(1, 8.6), Best(2, 9.6), Best(4, 10.6), Best(5, 10.9), Best(7, 11.4), Best(8, 11.6)],
)
def test_best_f_number_is_the_published_one(row: Best) -> None:
    """The f-number of the least blur is the table's, within its rounding."""
    stops = 2 * math.log2(best_f_number(row.spread_mm))
    assert stops == pytest.approx(row.stops, abs=0.15)


@pytest.mark.parametrize(
    ("spread_mm", "f_number", "blur_um"),
    # Hansma's model sqrt((D / 2N)^2 + (N / 750)^2), from memory (formula only); 1 / 750 mm is
    # 2.44 times 546.4 nm.
    [(1.0, 19.365, 36.51)],
)
def test_blur_at_the_best_f_number(spread_mm: float, f_number: float, blur_um: float) -> None:
    """At the best f-number the blur is what the model says, half of its square from each."""
    best = best_f_number(spread_mm, 546.448)
    assert best == pytest.approx(f_number, abs=0.001)
    assert total_blur_um(spread_mm, best, 546.448) == pytest.approx(blur_um, abs=0.01)
    assert defocus_um(spread_mm, best) == pytest.approx(airy_diameter_um(best, 546.448))


def test_best_f_number_of_a_near_rock() -> None:
    """A focus spread of 0.317 mm is sharpest at f/10.9: sqrt(D / (4.88 * 550 nm))."""
    assert best_f_number(0.3167) == pytest.approx(10.86, abs=0.01)


@given(spreads_mm)
def test_best_f_number_is_where_a_search_finds_it(spread_mm: float) -> None:
    """A general minimiser finds the same f-number."""
    found = scipy.optimize.minimize_scalar(
        lambda stops: total_blur_um(spread_mm, 2 ** (stops / 2)), bounds=(0, 16), method="bounded"
    )
    assert 2 * math.log2(best_f_number(spread_mm)) == pytest.approx(found.x, abs=0.01)


@given(spreads_mm, f_numbers, st.floats(400.0, 700.0))
def test_blur_is_no_less_than_at_best(
    spread_mm: float, f_number: float, wavelength_nm: float
) -> None:
    """No f-number beats the best."""
    total = total_blur_um(spread_mm, f_number, wavelength_nm)
    best = best_f_number(spread_mm, wavelength_nm)
    assert total >= total_blur_um(spread_mm, best, wavelength_nm) * (1 - 1e-12)


@pytest.mark.parametrize("bad", NEVER_POSITIVE)
@pytest.mark.parametrize(
    "call",
    [
        best_f_number,
        lambda bad: best_f_number(1.0, bad),
        airy_diameter_um,
        lambda bad: airy_diameter_um(8, bad),
    ],
)
def test_bad_numbers_are_refused(call: Callable[[float], object], bad: float) -> None:
    """Zero, negative, NaN and infinity are no spread, f-number or wavelength."""
    with pytest.raises(OutOfDomainError):
        call(bad)
